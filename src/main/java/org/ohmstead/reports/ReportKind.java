package org.ohmstead.reports;

import org.ohmstead.kernel.Refused;

/** The reports there are, and what each answers. */
public enum ReportKind {
    ESTATE("estate-status", "Estate status", Scope.AREA, "How does every string stand, and when is it due next?"),
    WORK(
            "work-list",
            "Work list",
            Scope.AREA,
            "What is to be done, by whom and by when, and what was unresolved at the end of the quarter?"),
    COMPLIANCE(
            "compliance", "Compliance summary", Scope.QUARTER, "What was done on time in a quarter, and what was not?"),
    WARRANTY(
            "warranty",
            "Warranty list",
            Scope.AREA,
            "Which jars fail inside their jar type's warranty, and what shows it?"),
    REPLACEMENT(
            "replacement-forecast",
            "Replacement forecast",
            Scope.AREA,
            "How many jars will have to be replaced when, at what cost?"),
    STRING(
            "string",
            "String report",
            Scope.STRING,
            "What is known of one string: as built, judgement, jars, links, history, duties?"),
    SURVEY(
            "survey",
            "Survey report",
            Scope.SURVEY,
            "What was read in one survey, against the one before, and what was noticed?");

    /** What a report speaks of. */
    public enum Scope {
        /** One area, or everything in reach. */
        AREA,
        /** The same, in one quarter. */
        QUARTER,
        STRING,
        SURVEY
    }

    private final String code;
    private final String title;
    private final Scope scope;
    private final String answers;

    ReportKind(String code, String title, Scope scope, String answers) {
        this.code = code;
        this.title = title;
        this.scope = scope;
        this.answers = answers;
    }

    /** As in addresses and file names. */
    public String code() {
        return code;
    }

    public String title() {
        return title;
    }

    public Scope scope() {
        return scope;
    }

    public String answers() {
        return answers;
    }

    /** Whether it speaks of an area or of everything in reach, so that it can be sent by itself. */
    public boolean isOfEstate() {
        return scope == Scope.AREA || scope == Scope.QUARTER;
    }

    /** @throws Refused when there is none of that code */
    public static ReportKind of(String code) {
        for (ReportKind kind : values()) {
            if (kind.code.equals(code)) {
                return kind;
            }
        }
        throw new Refused("There is no report \"" + code + "\".");
    }
}
