/** The shared words: technologies, urgencies, date ranges, flaws of a file. Pure. */
@ApplicationModule(
        allowedDependencies = {},
        type = ApplicationModule.Type.OPEN)
@NullMarked
package org.ohmstead.kernel;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
