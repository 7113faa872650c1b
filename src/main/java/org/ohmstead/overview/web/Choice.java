package org.ohmstead.overview.web;

import org.ohmstead.overview.EstateFilter;

/** A filter of the wall as the page offers it. */
public record Choice(EstateFilter filter, long count, boolean chosen) {}
