package org.ohmstead.reports.render;

import java.time.LocalDate;
import java.util.List;

/**
 * What a report says, whatever form it takes.
 *
 * @param asOf the day whose knowledge it shows; also the files' date, so that the same contents give the same bytes
 * @param facts what the reader must know first, in order
 * @param note last words, below everything
 */
public record Report(String title, LocalDate asOf, List<Fact> facts, List<Section> sections, String note) {

    public Report {
        facts = List.copyOf(facts);
        sections = List.copyOf(sections);
    }

    public record Fact(String name, String words) {}

    /** The same without the columns in which nothing stands: on paper they take the place of others. */
    public Report withoutEmptyColumns() {
        return new Report(
                title,
                asOf,
                facts,
                sections.stream().map(Section::withoutEmptyColumns).toList(),
                note);
    }

    /** The section of that name. */
    public Section section(String name) {
        return sections.stream()
                .filter(section -> section.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
