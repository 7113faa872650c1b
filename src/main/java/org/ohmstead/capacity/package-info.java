/** Discharge tests of whole strings: percent of rated capacity, weak jars, and how far ohmic urgency agreed with them. */
@ApplicationModule(allowedDependencies = {"kernel", "access", "web", "chart", "fleet", "fleet :: csv"})
@NullMarked
package org.ohmstead.capacity;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
