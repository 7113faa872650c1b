/** The walk as a page, as JSON for the device, and what a device needs to work without a network. */
@NullMarked
package org.ohmstead.onsite.web;

import org.jspecify.annotations.NullMarked;
