/** The register: areas, sites, strings, positions, which jar sat where and when, links, jar types. */
@ApplicationModule(allowedDependencies = {"kernel", "access", "web"})
@NullMarked
package org.ohmstead.fleet;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
