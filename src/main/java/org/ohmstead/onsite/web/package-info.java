/** The walk as a page and as JSON for the device. */
@NullMarked
package org.ohmstead.onsite.web;

import org.jspecify.annotations.NullMarked;
