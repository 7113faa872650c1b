package org.ohmstead.intake.check;

import static org.ohmstead.intake.check.Severity.DOUBT;
import static org.ohmstead.intake.check.Severity.HOLD;
import static org.ohmstead.intake.check.Severity.NOTE;
import static org.ohmstead.intake.check.Severity.REFUSE;

/** Everything a survey's way in can remark on: how much it costs, what it means in the trade, what to do about it. */
public enum RemarkCode {
    FILE_UNREADABLE(REFUSE, "The file cannot be read.", "Export the survey again and hand in that file."),
    SHEET_UNREADABLE(REFUSE, "No survey can be made of this sheet.", "Correct the sheet and hand it in again."),
    SEVERAL_SHEETS(
            REFUSE,
            "The file holds more surveys than one upload takes.",
            "Load them as history in bulk, or hand the sheets in one by one."),
    VALUE_LOST(
            HOLD,
            "A value could not be read and was left out.",
            "Give the cell's value by a repair, or do without it."),
    READ_BY_RULE(NOTE, "A doubtful form was read by its written rule.", "Nothing, if that is what was meant."),
    READ_BY_MAP(
            NOTE,
            "The file is no survey sheet; it was read by a saved column map.",
            "Nothing, if the readings are where they belong."),
    SAME_FILE(
            NOTE,
            "The very same file was handed in before; it is not stored a second time.",
            "Nothing. If this was to be another survey, export that one."),

    STRING_NOT_NAMED(
            HOLD,
            "Neither the sheet nor the upload says which string this is.",
            "Fill in site and string, or hand the file in on the string's page."),
    STRING_UNKNOWN(
            HOLD,
            "The register has no such string, or it is out of your reach.",
            "Correct the site code or the string's name, or have the string entered in the register."),
    STRING_NOT_AS_CLAIMED(
            HOLD,
            "The sheet names another string than the one it was handed in for.",
            "Make sure which string was measured, then hand it in there."),

    CORRECTION_ASKED(
            HOLD,
            "The file is to take the place of a stored survey, and an engineer decides that.",
            "Nothing has to be measured again for this; an engineer accepts or refuses it."),
    CORRECTS_WITHDRAWN(
            HOLD,
            "The survey that this file corrects does not count any more.",
            "Look which survey counts now. Accept this one only if it is to count beside it; else refuse it."),

    REPAIR_MISFITS(
            HOLD,
            "A repair made before does not fit the survey any more.",
            "Take the repair back, and look what the survey needs now."),

    POSITION_MISSING(
            HOLD,
            "Jars of the string have no ohmic value: skipped on the walk, or the trigger missed.",
            "Measure them while still on site; an engineer may accept the survey without them."),
    POSITION_DOUBLED(
            HOLD,
            "Positions stand twice: a double trigger shifts every jar after it.",
            "Find where the count went wrong and number the rows again."),
    POSITION_FOREIGN(
            HOLD,
            "Positions lie beyond the end of the string.",
            "Check the string and the number of its jars in the register."),
    LAST_JAR_MISSING(
            HOLD,
            "Only the last jar is missing: the closing reading was left out, so the last values were never stored.",
            "Measure the last jar again and take the closing reading after it."),
    CLOSING_READING(
            NOTE,
            "The reading after the last jar is near zero: it is the closing reading and was not stored as a link.",
            "Nothing. The negative terminal link counts as not measured unless it was read on its own."),
    ORDER_REVERSED(
            HOLD,
            "The readings fit this string walked from the other end.",
            "Find out where the walk began. If it was at the negative end, turn the walk round by a repair."),
    ORDER_SKIPPED(
            HOLD,
            "From about here on every reading fits the next jar: a jar was left out, and the count is one short.",
            "Look on site which jar it was and measure it; a repair leaves the gap and moves the rows after it up by one."),
    ORDER_READ_TWICE(
            HOLD,
            "From about here on every reading fits the jar before: a jar was read twice, and the count is one ahead.",
            "Take the second reading out by a repair, which moves the rows after it back by one; measure the last jar."),
    ORDER_SWAPPED(
            HOLD,
            "The readings of two jars fit each other's places.",
            "Measure both again; if they stay, look whether the jars themselves changed places."),
    ORDER_OTHER_STRING(
            HOLD,
            "The readings have the pattern of another string of this site.",
            "Make sure which string was measured, and give the survey to that one by a repair."),
    ORDER_UNSEEN(
            NOTE,
            "Whether the jars were read in their order can't be told from this string's history.",
            "Nothing. Until it can be told, take care to begin at the positive end and to leave out no jar."),
    COPIED(
            HOLD,
            "Nearly all ohmic values are those of an earlier survey.",
            "Export the survey that was taken; if none was, take it."),
    COPIED_ALIKE(
            DOUBT,
            "The ohmic values are more like an earlier survey's than this string's surveys ever are.",
            "Ask how they were taken: it may be an old memory exported again, or figures carried over by hand."),
    SCATTER_HIGH(
            DOUBT,
            "The jars' ohmic values scatter far more than this string's usually do: bad contact or dirty posts.",
            "Clean posts and probes, and measure again while still on site."),
    DIGITS_REGULAR(
            DOUBT,
            "The ohmic values end in digits as measured ones hardly ever do: rounded or made up.",
            "Hand in the values as the instrument gave them."),

    STRAPS_DIFFER(
            HOLD,
            "Links have another number of strap readings than the register has straps.",
            "Check the instrument's straps per link, or correct the link in the register."),
    LINKS_UNMEASURED(
            DOUBT,
            "Some links were measured and these were not.",
            "Measure them while still on site: an unmeasured joint is an unjudged joint."),

    UNIT_SLIP(
            HOLD,
            "All values of a column are about a thousand times what they should be, or a thousandth.",
            "Set the column's unit by a repair: milli and micro are easily mixed up."),
    RECIPROCAL_SLIP(
            HOLD,
            "The ohmic values look like the reciprocal of what they should be.",
            "Check whether the instrument gives conductance, and set ohmic kind and unit to match."),
    OHMIC_IMPOSSIBLE(
            HOLD,
            "Ohmic values that no jar of this type can have: the probe slipped or touched the strap.",
            "Measure again, probes on the posts only."),
    OHMIC_JUMPED(
            DOUBT,
            "Ohmic values are more than double or less than half of the same jar's last ones.",
            "Measure again while still on site; if it stays, look whether the jar was replaced."),
    LINK_IMPOSSIBLE(
            HOLD,
            "Link readings below zero: probes reversed, or a reading without current.",
            "Measure the link again."),
    LINK_JUMPED(
            DOUBT,
            "Link readings are more than three times, or less than a third, of the same link's last ones.",
            "Measure again; if it stays, the joint needs someone."),

    VOLTS_NEGATIVE(
            HOLD,
            "Jar voltages below zero: probes reversed, or a jar reversed.",
            "Measure again with the probes the right way round."),
    VOLTS_TINY(
            HOLD,
            "Jar voltages near zero: the probe did not touch, or the cell is dead.",
            "Measure again. If it stays, the jar needs someone now."),
    VOLTS_IMPOSSIBLE(
            HOLD,
            "Jar voltages higher than a cell of this technology can reach on float.",
            "Check the unit and the number of cells per jar in the register."),
    VOLTS_SUM_OFF(
            DOUBT,
            "The jar voltages do not quite add up to the string voltage.",
            "Check the string voltage with a second meter."),
    VOLTS_SUM_FAR_OFF(
            HOLD,
            "The jar voltages do not add up to the string voltage: a jar was missed, or another string was read.",
            "Make sure that string voltage and jars belong to the same string, and that every jar was read."),

    CURRENT_PAST_CLAMP(
            DOUBT,
            "The clamped test current differs from the injected one: part of it runs through charger, load or a"
                    + " parallel string.",
            "Put the clamp inside this string, and open parallel paths where rules allow."),
    RIPPLE_HIGH(
            DOUBT,
            "The ripple current is above its limit: readings are noisy, jars warm up, the charger may be at fault.",
            "Have the charger's filter looked at before trusting small changes."),

    TEMPERATURE_MISSING(NOTE, "No temperature was recorded.", "Record the ambient temperature on every survey."),
    TEMPERATURE_ODD(DOUBT, "A temperature is not believable for a battery room.", "Check the unit, °C or °F."),
    TEMPERATURE_FAR(
            DOUBT,
            "The temperature is far from the baseline survey's, so values are not plainly comparable.",
            "Read changes with care; survey at a like temperature if one matters."),

    TIME_FUTURE(HOLD, "The survey was taken in the future.", "Set the instrument's clock and correct the time."),
    TIME_BEFORE_SERVICE(
            HOLD,
            "The survey was taken before the string went into service.",
            "Correct the time, or the in-service date in the register."),
    TIME_OUT_OF_ORDER(
            NOTE,
            "A later survey of this string is already stored; this one is put in its place in time.",
            "Nothing, if it is a late arrival."),
    TIME_SAME_DAY(
            HOLD,
            "The string has a survey of the same day.",
            "If this one corrects it, accept it in the other's place; if it is the same walk again, refuse it."),
    SITE_TIME_DOUBTFUL(
            NOTE,
            "The site's clocks were changed that night: the time occurs twice or never, and was read by the rule.",
            "Write the offset with the time if the hour matters."),

    OHMIC_KIND_CHANGED(
            DOUBT,
            "The baseline has another kind of ohmic value; the two are not convertible into each other.",
            "Measure with the baseline's kind of instrument, or begin a new baseline."),
    OHMIC_FREQUENCY_CHANGED(
            DOUBT,
            "The baseline was measured at another frequency, so the trend has a step.",
            "Set the instrument to the baseline's frequency."),
    OFF_FLOAT(
            DOUBT,
            "The string was not on float: partly discharged cells read higher.",
            "Survey again once the string has been on full float."),
    CALIBRATION_PAST(
            DOUBT,
            "The instrument was past its calibration.",
            "Have it calibrated; the survey's evidence is weaker until then.");

    private final Severity severity;
    private final String message;
    private final String remedy;

    RemarkCode(Severity severity, String message, String remedy) {
        this.severity = severity;
        this.message = message;
        this.remedy = remedy;
    }

    public Severity severity() {
        return severity;
    }

    /** What is wrong, and why it matters in the trade. */
    public String message() {
        return message;
    }

    /** What to do about it. */
    public String remedy() {
        return remedy;
    }
}
