/** Histories: thousands of survey files at once, worked through one by one in the background. */
@NullMarked
package org.ohmstead.intake.history;

import org.jspecify.annotations.NullMarked;
