package org.ohmstead.worklist.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Advice;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.Trouble;
import org.ohmstead.assessment.model.UnitForecast;
import org.ohmstead.kernel.Urgency;

/** Turns a judgement into the work that it asks for, by the table of {@code docs/worklist.md}. */
public final class JudgementWork {

    /** Days in which what a finding asks for should be done where the finding names none; ours. */
    static final int ACT_DAYS = 30;

    static final int PLAN_DAYS = 180;
    static final int RECHECK_DAYS = 90;

    /** Where more jars and links of a string than these are to be read again, one item asks for all of them; ours. */
    static final int MOST_SINGLE_READINGS = 6;

    /** A capacity test counts for a year: yearly tests of what nears its life are practice. */
    static final int TEST_MONTHS = 12;

    private final StringJudgement judgement;
    private final List<Overruled> overruled;
    private final Wants wants = new Wants();

    private JudgementWork(StringJudgement judgement, List<Overruled> overruled) {
        this.judgement = judgement;
        this.overruled = overruled;
    }

    /**
     * @param overruled what people decided otherwise, as of today
     * @param testedOn day of the last capacity test that counts; null without any
     */
    public static Wants of(
            StringJudgement judgement, List<Overruled> overruled, @Nullable LocalDate testedOn, LocalDate today) {
        JudgementWork work = new JudgementWork(judgement, overruled);
        judgement.jars().forEach(work::jar);
        judgement.links().forEach(work::link);
        work.string();
        work.gatherReadings();
        work.leaveJarsToTheTest();
        work.leaveOutWhatWasTested(testedOn, today);
        return work.wants;
    }

    private void jar(JarJudgement jar) {
        UnitForecast forecast = jar.forecast();
        unit(
                Subject.jar(jar.position()),
                jar.sittingSince(),
                jar.reasons(),
                forecast == null ? null : forecast.trouble());
    }

    private void link(LinkJudgement link) {
        UnitForecast forecast = link.forecast();
        unit(Subject.link(link.ordinal()), link.madeOn(), link.reasons(), forecast == null ? null : forecast.trouble());
    }

    private void unit(Subject subject, LocalDate since, List<Reason> reasons, @Nullable Trouble trouble) {
        Wants found = new Wants();
        Urgency most = reasons.stream().map(Reason::asks).reduce(Urgency.CLEAR, Urgency::or);
        for (Reason reason : reasons) {
            if (most == Urgency.RECHECK || reason.asks() != Urgency.RECHECK) {
                want(found, subject, since, reason);
            }
        }
        if (trouble != null && most != Urgency.CLEAR) {
            suggest(found, subject, since, trouble);
        }
        hear(found, subject, since);
        wants.addAll(found);
    }

    private void want(Wants found, Subject of, @Nullable LocalDate since, Reason reason) {
        WorkKind kind = RuleTable.kindOf(reason.rule(), reason.asks());
        if (kind != null) {
            boolean ofString = !kind.suits(of.kind());
            Subject subject = ofString ? Subject.STRING : of;
            String words =
                    ofString ? capital(of.words(judgement.jars().size())) + ": " + reason.words() : reason.words();
            int days = reason.recheckDays() > 0 ? reason.recheckDays() : days(reason.asks());
            found.add(new Want(
                    new WorkKey(kind, subject),
                    ofString ? null : since,
                    reason.asks(),
                    judgement.asOf().plusDays(days),
                    words,
                    Source.JUDGEMENT,
                    true));
        }
    }

    private static int days(Urgency asks) {
        return switch (asks) {
            case ACT -> ACT_DAYS;
            case PLAN -> PLAN_DAYS;
            case RECHECK, CLEAR -> RECHECK_DAYS;
        };
    }

    private void suggest(Wants found, Subject subject, LocalDate since, Trouble trouble) {
        String words = "The pattern suggests " + trouble.words() + ": " + trouble.pattern() + ".";
        found.change(
                want -> want.key().subject().equals(subject),
                want -> new Want(
                        want.key(),
                        since,
                        want.urgency(),
                        want.by(),
                        want.reason() + " " + words,
                        want.source(),
                        true));
        if (trouble == Trouble.REPLACED_UNRECORDED) {
            found.add(made(new WorkKey(WorkKind.INVESTIGATE, subject), since, Urgency.RECHECK, words));
        }
    }

    private Want made(WorkKey key, @Nullable LocalDate since, Urgency urgency, String reason) {
        return new Want(key, since, urgency, judgement.asOf().plusDays(days(urgency)), reason, Source.JUDGEMENT, true);
    }

    /** What people decided takes the place of what the engine asks at that jar, link or string itself. */
    private void hear(Wants found, Subject subject, @Nullable LocalDate since) {
        overruled.stream().filter(one -> one.subject().equals(subject)).forEach(one -> hear(found, one, since));
    }

    private void hear(Wants found, Overruled one, @Nullable LocalDate since) {
        boolean asksForWork = one.urgency() == Urgency.PLAN || one.urgency() == Urgency.ACT;
        boolean worked = false;
        for (Want want : found.asked()) {
            boolean reading = want.key().kind() == WorkKind.MEASURE_AGAIN;
            found.remove(want.key());
            if (asksForWork && !reading) {
                found.add(made(want.key(), want.since(), one.urgency(), want.reason() + " " + one.words()));
                worked = true;
            } else if (one.urgency() == Urgency.RECHECK && reading) {
                found.add(want);
            } else {
                found.excuse(want.key(), one.words());
            }
        }
        WorkKey reading = new WorkKey(WorkKind.MEASURE_AGAIN, one.subject());
        if (one.urgency() == Urgency.RECHECK && found.of(reading) == null) {
            found.add(made(reading, since, Urgency.RECHECK, one.words()));
        } else if (asksForWork && !worked) {
            found.add(made(new WorkKey(WorkKind.INVESTIGATE, one.subject()), since, one.urgency(), one.words()));
        }
    }

    private void string() {
        Wants found = new Wants();
        judgement.reasons().forEach(reason -> want(found, Subject.STRING, null, reason));
        WorkKey test = new WorkKey(WorkKind.TEST_CAPACITY, Subject.STRING);
        for (Advice advice : judgement.advice()) {
            boolean tests = advice.kind() == Advice.Kind.TEST_CAPACITY;
            if (tests || advice.kind() == Advice.Kind.RENEW_STRING) {
                found.add(made(test, null, Urgency.PLAN, tests ? advice.rule() : advice.words()));
            }
        }
        hear(found, Subject.STRING, null);
        wants.addAll(found);
    }

    private void gatherReadings() {
        List<Want> single = wants.asked().stream()
                .filter(want -> want.key().kind() == WorkKind.MEASURE_AGAIN
                        && !want.key().subject().equals(Subject.STRING))
                .toList();
        if (single.size() > MOST_SINGLE_READINGS) {
            LocalDate by =
                    single.stream().map(Want::by).min(LocalDate::compareTo).orElseThrow();
            String units = single.stream()
                    .map(want -> want.key().subject().words(judgement.jars().size()))
                    .collect(Collectors.joining(", "));
            WorkKey whole = new WorkKey(WorkKind.MEASURE_AGAIN, Subject.STRING);
            String reason = single.size() + " of its jars and links are to be read again: " + units + ".";
            wants.change(single::contains, Want::kept);
            wants.add(new Want(whole, null, Urgency.RECHECK, by, reason, Source.JUDGEMENT, true));
        }
    }

    /** Where so many jars are over their limits that the string is to be tested, only the urgent ones are raised singly. */
    private void leaveJarsToTheTest() {
        List<Advice.Kind> advised = new ArrayList<>();
        judgement.advice().forEach(advice -> advised.add(advice.kind()));
        if (advised.contains(Advice.Kind.TEST_CAPACITY) && !advised.contains(Advice.Kind.REPLACE_JARS)) {
            wants.change(
                    want -> want.key().kind() == WorkKind.REPLACE_JAR && want.urgency() == Urgency.PLAN, Want::kept);
        }
    }

    private void leaveOutWhatWasTested(@Nullable LocalDate testedOn, LocalDate today) {
        WorkKey test = new WorkKey(WorkKind.TEST_CAPACITY, Subject.STRING);
        if (testedOn != null && testedOn.plusMonths(TEST_MONTHS).isAfter(today) && wants.of(test) != null) {
            wants.remove(test);
            wants.excuse(test, "Its capacity was tested on " + testedOn + ".");
        }
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
