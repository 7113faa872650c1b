/** Reads survey sheets: every value knows its line and column. Pure. */
@NamedInterface("file")
@NullMarked
package org.ohmstead.intake.file;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
