/** Reads survey sheets: every value knows its line and column. Pure. */
@NullMarked
package org.ohmstead.intake.file;

import org.jspecify.annotations.NullMarked;
