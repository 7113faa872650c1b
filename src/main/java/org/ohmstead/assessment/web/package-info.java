/** Assessments over HTTP. */
@NullMarked
package org.ohmstead.assessment.web;

import org.jspecify.annotations.NullMarked;
