/** What a good engineer would notice in a survey: small named checks with verdict, place and remedy. Pure. */
@NamedInterface("check")
@NullMarked
package org.ohmstead.intake.check;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
