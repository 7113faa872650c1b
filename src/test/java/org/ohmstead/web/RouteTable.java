package org.ohmstead.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** Who may do what, as decided: {@code src/test/resources/access/routes.csv}, a line for each method and address. */
final class RouteTable {

    static final String FILE = "src/test/resources/access/routes.csv";

    private static final String IN = "in";
    private static final String REFUSED = "refused";
    private static final int ADDRESS_CELLS = 2;

    private final List<String> columns;
    private final Map<String, List<String>> decisions = new LinkedHashMap<>();

    private RouteTable(List<List<String>> rows) {
        columns = cells(rows.get(0));
        for (List<String> row : rows.subList(1, rows.size())) {
            String address = String.join(",", row.subList(0, ADDRESS_CELLS));
            if (row.size() != rows.get(0).size() || !Set.of(IN, REFUSED).containsAll(cells(row))) {
                throw new AssertionError(
                        FILE + ", " + address + ": say \"in\" or \"refused\" for each of " + columns + ".");
            }
            if (decisions.put(address, cells(row)) != null) {
                throw new AssertionError(FILE + " has two lines for " + address + ".");
            }
        }
    }

    private static List<String> cells(List<String> row) {
        return row.subList(ADDRESS_CELLS, row.size());
    }

    static RouteTable read() {
        try (InputStream file = Objects.requireNonNull(RouteTable.class.getResourceAsStream("/access/routes.csv"))) {
            String text = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            return new RouteTable(
                    text.lines().map(line -> Arrays.asList(line.split(","))).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    boolean letsIn(String who, Route route) {
        List<String> decided = decisions.get(route.address());
        return decided != null && decided.get(columns.indexOf(who)).equals(IN);
    }

    boolean decides(Route route) {
        return decisions.containsKey(route.address());
    }

    /** What is wrong with the table itself, and which line mends it. */
    List<String> faults(List<Route> routes) {
        Set<String> answered = routes.stream().map(Route::address).collect(Collectors.toSet());
        List<String> faults = answered.stream()
                .filter(address -> !decisions.containsKey(address))
                .sorted()
                .map(address -> "Decide who may, and add to " + FILE + ": " + address + ",…".repeat(columns.size())
                        + "  (\"in\" or \"refused\" for " + String.join(", ", columns) + ")")
                .collect(Collectors.toList());
        decisions.keySet().stream()
                .filter(address -> !answered.contains(address))
                .forEach(address -> faults.add("Nothing answers this line of " + FILE + ", take it out: " + address));
        return faults;
    }
}
