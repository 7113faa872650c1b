/** Upload, receipt, held surveys and raw files as pages and REST resources. */
@NullMarked
package org.ohmstead.intake.web;

import org.jspecify.annotations.NullMarked;
