/** Replays an estate that stands in files: what would have been said as of each survey. Pure. */
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "fleet :: csv",
            "intake :: file",
            "intake :: check",
            "assessment :: model",
            "assessment :: forecast"
        })
@NullMarked
package org.ohmstead.replay;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
