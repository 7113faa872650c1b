/** The judgement itself, as pure functions from a string's history. */
@NamedInterface("model")
@NullMarked
package org.ohmstead.assessment.model;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
