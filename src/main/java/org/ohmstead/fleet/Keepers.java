package org.ohmstead.fleet;

import org.springframework.stereotype.Component;

/** Those who keep the register's own things. */
@Component
record Keepers(AreaKeeper areas, SiteKeeper sites, JarTypeKeeper jarTypes, StringKeeper strings) {}
