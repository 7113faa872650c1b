/** Loading of histories as pages and REST resource. */
@NullMarked
package org.ohmstead.intake.history.web;

import org.jspecify.annotations.NullMarked;
