/** A survey file's way in: receive, read, match, check, hold or accept, exactly once. */
@ApplicationModule(allowedDependencies = {"kernel", "access", "web", "fleet", "fleet :: csv", "ledger", "statistics"})
@NullMarked
package org.ohmstead.intake;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
