package org.ohmstead.fleet.csv;

import java.util.Map;

/**
 * A row as text.
 *
 * @param line on which it began, counted from 1; 0 when it does not come from a file
 * @param cells text by header, only of the columns that the file has
 */
public record TextRow(int line, Map<String, String> cells) {}
