/** Pages and REST resources of the programme: packs, duties, visits, rounds, calendars. */
@NullMarked
package org.ohmstead.programme.web;

import org.jspecify.annotations.NullMarked;
