package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.stream.Stream;

/**
 * A joint as it is made now.
 *
 * @param madeOn the later of the string's start, the link's last remake, and the start of a jar beside it: putting in a
 *     jar opens the links on both sides
 * @param remade whether it was made again after the string began
 */
record Joint(LinkPlan link, LocalDate madeOn, boolean remade) {

    static Joint of(Panel panel, LinkPlan link) {
        LocalDate began = panel.history().plan().inServiceOn();
        Stream<LocalDate> remakes = panel.history().remakes().stream()
                .filter(remake -> remake.ordinal() == link.ordinal())
                .map(LinkRemake::remadeOn);
        Stream<LocalDate> jars = Stream.of(link.ordinal(), link.ordinal() + 1)
                .filter(position ->
                        position >= 1 && position <= panel.history().plan().positions())
                .map(position -> panel.seats().at(position).during().from());
        LocalDate madeOn = Stream.concat(remakes, jars).reduce(began, (a, b) -> a.isAfter(b) ? a : b);
        return new Joint(link, madeOn, madeOn.isAfter(began));
    }
}
