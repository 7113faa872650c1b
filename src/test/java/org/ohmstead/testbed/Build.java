package org.ohmstead.testbed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.LinkPlan;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/** How an invented string is built: its jar type, its plan, its law of ageing. */
record Build(StringPlan plan, JarCourse.Ageing ageing, double levelWhenNew, double perKelvin, double[] jointShare) {

    static Build of(Laws laws, JarTypeFacts type, double perKelvin, double limitOffset, LocalDate first, Dice dice) {
        int jars = jarCount(type, dice);
        double delay = dice.happens(.5) ? dice.between(.05, .5) : dice.between(.5, 6.0);
        double life = type.designLifeYears() * dice.between(.8, 1.7);
        JarCourse.Ageing ageing = new JarCourse.Ageing(
                life,
                dice.between(laws.bendLow(), laws.bendHigh()),
                Math.log(laws.limit()),
                laws.earlyDip(),
                limitOffset);
        List<LinkPlan> links = links(jars, dice);
        double[] jointShare = links.stream()
                .mapToDouble(link -> link.kind().isCable() ? dice.between(.25, .6) : 1)
                .toArray();
        LocalDate inService = first.minusDays(Math.round(delay * 365.25));
        StringPlan plan = new StringPlan(dice.between(1, 1 << 30), type, jars, links, 2.23, 100, 60, inService);
        double level = Math.log(type.referenceOhmic()) + dice.normal(.05);
        return new Build(plan, ageing, level, perKelvin, jointShare);
    }

    private static int jarCount(JarTypeFacts type, Dice dice) {
        int[] cells = {24, 60, 60, 104, 116, 180, 240};
        return Math.max(24, cells[dice.between(0, cells.length - 1)] / Math.min(2, type.cellsPerJar()));
    }

    private static List<LinkPlan> links(int jars, Dice dice) {
        int perTier = dice.between(10, 30);
        int straps = dice.happens(.8) ? 1 : 2;
        List<LinkPlan> links = new ArrayList<>();
        for (int k = 0; k <= jars; k++) {
            boolean terminal = k == 0 || k == jars;
            LinkKind kind = terminal ? LinkKind.TERMINAL : k % perTier == 0 ? LinkKind.TIER_CABLE : LinkKind.STRAP;
            links.add(new LinkPlan(k, kind, kind == LinkKind.STRAP ? straps : 1, null));
        }
        return links;
    }

    static JarTypeFacts type(int number, double perKelvin, Dice dice) {
        int cells = dice.happens(.7) ? 1 : dice.happens(.5) ? 3 : 6;
        double ampereHours = dice.between(100.0, 1500.0);
        return new JarTypeFacts(
                "TYPE-" + number,
                cells == 1 ? Technology.VENTED_LEAD_ACID : Technology.AGM,
                cells,
                2 * cells,
                ampereHours,
                2.23,
                120 * cells / ampereHours,
                OhmicKind.IMPEDANCE,
                dice.happens(.5) ? perKelvin * dice.between(.8, 1.2) : Double.NaN,
                dice.between(8.0, 20.0),
                25);
    }
}
