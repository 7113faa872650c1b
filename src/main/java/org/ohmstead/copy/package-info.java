/** Rows straight into a table: PostgreSQL's binary COPY. */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package org.ohmstead.copy;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
