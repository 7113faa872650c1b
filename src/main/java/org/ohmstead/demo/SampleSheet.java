package org.ohmstead.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.function.UnaryOperator;
import org.ohmstead.ledger.NewSurvey;

/** Survey sheets of the demo estate's strings, good ones and such as a crew's bad day brings forth. */
enum SampleSheet {
    /** Sixty vented cells in four tiers, two straps a link: nothing wrong with it. */
    SURVEY("survey", 20, "B", UnaryOperator.identity(), UnaryOperator.identity()),
    /** Twenty-four vented cells of a telecoms string: nothing wrong with it. */
    SMALL_SURVEY("survey-24-jars", 17, "A", UnaryOperator.identity(), UnaryOperator.identity()),
    /** A nickel-cadmium string: nothing wrong with it. */
    NICKEL_CADMIUM("survey-nickel-cadmium", 11, "A", UnaryOperator.identity(), UnaryOperator.identity()),
    /** A link that was well before has worked loose. */
    LOOSE_LINK(
            "survey-loose-link",
            36,
            "A",
            story -> story.withLinks(Trouble.loosened(34, 0.8)),
            UnaryOperator.identity()),
    /** The clamp saw an eighth less than what was injected. */
    CURRENT_PAST_CLAMP(
            "survey-current-past-clamp", 4, "A", story -> story.withCurrentLost(0.12), UnaryOperator.identity()),
    /** Jar 17 was skipped. */
    SKIPPED_JAR("survey-skipped-jar", 8, "A", UnaryOperator.identity(), SheetMishap.withoutRow(17)),
    /** The closing reading was left out, so that the instrument never stored the last jar. */
    NO_CLOSING_READING("survey-no-closing-reading", 16, "B", UnaryOperator.identity(), SheetMishap.withoutRow(55)),
    /** The closing reading stands where the negative terminal link belongs. */
    CLOSING_READING_AS_LINK(
            "survey-closing-reading-as-link", 24, "A", UnaryOperator.identity(), SheetMishap.closingReading(55)),
    /** The sheet bears the name of a string of sixty cells but holds the readings of fifty-five smaller ones. */
    WRONG_STRING("survey-wrong-string", 0, "A", UnaryOperator.identity(), SheetMishap.bearing(Places.code(12), "B"));

    private final String fileName;
    private final int site;
    private final String string;
    private final UnaryOperator<Story> news;
    private final UnaryOperator<String> mishap;

    SampleSheet(String fileName, int site, String string, UnaryOperator<Story> news, UnaryOperator<String> mishap) {
        this.fileName = fileName;
        this.site = site;
        this.string = string;
        this.news = news;
        this.mishap = mishap;
    }

    String fileName() {
        return fileName + ".csv";
    }

    /** The sheet with the string's state of the estate's own day, bearing that date. */
    String text(DemoEstate estate, LocalDate on) {
        DemoString known = estate.string(site, string);
        DemoString now = known.with(news.apply(known.story()));
        NewSurvey survey = new Simulation(now, estate.today()).survey(0, on, estate.today(), 0);
        LocalDateTime siteTime = survey.facts().takenAt().atZone(Places.ZONE).toLocalDateTime();
        return mishap.apply(
                SheetText.of(survey, known.entry().site(), known.entry().name(), siteTime));
    }
}
