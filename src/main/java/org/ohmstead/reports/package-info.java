/** Proof on paper: the quarterly compliance summary with its sign-off and evidence, reports of strings, surveys and estate. */
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
            "assessment :: model",
            "assessment :: estate",
            "programme",
            "programme :: rules",
            "worklist",
            "worklist :: model"
        })
@NullMarked
package org.ohmstead.reports;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
