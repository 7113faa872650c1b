/** The shell: layout, navigation, problem details, security chain. */
@ApplicationModule(allowedDependencies = {"kernel", "access"})
@NullMarked
package org.ohmstead.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
