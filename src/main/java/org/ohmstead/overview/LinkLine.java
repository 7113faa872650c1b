package org.ohmstead.overview;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.OverruleView;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Urgency;

/**
 * A link as last judged. Resistances in microohms.
 *
 * @param name "9|10"
 * @param title "link 9|10"
 * @param net what is left for the joints once the cable's own resistance is taken out
 * @param urgency what it asks, with what people overruled
 */
public record LinkLine(
        int ordinal,
        String name,
        String title,
        LinkKind kind,
        LocalDate madeOn,
        Urgency urgency,
        @Nullable LocalDate readOn,
        @Nullable Double combined,
        @Nullable Double conductor,
        @Nullable Double net,
        @Nullable Double baseline,
        @Nullable Double changeOnBaseline,
        @Nullable Double changeOnKind,
        @Nullable Double dropMillivolts,
        @Nullable Double heatWatts,
        List<Why> reasons,
        @Nullable Prospect prospect,
        @Nullable OverruleView overruled) {

    public LinkLine {
        reasons = List.copyOf(reasons);
    }

    public boolean asks() {
        return urgency != Urgency.CLEAR;
    }

    public String words() {
        return Words.capital(title) + " (" + kind.words() + "): "
                + (net == null ? "not measured" : Figures.microohms(net) + " net") + ", " + urgency.word();
    }
}
