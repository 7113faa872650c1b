/** Plans visits: which sites to go to on which days, so that nothing is missed with as few visits as can be. */
@NamedInterface("rounds")
@NullMarked
package org.ohmstead.programme.rounds;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
