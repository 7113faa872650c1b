/** The forecast: a filter over a string's surveys that says which jar or link will fail, and when. Pure and stepwise. */
@NamedInterface("forecast")
@NullMarked
package org.ohmstead.assessment.model.forecast;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
