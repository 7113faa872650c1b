/** Estate, Site and String pages and their REST resources. */
@NullMarked
package org.ohmstead.overview.web;

import org.jspecify.annotations.NullMarked;
