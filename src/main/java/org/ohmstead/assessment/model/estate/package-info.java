/** What the estate as a whole tells: replacements to come, life curves, instruments, values learned per jar type. Pure. */
@NamedInterface("estate")
@NullMarked
package org.ohmstead.assessment.model.estate;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
