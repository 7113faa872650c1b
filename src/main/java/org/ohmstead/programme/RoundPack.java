package org.ohmstead.programme;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a crew takes along: last values and where to read again, and survey sheets to be filled in. */
@Service
@Transactional(readOnly = true)
public class RoundPack {

    private final Rounds rounds;
    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final Access access;

    RoundPack(Rounds rounds, FleetRegister register, SurveyLedger ledger, Access access) {
        this.rounds = rounds;
        this.register = register;
        this.ledger = ledger;
        this.access = access;
    }

    /**
     * A string of the round.
     *
     * @param kind of its ohmic values
     * @param last of its surveys; null without any
     */
    public record Part(
            StringBlueprint string,
            OhmicKind kind,
            @Nullable SurveyRecord last,
            List<RoundTask> tasks,
            List<Row> rows) {}

    /**
     * What was read last time; NaN where nothing was.
     *
     * @param position 0 for the positive terminal
     * @param linkMicroohms of the link after it, its straps in parallel
     */
    public record Row(int position, double ohmic, double volts, double linkMicroohms) {

        public double ohmicLow() {
            return ohmic * (1 - BlankSheet.CHANGE_TO_CHECK);
        }

        public double ohmicHigh() {
            return ohmic * (1 + BlankSheet.CHANGE_TO_CHECK);
        }

        public double linkHigh() {
            return linkMicroohms * (1 + BlankSheet.CHANGE_TO_CHECK);
        }
    }

    /** By the strings' names. */
    public List<Part> parts(long roundId) {
        access.require(SEE_ESTATE);
        RoundView round = rounds.round(roundId);
        return round.stringIds().stream().map(id -> part(round, id)).toList();
    }

    /** A survey sheet of a string of the round, to be filled in and handed in. */
    public String sheet(long roundId, long stringId) {
        access.require(SEE_ESTATE);
        RoundView round = rounds.round(roundId);
        if (!round.stringIds().contains(stringId)) {
            throw NotFound.of("string of this round", stringId);
        }
        return BlankSheet.of(register.blueprint(stringId), last(stringId), round.plannedOn(), round.crew());
    }

    private Part part(RoundView round, long stringId) {
        SurveyRecord last = last(stringId);
        List<RoundTask> tasks = round.tasks().stream()
                .filter(task -> task.stringId() == stringId)
                .toList();
        OhmicKind kind = last == null ? OhmicKind.IMPEDANCE : last.facts().ohmicKind();
        return new Part(
                register.blueprint(stringId), kind, last, tasks, last == null ? List.of() : rows(last.readings()));
    }

    private @Nullable SurveyRecord last(long stringId) {
        List<SurveyRecord> all = ledger.surveysOf(stringId);
        return all.isEmpty() ? null : all.get(all.size() - 1);
    }

    private static List<Row> rows(Readings readings) {
        List<Row> rows = new ArrayList<>();
        for (int position = 0; position <= readings.positions(); position++) {
            double ohmic = position == 0 ? Double.NaN : readings.ohmic()[position - 1];
            double volts = position == 0 ? Double.NaN : readings.volts()[position - 1];
            rows.add(new Row(position, ohmic, volts, LinkSum.of(readings.linkMicroohms(), position)));
        }
        return rows;
    }
}
