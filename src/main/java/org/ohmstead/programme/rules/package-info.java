/** Rule packs, what they ask of a string and when, and next dates, as pure functions. */
@NamedInterface("rules")
@NullMarked
package org.ohmstead.programme.rules;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
