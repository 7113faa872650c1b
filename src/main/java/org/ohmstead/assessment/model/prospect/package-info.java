/** Joins the forecast to the judgement by the rules: chances in words, kinds of trouble, the date by risk. Pure. */
@NullMarked
package org.ohmstead.assessment.model.prospect;

import org.jspecify.annotations.NullMarked;
