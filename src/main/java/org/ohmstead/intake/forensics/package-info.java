/** Was the string walked in order? Aligns a survey with the string's own history. Pure. */
@NullMarked
package org.ohmstead.intake.forensics;

import org.jspecify.annotations.NullMarked;
