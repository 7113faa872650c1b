/** A report's contents as CSV, XLSX and PDF; the same contents give the same bytes. */
@NullMarked
package org.ohmstead.reports.render;

import org.jspecify.annotations.NullMarked;
