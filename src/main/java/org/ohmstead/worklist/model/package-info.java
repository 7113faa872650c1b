/** What is asked for by which finding, and how a work item goes from raised to proven, as pure functions. */
@NamedInterface("model")
@NullMarked
package org.ohmstead.worklist.model;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
