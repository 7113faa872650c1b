/** When a string is to be visited next, and why. */
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "access",
            "web",
            "fleet",
            "fleet :: csv",
            "ledger",
            "assessment",
            "assessment :: model"
        })
@NullMarked
package org.ohmstead.programme;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
