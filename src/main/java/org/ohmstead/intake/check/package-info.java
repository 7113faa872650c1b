/** What a good engineer would notice in a survey: small named checks with verdict, place and remedy. Pure. */
@NullMarked
package org.ohmstead.intake.check;

import org.jspecify.annotations.NullMarked;
