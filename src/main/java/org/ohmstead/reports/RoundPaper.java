package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.kernel.Technology;
import org.ohmstead.programme.RoundPack;
import org.ohmstead.programme.RoundTask;
import org.ohmstead.programme.RoundView;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.Report.Fact;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;
import org.ohmstead.worklist.WorkItemView;

/** A round's pack on paper: cautions first, then what to take along, then each string with room to write. */
final class RoundPaper {

    private RoundPaper() {}

    static Report of(
            RoundView round,
            SiteView site,
            List<RoundPack.Part> parts,
            Map<Long, List<WorkItemView>> work,
            LocalDate today,
            LongFunction<String> address) {
        List<Section> sections = new ArrayList<>(List.of(cautions(), along(parts)));
        for (RoundPack.Part part : parts) {
            sections.add(tasks(part, address.apply(part.string().string().id())));
            List<WorkItemView> open = work.getOrDefault(part.string().string().id(), List.of());
            if (!open.isEmpty()) {
                sections.add(work(part, open));
            }
            sections.add(readings(part));
        }
        return new Report(
                "Round to " + site.name() + " on " + round.plannedOn(),
                today,
                facts(round, site, today),
                sections,
                "Last values and ranges are as of " + today + ". " + Phrases.NO_PROOF);
    }

    private static List<Fact> facts(RoundView round, SiteView site, LocalDate today) {
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact("Site", site.name() + " (" + site.code() + "), area " + site.areaCode()),
                new Fact("Crew", round.crew().isEmpty() ? "nobody named yet" : round.crew()),
                Scene.zoneFact(List.of(site)),
                new Fact("Printed from what was known on", today.toString()),
                new Fact("Duties", round.open() + " of " + round.tasks().size() + " open" + until(round.latest())),
                new Fact("Getting in", said(site.entry().accessNotes(), "no access notes")),
                new Fact("Contacts", said(site.entry().contacts(), "none noted"))));
        if (!round.note().isEmpty()) {
            facts.add(new Fact("Note", round.note()));
        }
        if (round.cancelledBecause() != null) {
            facts.add(0, new Fact("CANCELLED", round.cancelledBecause()));
        }
        return facts;
    }

    private static String until(@Nullable LocalDate latest) {
        return latest == null ? "" : ", in time until " + latest;
    }

    private static String said(String words, String otherwise) {
        return words.isBlank() ? otherwise : words.strip();
    }

    private static Section cautions() {
        return list("Before you touch anything", Cautions.RULES, Cautions.BEFORE);
    }

    /** Common practice, no source. */
    private static Section along(List<RoundPack.Part> parts) {
        List<String> things = new ArrayList<>(List.of(
                "the ohmic test set with its leads and clamp, within its calibration; a spare of its batteries",
                "a voltmeter to 1 mV, an infrared or contact thermometer, a float current clamp",
                "insulated torque wrench and brushes, in case a link must be made again",
                "this paper or the sheets on a telephone; a charged telephone for photographs",
                "face shield, gloves, apron, eyewash, neutralising agent and absorbent"));
        boolean liquid = parts.stream().anyMatch(part -> {
            Technology technology = part.string().jarType().technology();
            return !technology.isValveRegulated();
        });
        if (liquid) {
            things.add("hydrometer and thermometer for the electrolyte, kept apart for acid and for alkali");
        }
        return list("Take along", "Besides what your own rules name.", things);
    }

    private static Section list(String name, String sentence, List<String> points) {
        return new Section(
                name,
                sentence,
                List.of(Column.blank("", 1), Column.words("", 40)),
                points.stream().map(point -> List.of(Cell.NONE, Cell.of(point))).toList());
    }

    private static Section tasks(RoundPack.Part part, String address) {
        return new Section(
                        "String " + called(part) + ": to do",
                        part.string().string().positions() + " jars of "
                                + part.string().jarType().code() + ", "
                                + part.string().jarType().technology().words()
                                + ". The code opens it on a telephone.",
                        List.of(
                                Column.blank("Done", 4),
                                Column.words("Activity", 46),
                                Column.words("In time until", 12),
                                Column.words("", 10),
                                Column.blank("Found", 28)),
                        part.tasks().stream().map(RoundPaper::task).toList())
                .onItsOwnPage(Codes.of(address, "Code that opens string " + called(part) + ": " + address));
    }

    private static Section work(RoundPack.Part part, List<WorkItemView> open) {
        return new Section(
                "String " + called(part) + ": open work",
                "The most urgent first. What is done here is proven by the next reading of it: write it down and report it.",
                List.of(
                        Column.blank("Done", 4),
                        Column.words("Work", 13),
                        Column.words("What", 14),
                        Column.words("Asks", 7),
                        Column.words("By", 9),
                        Column.words("State", 8),
                        Column.words("Why", 34),
                        Column.blank("As found, as left", 14)),
                open.stream()
                        .map(item -> List.of(
                                Cell.NONE,
                                Cell.of(item.kind().words()),
                                Cell.of(item.what()),
                                Cell.of(item.urgency().word()),
                                Cell.of(item.by()),
                                Cell.of(item.state().word()),
                                Cell.of(item.reason()),
                                Cell.NONE))
                        .toList());
    }

    private static String called(RoundPack.Part part) {
        String name = part.string().string().name();
        return name.length() > 12 ? name.substring(0, 12) : name;
    }

    private static List<Cell> task(RoundTask task) {
        return List.of(
                Cell.NONE,
                Cell.of(task.activity()),
                Cell.of(task.dueOn()),
                Cell.of(task.done() ? "done already" : ""),
                Cell.NONE);
    }

    private static Section readings(RoundPack.Part part) {
        String unit = part.kind().unit();
        String sentence = part.last() == null
                ? "It was never surveyed: there are no last values. Read every jar and every link."
                : "Last values are of " + part.last().facts().takenOn()
                        + ". Read again on the spot what lies outside the range: it is 20 % from last time. A value that"
                        + " holds is a finding, not a mistake.";
        List<List<Cell>> rows = part.rows().isEmpty()
                ? empty(part.string().string().positions())
                : part.rows().stream().map(RoundPaper::row).toList();
        return new Section(
                "String " + called(part) + ": readings",
                sentence,
                List.of(
                        Column.words("Jar", 9),
                        Column.number("Last " + unit, 8),
                        Column.number("From", 8),
                        Column.number("To", 8),
                        Column.blank("Now " + unit, 13),
                        Column.number("Last V", 8),
                        Column.blank("Now V", 13),
                        Column.blank("°C", 8),
                        Column.number("Link after, last µΩ", 10),
                        Column.number("Up to", 8),
                        Column.blank("Now µΩ", 13)),
                rows);
    }

    private static List<List<Cell>> empty(int positions) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int position = 0; position <= positions; position++) {
            rows.add(row(new RoundPack.Row(position, Double.NaN, Double.NaN, Double.NaN)));
        }
        return rows;
    }

    private static List<Cell> row(RoundPack.Row row) {
        int decimals = row.ohmic() < 10 ? 3 : 2;
        return List.of(
                Cell.of(row.position() == 0 ? "+ terminal" : String.valueOf(row.position())),
                Cell.of(row.ohmic(), decimals),
                Cell.of(row.ohmicLow(), decimals),
                Cell.of(row.ohmicHigh(), decimals),
                Cell.NONE,
                Cell.of(row.volts(), 3),
                Cell.NONE,
                Cell.NONE,
                Cell.of(row.linkMicroohms(), 1),
                Cell.of(row.linkHigh(), 1),
                Cell.NONE);
    }
}
