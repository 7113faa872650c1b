/** Server-side SVG drawings: rack, tapestry, trends. Pure. */
@ApplicationModule(allowedDependencies = {"kernel"})
@NullMarked
package org.ohmstead.chart;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
