/** General statistics on plain arrays: robust location and spread, trends, mixed models, filters, survival. */
@NullMarked
@ApplicationModule(allowedDependencies = "kernel")
package org.ohmstead.statistics;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
