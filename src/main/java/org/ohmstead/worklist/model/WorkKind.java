package org.ohmstead.worklist.model;

/** What is to be done. */
public enum WorkKind {
    REMAKE_LINK("Remake link"),
    MEASURE_AGAIN("Measure again"),
    EQUALISE("Equalise"),
    INVESTIGATE("Investigate"),
    REPLACE_JAR("Replace jar"),
    TEST_CAPACITY("Test capacity"),
    OVERDUE_DUTY("Overdue duty");

    private final String words;

    WorkKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /**
     * The work in a few words: "Remake link 8|9".
     *
     * @param what its subject as people say it
     */
    public String title(String what) {
        return switch (this) {
            case REMAKE_LINK -> "Remake " + what;
            case MEASURE_AGAIN -> "Measure " + what + " again";
            case EQUALISE -> "Equalise " + what;
            case INVESTIGATE -> "Investigate " + what;
            case REPLACE_JAR -> "Replace " + what;
            case TEST_CAPACITY -> "Test the capacity of " + what;
            case OVERDUE_DUTY -> "Overdue: " + what;
        };
    }

    /** Whether such work can be about such a thing. */
    public boolean suits(Subject.Kind subject) {
        return switch (this) {
            case REMAKE_LINK -> subject == Subject.Kind.LINK;
            case REPLACE_JAR -> subject == Subject.Kind.JAR;
            case EQUALISE, TEST_CAPACITY -> subject == Subject.Kind.STRING;
            case MEASURE_AGAIN, INVESTIGATE -> subject != Subject.Kind.DUTY;
            case OVERDUE_DUTY -> subject == Subject.Kind.DUTY;
        };
    }
}
