package org.ohmstead.assessment.model;

/**
 * Every limit of the practitioner's rules with its default, unit and where the default comes from. The works cited are
 * listed in {@code docs/assessment.md}; a limit taken from memory says so, to be checked against the owner's edition.
 */
public enum Limit {
    JAR_RISE_NOTE(0.20, "of baseline", Provenance.READ, "within ±20 % is acceptable: VRLA manual RS-2044 p. 24"),
    JAR_RISE_PLAN(0.25, "of baseline", Provenance.MEMORY, "25 to 30 % over baseline: commentary to IEEE 1188"),
    JAR_RISE_ACT(0.50, "of baseline", Provenance.READ, "over 50 % needs attention: VRLA manual RS-2044 p. 24"),
    JAR_FALL(0.20, "of baseline", Provenance.READ, "within ±20 % is acceptable: VRLA manual RS-2044 p. 24"),
    JAR_STEP(0.15, "since the last reading, beyond the string", Provenance.OURS, "five times a poor repeat reading"),
    LOT_RISE(0.20, "of the lot's median", Provenance.OURS, "twice the 5 to 10 % batch spread of new units"),
    LOT_Z(4, "robust standard deviations", Provenance.OURS, "about one healthy jar in 30,000"),
    LOT_DAYS(183, "days between the starts of one lot", Provenance.OURS, "jars of one delivery"),
    LOT_SIZE(5, "jars", Provenance.OURS, "fewer have no median worth the name"),
    LEAST_SPREAD(0.01, "of the value", Provenance.MEMORY, "careful repeat readings agree within 1 to 3 %"),
    BASELINE_MONTHS(5, "months after the start", Provenance.READ, "about six months: makers' manual 92.30 §9.7"),
    BASELINE_LATE_MONTHS(24, "months after the start", Provenance.OURS, "later than that, loss may have begun"),
    TREND_LEAST(4, "readings", Provenance.OURS, "fewer have no slope worth the name"),
    TREND_MOST(60, "readings", Provenance.OURS, "the latest ones count"),
    STRING_RISE(0.20, "of baseline, median jar", Provenance.OURS, "a whole string at the single jar's edge"),
    SURVEY_SHIFT(0.08, "since the last survey, median jar", Provenance.OURS, "more than any string ages in a round"),
    SURVEY_KELVIN(5, "K off the baseline survey", Provenance.MEMORY, "0.5 to 1 % per K"),
    LINK_RISE_ACT(0.20, "of baseline", Provenance.READ, "makers' manuals 92.30, 95.10; RS-1476 p. 26"),
    LINK_KIND_NOTE(0.20, "of the kind's average", Provenance.READ, "makers' manuals 92.30, 95.10; RS-1476 p. 26"),
    LINK_KIND_PLAN(0.50, "of the kind's average", Provenance.OURS, "so much worse than its like was never well made"),
    LINK_INSTALL_SHARE(0.10, "of the kind's average", Provenance.READ, "makers' manuals 92.30 §7.7, 95.10 §7.6"),
    LINK_INSTALL_MICROOHMS(5, "µΩ over the average", Provenance.READ, "makers' manuals 92.30 §7.7, 95.10 §7.6"),
    LINK_KIND_SIZE(3, "links", Provenance.OURS, "fewer have no average worth the name"),
    LINK_INSTALL_MONTHS(
            12, "months after the start", Provenance.OURS, "a first reading later than that is no installation record"),
    CABLE_NOISE(0.10, "of the gross reading", Provenance.OURS, "two readings that each repeat within 3 %, twice over"),
    DROP_BETWEEN_JARS(30, "mV at the design current", Provenance.READ, "makers' manual RS-1476"),
    DROP_BETWEEN_TIERS(100, "mV at the design current", Provenance.READ, "makers' manual RS-1476"),
    FLOAT_LOW(2.13, "V per cell, vented 1.215", Provenance.MEMORY, "practice for vented cells of 1.215 gravity"),
    FLOAT_FLOOR(2.07, "V per cell, vented 1.215", Provenance.MEMORY, "practice for vented cells of 1.215 gravity"),
    VOLTS_OFF_MEDIAN(0.04, "of the string's median", Provenance.OURS, "twice the ±2 % scatter of makers' notes"),
    SETPOINT_OFF(0.02, "V per cell off the set-point", Provenance.OURS, "common practice, no source"),
    SETPOINT_FAR(0.05, "V per cell off the set-point", Provenance.OURS, "common practice, no source"),
    TEMPERATURE_SPREAD(3, "K between jars", Provenance.READ, "5 °F: FIST 3-6 (1997); 3 °C from memory"),
    HOT_JAR(10, "K over the median", Provenance.OURS, "common practice, no source"),
    RIPPLE(5, "A rms per 100 Ah", Provenance.READ, "makers' manual RS-990 p. 18"),
    LIFE_HALVING(25.0 / 3, "K", Provenance.READ, "halves per 15 °F: RS-1476 p. 20; other makers say 10 K"),
    LIFE_TEST(0.85, "of the expected life", Provenance.READ, "specification SR 3.8.4.8: yearly capacity tests"),
    RENEW_SHARE(0.20, "of the jars", Provenance.OURS, "common practice, no source"),
    RISK_NOTE(0.10, "chance within twelve months", Provenance.OURS, "worth knowing, asks nothing"),
    RISK_FLAG(
            0.20,
            "chance within twelve months",
            Provenance.OURS,
            "0.15 where a failure is dear, 0.30 where a visit is"),
    RISK_ACT(
            0.80,
            "chance within twelve months",
            Provenance.OURS,
            "from there on three in four had failed or did within a year, on simulated estates"),
    LINK_RISK_PLAN(0.50, "chance within twelve months", Provenance.OURS, "links near their limit may stay there long"),
    RISK_READINGS(3, "readings since it was fitted", Provenance.OURS, "fewer rest on what is known of its like"),
    INSTRUMENT_OFF(
            0.015,
            "of the value, and the 95 % interval leaves zero out",
            Provenance.OURS,
            "half of the step that careful crews would notice"),
    RECHECK_SOON(30, "days", Provenance.OURS, "a sharp finding should not wait for the next round"),
    RECHECK(90, "days", Provenance.OURS, "a mild finding may ride with a quarterly visit");

    private final double standard;
    private final String unit;
    private final Provenance provenance;
    private final String source;

    Limit(double standard, String unit, Provenance provenance, String source) {
        this.standard = standard;
        this.unit = unit;
        this.provenance = provenance;
        this.source = source;
    }

    /** The value in force where nobody set another. */
    public double standard() {
        return standard;
    }

    public String unit() {
        return unit;
    }

    public Provenance provenance() {
        return provenance;
    }

    public String source() {
        return source;
    }

    /** How a default is known. */
    public enum Provenance {
        READ,
        MEMORY,
        OURS
    }
}
