/** Proof on paper: the quarterly compliance summary, its sign-off and the evidence behind it. */
@ApplicationModule(
        allowedDependencies = {"kernel", "access", "web", "fleet", "ledger", "intake", "programme", "programme :: rules"
        })
@NullMarked
package org.ohmstead.reports;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
