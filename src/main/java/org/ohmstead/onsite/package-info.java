/** What a crew needs at the string: last values, limits and cautions to take along, and the walk typed in on the spot. */
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "access",
            "web",
            "fleet",
            "fleet :: csv",
            "ledger",
            "intake",
            "intake :: check",
            "assessment",
            "assessment :: model"
        })
@NullMarked
package org.ohmstead.onsite;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
