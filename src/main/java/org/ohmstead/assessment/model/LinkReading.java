package org.ohmstead.assessment.model;

import java.time.LocalDate;
import org.ohmstead.kernel.Conductor;

/**
 * One reading of a link, its straps combined and its cable taken out. In microohms; NaN when not to be had.
 *
 * @param survey index into the history's surveys
 * @param combined what the current sees from post to post: the straps in parallel
 * @param conductor the cable's own share; 0 where there is no cable, NaN where it is not known
 * @param net what is left for the joints: may be zero or negative, because table values are maxima
 */
record LinkReading(int survey, LocalDate takenOn, double combined, double conductor, double net) {

    private static final double UNKNOWN_ROOM_CELSIUS = 20;

    static LinkReading of(Panel panel, int survey, LinkPlan link) {
        SurveyReadings readings = panel.survey(survey);
        double combined = combined(readings.linkMicroohms(), link);
        double conductor = conductor(link, readings);
        double net = Double.isNaN(conductor) ? combined : combined - conductor;
        return new LinkReading(survey, readings.takenOn(), combined, conductor, net);
    }

    private static double combined(double[][] straps, LinkPlan link) {
        if (link.ordinal() >= straps.length) {
            return Double.NaN;
        }
        double[] read = straps[link.ordinal()];
        return read.length < link.straps() ? Double.NaN : parallel(read, link.straps());
    }

    /** 1 / (1/a + 1/b + ...) of the first so many; NaN if one of them is missing or cannot be a resistance. */
    static double parallel(double[] microohms, int straps) {
        double conductance = 0;
        for (int i = 0; i < straps; i++) {
            conductance += 1 / Numbers.positive(microohms[i]);
        }
        return 1 / conductance;
    }

    private static double conductor(LinkPlan link, SurveyReadings readings) {
        Conductor conductor = link.conductor();
        if (!link.kind().isCable()) {
            return 0;
        }
        return conductor == null
                ? Double.NaN
                : Conductors.microohms(conductor, Numbers.either(Panel.celsius(readings), UNKNOWN_ROOM_CELSIUS));
    }

    /** How many straps of the link were read at all. */
    static int strapsRead(SurveyReadings readings, LinkPlan link) {
        double[][] all = readings.linkMicroohms();
        int count = 0;
        for (double microohms : link.ordinal() < all.length ? all[link.ordinal()] : new double[0]) {
            count += microohms > 0 ? 1 : 0;
        }
        return count;
    }

    boolean cableDominates() {
        return net <= 0;
    }
}
