/** Pages and REST resources of capacity tests. */
@NullMarked
package org.ohmstead.capacity.web;

import org.jspecify.annotations.NullMarked;
