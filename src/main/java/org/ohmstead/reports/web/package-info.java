/** The compliance page and its files. */
@NullMarked
package org.ohmstead.reports.web;

import org.jspecify.annotations.NullMarked;
