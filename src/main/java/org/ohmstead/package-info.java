/** The service as a whole: the application class and the clock. */
@NullMarked
package org.ohmstead;

import org.jspecify.annotations.NullMarked;
