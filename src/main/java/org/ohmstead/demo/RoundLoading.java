package org.ohmstead.demo;

import java.time.LocalDate;
import java.util.List;
import org.ohmstead.programme.Rounds;
import org.ohmstead.programme.SuggestedRound;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Plans one area's rounds of the coming weeks; those of the others wait to be planned. */
@Component
@Profile("demo")
class RoundLoading {

    private static final String AREA = "ESTUARY";
    private static final int WEEKS_AHEAD = 9;
    private static final int VISITS_A_DAY = 2;

    private final Rounds rounds;

    RoundLoading(Rounds rounds) {
        this.rounds = rounds;
    }

    /** Nothing when there is a round already. */
    void plan(LocalDate today) {
        LocalDate last = today.plusWeeks(WEEKS_AHEAD);
        if (rounds.between(today, last).isEmpty()) {
            List<String> suggested = rounds.suggest(today, last, VISITS_A_DAY, AREA).rounds().stream()
                    .map(SuggestedRound::key)
                    .toList();
            rounds.adopt(today, last, VISITS_A_DAY, AREA, suggested);
        }
    }
}
