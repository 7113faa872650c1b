/** The PostgreSQL server that comes with the service and runs where no other database is named. */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package org.ohmstead.database;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
