/** Accepted surveys and their readings, append-only; amendments supersede, never overwrite. */
@ApplicationModule(allowedDependencies = {"kernel", "access", "copy", "fleet"})
@NullMarked
package org.ohmstead.ledger;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
