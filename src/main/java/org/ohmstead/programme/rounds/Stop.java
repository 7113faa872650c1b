package org.ohmstead.programme.rounds;

import java.time.LocalDate;
import java.util.List;

/**
 * One planned visit to one site.
 *
 * @param earliest on which all that must be done here can be done
 * @param latest after which something would be missed
 * @param does everything done on this visit
 * @param overCapacity whether the crew has more visits on this day than it can make: no free day was left in time
 */
public record Stop(
        String site,
        String crew,
        LocalDate on,
        LocalDate earliest,
        LocalDate latest,
        List<Window> does,
        boolean overCapacity) {

    public Stop {
        does = List.copyOf(does);
    }
}
