/** What the rules ask of each string, what was done, and when it is to be visited next. */
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "access",
            "web",
            "fleet",
            "fleet :: csv",
            "ledger",
            "capacity",
            "assessment",
            "assessment :: model"
        })
@NullMarked
package org.ohmstead.programme;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
