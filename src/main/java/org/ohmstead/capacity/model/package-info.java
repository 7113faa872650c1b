/** The arithmetic of capacity tests: methods, discharge records, jars, the next test by the practice. Pure. */
@NamedInterface("model")
@NullMarked
package org.ohmstead.capacity.model;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
