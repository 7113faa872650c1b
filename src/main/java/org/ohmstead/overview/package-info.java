/** The pages that look across all features: Estate, Site and String. */
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "access",
            "web",
            "chart",
            "fleet",
            "fleet :: csv",
            "ledger",
            "intake",
            "intake :: check",
            "assessment",
            "assessment :: model",
            "assessment :: prospect",
            "programme",
            "programme :: rules"
        })
@NullMarked
package org.ohmstead.overview;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
