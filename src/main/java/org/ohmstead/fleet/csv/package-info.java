/** The register as CSV files: what one row of each file says, how it is read and written. Pure. */
@NamedInterface("csv")
@NullMarked
package org.ohmstead.fleet.csv;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
