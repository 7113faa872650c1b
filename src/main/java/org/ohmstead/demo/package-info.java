/** The invented estate that the demo profile loads. */
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "access",
            "fleet",
            "fleet :: csv",
            "ledger",
            "intake",
            "assessment",
            "capacity",
            "capacity :: model",
            "programme",
            "programme :: rules",
            "worklist",
            "worklist :: model"
        })
@NullMarked
package org.ohmstead.demo;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
