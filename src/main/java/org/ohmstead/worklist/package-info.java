/** What is to be done about strings, jars and links, who does it by when, and whether a later reading shows that it helped. */
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
            "capacity",
            "assessment",
            "assessment :: model",
            "programme",
            "programme :: rules"
        })
@NullMarked
package org.ohmstead.worklist;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
