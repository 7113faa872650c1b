package org.ohmstead.demo;

import static java.util.Map.entry;
import static org.ohmstead.demo.Trouble.corrosion;
import static org.ohmstead.demo.Trouble.dryOut;
import static org.ohmstead.demo.Trouble.loosened;
import static org.ohmstead.demo.Trouble.poorFromTheStart;
import static org.ohmstead.demo.Trouble.shortedCell;

import java.util.Map;
import java.util.function.UnaryOperator;
import org.ohmstead.demo.Story.Work;

/** Which strings have something to tell, by site number and string name. All others age quietly. */
final class Stories {

    private static final Map<String, UnaryOperator<Story>> TOLD = Map.ofEntries(
            entry(key(2, "A"), story -> story.withJars(dryOut(7, 0.62), dryOut(23, 0.41), dryOut(31, 0.33))),
            entry(key(5, "B"), story -> story.withJars(dryOut(12, 0.48))),
            entry(key(18, "C"), story -> story.withJars(dryOut(3, 0.55), dryOut(4, 0.37), dryOut(38, 0.29))),
            entry(key(34, "A"), story -> story.withJars(dryOut(19, 0.31))),
            entry(key(4, "B"), story -> story.withJars(corrosion(17, 0.36), corrosion(18, 0.31), corrosion(44, 0.24))),
            entry(key(16, "A"), story -> story.withJars(corrosion(9, 0.28))),
            entry(key(23, "A"), story -> story.withJars(corrosion(71, 0.42), corrosion(72, 0.27))),
            entry(key(12, "A"), story -> story.withJars(shortedCell(26, 0.24, 0.16))),
            entry(key(21, "C"), story -> story.withJars(shortedCell(14, 0.13, 1.9))),
            entry(key(8, "B"), story -> story.withLinks(loosened(31, 0.75))),
            entry(key(20, "A"), story -> story.withLinks(loosened(8, 0.42), loosened(45, 0.9))),
            entry(key(31, "B"), story -> story.withLinks(loosened(60, 0.38))),
            entry(key(28, "C"), story -> story.withLinks(poorFromTheStart(22, 0.65))),
            entry(key(0, "B"), story -> story.withRemade(0.55, new Work(19, 14, "Opened, cleaned, new bolts"))),
            entry(key(15, "A"), story -> story.withRemade(0.40, new Work(88, 9, "Lug cleaned and greased"))),
            entry(key(9, "A"), story -> story.withReplaced(new Work(6, 20, "Failed in test"))),
            entry(
                    key(26, "B"),
                    story -> story.withReplaced(
                            new Work(11, 26, "High ohmic value"), new Work(12, 26, "High ohmic value"))),
            entry(key(13, "B"), story -> story.withWear(0.34)),
            entry(key(37, "A"), story -> story.withWear(0.43)),
            entry(key(29, "A"), story -> story.withCurrentLost(0.12)),
            entry(key(10, "C"), story -> story.late(4)),
            entry(key(27, "A"), story -> story.late(2)),
            entry(key(33, "B"), story -> story.late(7)),
            entry(key(39, "A"), story -> story.withJars(corrosion(133, 0.26)).withLinks(loosened(87, 0.55))));

    private Stories() {}

    static Story of(int site, String string, double wear) {
        UnaryOperator<Story> told = TOLD.getOrDefault(key(site, string), UnaryOperator.identity());
        return told.apply(Story.uneventful(wear));
    }

    private static String key(int site, String string) {
        return site + " " + string;
    }
}
