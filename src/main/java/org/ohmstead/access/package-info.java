/** Who may do what: users, roles, areas in reach, tokens, audit trail. */
@ApplicationModule(allowedDependencies = {"kernel"})
@NullMarked
package org.ohmstead.access;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
