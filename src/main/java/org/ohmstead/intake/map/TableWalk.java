package org.ohmstead.intake.map;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.file.Cell;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.Findings;
import org.ohmstead.intake.file.Row;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Flaw;

/** Walks through the rows of a file: facts, titles, readings, blocks; each survey is gathered as it goes. */
final class TableWalk {

    private static final int MOST_SURVEYS = 5_000;
    private static final Set<String> TELLING = Set.of("site", "string", "taken at");

    private final ColumnMap map;
    private final Findings findings;
    private final FactsFound facts;
    private final RowReading readings;
    private final List<Gathered> surveys = new ArrayList<>();
    private final Map<String, Gathered> byOwnWords = new HashMap<>();
    private final Set<String> titlesSeen = new HashSet<>();
    private final List<String> passedOver;
    private final List<String> titles;
    private Gathered current;
    private Map<Integer, ColumnRule> columns = Map.of();
    private @Nullable BlockReading block;

    TableWalk(ColumnMap map, Findings findings) {
        this.map = map;
        this.findings = findings;
        MapNumbers numbers = new MapNumbers(map, findings);
        this.facts = new FactsFound(map, numbers, findings);
        this.readings = new RowReading(map, numbers, findings);
        this.current = begin(1);
        this.passedOver = map.passOver().stream()
                .map(FactsFound::bare)
                .filter(word -> !word.isEmpty())
                .toList();
        this.titles = map.columns().stream()
                .map(rule -> FactsFound.bare(rule.title()))
                .toList();
    }

    Set<String> titlesSeen() {
        return titlesSeen;
    }

    boolean accept(Row row) {
        if (!row.isBlank() && !isPassedOver(row) && !isTitles(row) && !hasFacts(row) && !isBlockTitle(row)) {
            read(row);
        }
        if (surveys.size() > MOST_SURVEYS) {
            tooMany(row);
            return false;
        }
        return true;
    }

    List<SurveySheet> finish() {
        List<Gathered> whole = surveys.stream().filter(Gathered::hasReadings).toList();
        List<FactsFound.Found> given = facts.given();
        for (Gathered survey : whole) {
            given.forEach(found -> survey.fact(found.fact(), found.line()));
        }
        return whole.stream().map(Gathered::sheet).toList();
    }

    private boolean isPassedOver(Row row) {
        Cell first = row.firstFilledAfter(0);
        String text = first == null ? "" : FactsFound.bare(first.text());
        return passedOver.stream().anyMatch(text::startsWith);
    }

    /** A row with at least two of the map's titles, or with the only one there is. */
    private boolean isTitles(Row row) {
        Map<Integer, ColumnRule> found = new HashMap<>();
        for (int number = 1; number <= row.cells().size(); number++) {
            String text = FactsFound.bare(row.cell(number).text());
            for (int i = 0; i < titles.size() && !found.containsKey(number); i++) {
                ColumnRule rule = map.columns().get(i);
                if (titles.get(i).equals(text) && !found.containsValue(rule)) {
                    found.put(number, rule);
                }
            }
        }
        if (found.size() < Math.min(2, Math.max(1, map.columns().size()))) {
            return false;
        }
        found.values().forEach(rule -> titlesSeen.add(FactsFound.bare(rule.title())));
        columns = found;
        block = null;
        return true;
    }

    private boolean hasFacts(Row row) {
        if (!columns.isEmpty() && readings.isReading(row, columns)) {
            return false;
        }
        List<FactsFound.Found> found = facts.in(row);
        for (FactsFound.Found fact : found) {
            boolean another = TELLING.contains(fact.fact())
                    && !current.text(fact.fact()).equals(fact.line().cell(2).text());
            if (another && current.hasReadings()) {
                Gathered before = current;
                current = begin(row.line());
                current.fact(fact.fact(), fact.line());
                before.handOn(current);
            }
            current.fact(fact.fact(), fact.line());
        }
        return !found.isEmpty();
    }

    private boolean isBlockTitle(Row row) {
        Cell first = row.firstFilledAfter(0);
        if (first == null || !columns.isEmpty()) {
            return false;
        }
        Optional<ColumnRule> named = map.quantities().stream()
                .filter(rule -> FactsFound.bare(rule.title()).equals(FactsFound.bare(first.text())))
                .findFirst();
        named.ifPresent(rule -> {
            titlesSeen.add(FactsFound.bare(rule.title()));
            block = new BlockReading(rule, map.valuesInOrder(), readings);
            block.read(row, first.column(), current);
        });
        return named.isPresent();
    }

    private void read(Row row) {
        BlockReading open = block;
        if (open != null) {
            open.read(row, 0, current);
        } else if (!columns.isEmpty()) {
            readings.read(row, columns, surveyOf(row));
        }
    }

    /** Rows that name another site or string, or another day, belong to another survey. */
    private Gathered surveyOf(Row row) {
        List<FactsFound.Found> own = new ArrayList<>();
        columns.forEach((number, rule) -> {
            if (Holds.ROW_FACTS.contains(rule.holds())) {
                facts.found(rule.holds(), rule.unit(), row.cell(number)).ifPresent(own::add);
            }
        });
        Gathered survey = own.isEmpty() ? current : byOwnWords.computeIfAbsent(words(own), words -> known(own, row));
        if (survey != current && !survey.hasReadings()) {
            current.handOn(survey);
        }
        own.forEach(fact -> survey.fact(fact.fact(), fact.line()));
        return survey;
    }

    /** Its words only ever fill up, so that the first survey they agree with stays the first one. */
    private Gathered known(List<FactsFound.Found> own, Row row) {
        return surveys.stream()
                .filter(known -> own.stream().allMatch(fact -> agrees(known, fact)))
                .findFirst()
                .orElseGet(() -> begin(row.line()));
    }

    /** What tells one survey from another: site, string and day. */
    private static String words(List<FactsFound.Found> own) {
        StringBuilder words = new StringBuilder();
        for (FactsFound.Found fact : own) {
            if (TELLING.contains(fact.fact())) {
                String said = fact.line().cell(2).text();
                boolean dated = fact.fact().equals("taken at") && said.length() >= 10;
                words.append(fact.fact())
                        .append('=')
                        .append(dated ? said.substring(0, 10) : said)
                        .append('\n');
            }
        }
        return words.toString();
    }

    private static boolean agrees(Gathered survey, FactsFound.Found fact) {
        String known = survey.text(fact.fact());
        String said = fact.line().cell(2).text();
        boolean sameDay = fact.fact().equals("taken at")
                && known.length() >= 10
                && said.length() >= 10
                && known.substring(0, 10).equals(said.substring(0, 10));
        boolean telling = TELLING.contains(fact.fact());
        return !telling || known.isEmpty() || known.equals(said) || sameDay;
    }

    private void tooMany(Row row) {
        findings.add(Finding.unreadable(Flaw.ofLine(
                row.line(),
                "The file tells of more than " + MOST_SURVEYS + " surveys; from here on nothing is read.",
                "Cut the file into smaller ones.")));
    }

    private Gathered begin(int line) {
        Gathered fresh = new Gathered(line);
        surveys.add(fresh);
        return fresh;
    }
}
