package org.ohmstead.fleet.csv;

import java.util.List;
import org.ohmstead.kernel.Flaw;

/**
 * A whole file as text.
 *
 * @param headers in the file's own order
 */
public record TextTable(List<String> headers, List<TextRow> rows, List<Flaw> flaws) {}
