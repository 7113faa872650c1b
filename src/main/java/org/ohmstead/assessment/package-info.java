/** Judges a string: history in, jar health, link hotspots and a next date out; on arrival and by schedule. */
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "access",
            "chart",
            "copy",
            "web",
            "fleet",
            "fleet :: csv",
            "ledger",
            "capacity",
            "capacity :: model",
            "statistics"
        })
@NullMarked
package org.ohmstead.assessment;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
