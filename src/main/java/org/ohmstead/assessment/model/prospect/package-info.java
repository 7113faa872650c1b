/** Joins the forecast to the judgement by the rules: chances in words, kinds of trouble, the date by risk. Pure. */
@NamedInterface("prospect")
@NullMarked
package org.ohmstead.assessment.model.prospect;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
