package org.ohmstead.intake.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.ohmstead.intake.check.CheckedSurvey;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.intake.file.ReadingRow;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.forensics.Walk;
import org.ohmstead.intake.forensics.WalkVerdict;
import org.ohmstead.kernel.OhmicKind;

/** What could put a checked survey right, remark by remark; the likeliest of each first. */
public final class Proposals {

    private static final int MOST_PLACES = 4;
    private static final int MOST_ROWS = 3;
    private static final int THOUSAND = 3;

    private final SurveySheet sheet;
    private final CheckedSurvey checked;
    private final Function<SurveySheet, CheckedSurvey> check;
    private final Ground ground;
    private final List<Proposal> proposals = new ArrayList<>();

    private Proposals(
            SurveySheet sheet, Ground ground, CheckedSurvey checked, Function<SurveySheet, CheckedSurvey> check) {
        this.sheet = sheet;
        this.ground = ground;
        this.checked = checked;
        this.check = check;
    }

    /** @param check looks at a sheet as it would be after a repair */
    public static List<Proposal> of(
            SurveySheet sheet, Ground ground, CheckedSurvey checked, Function<SurveySheet, CheckedSurvey> check) {
        Proposals all = new Proposals(sheet, ground, checked, check);
        checked.remarks().forEach(all::answer);
        return List.copyOf(all.proposals);
    }

    private void answer(Remark remark) {
        switch (remark.code()) {
            case ORDER_REVERSED, ORDER_SKIPPED, ORDER_READ_TWICE, ORDER_SWAPPED, ORDER_OTHER_STRING ->
                order(remark.code());
            case UNIT_SLIP -> unit(remark);
            case RECIPROCAL_SLIP -> add(remark.code(), new SetKind(otherKind()));
            case POSITION_DOUBLED -> rows(remark.code(), checked.readings().doubled());
            case POSITION_FOREIGN -> rows(remark.code(), checked.readings().foreign());
            default -> {}
        }
    }

    private void order(RemarkCode code) {
        WalkVerdict verdict = checked.walk();
        if (verdict == null) {
            return;
        }
        String other = verdict.otherString();
        if (other != null) {
            int cut = other.indexOf(" / ");
            add(code, new AssignTo(other.substring(0, cut), other.substring(cut + 3)));
            return;
        }
        Walk walk = verdict.walk();
        switch (walk.kind()) {
            case FROM_THE_OTHER_END -> add(code, new Reverse());
            case SKIPPED -> places(verdict).forEach(jar -> add(code, new InsertGap(jar)));
            case READ_TWICE -> places(verdict).forEach(jar -> add(code, new LeaveOut(jar + 1)));
            case SWAPPED -> add(code, new SwapJars(walk.at(), walk.with()));
            case IN_ORDER -> {}
        }
    }

    /** The likeliest place, then its nearest neighbours as far as the verdict leaves it open. */
    private IntStream places(WalkVerdict verdict) {
        int at = verdict.walk().at();
        return IntStream.rangeClosed(0, verdict.lastJar() - verdict.firstJar())
                .flatMap(away -> away == 0 ? IntStream.of(at) : IntStream.of(at - away, at + away))
                .filter(jar -> jar == at || jar >= verdict.firstJar() && jar <= verdict.lastJar())
                .limit(MOST_PLACES);
    }

    /** Up or down: whichever lets the remark go. */
    private void unit(Remark remark) {
        ColumnKind column = remark.place().words().equals("all links")
                ? ColumnKind.LINK
                : remark.place().column() == sheet.columnOf(ColumnKind.JAR_VOLTS)
                        ? ColumnKind.JAR_VOLTS
                        : ColumnKind.JAR_OHMIC;
        IntStream.of(-THOUSAND, THOUSAND)
                .mapToObj(power -> new ScaleColumn(column, power))
                .filter(step -> check.apply(step.on(sheet, ground)).remarks().stream()
                        .noneMatch(left ->
                                left.code() == remark.code() && left.place().equals(remark.place())))
                .findFirst()
                .ifPresent(step -> add(remark.code(), step));
    }

    private OhmicKind otherKind() {
        return sheet.facts().ohmicKind() == OhmicKind.CONDUCTANCE ? OhmicKind.IMPEDANCE : OhmicKind.CONDUCTANCE;
    }

    private void rows(RemarkCode code, List<ReadingRow> rows) {
        rows.stream()
                .filter(row -> row.line() > 0)
                .limit(MOST_ROWS)
                .forEach(row -> add(code, new IgnoreRow(row.line())));
    }

    private void add(RemarkCode code, Step step) {
        proposals.add(new Proposal(code, step));
    }
}
