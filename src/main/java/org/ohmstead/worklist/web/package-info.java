/** Pages and REST resources of the work list. */
@NullMarked
package org.ohmstead.worklist.web;

import org.jspecify.annotations.NullMarked;
