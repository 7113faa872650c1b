/** The register's pages and REST resources. */
@NullMarked
package org.ohmstead.fleet.web;

import org.jspecify.annotations.NullMarked;
