package org.ohmstead.assessment;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.model.estate.LifeCurve;
import org.ohmstead.assessment.model.estate.LifeLine;
import org.ohmstead.assessment.model.estate.ReplacementForecast;
import org.ohmstead.assessment.model.estate.ReplacementTally;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How the estate's jars last and how many will have to be replaced when. */
@Service
@Transactional(readOnly = true)
public class EstateForecast {

    /** How far ahead anything is said: three years. */
    public static final int MOST_QUARTERS = 12;

    private final JarLives lives;
    private final JarsInUse jars;
    private final Access access;
    private final Clock clock;

    EstateForecast(JarLives lives, JarsInUse jars, Access access, Clock clock) {
        this.lives = lives;
        this.jars = jars;
        this.access = access;
        this.clock = clock;
    }

    /**
     * The replacements to come of the jars in reach, with the current quarter first.
     *
     * @param quarters 1 to {@link #MOST_QUARTERS}
     */
    public ReplacementForecast replacements(int quarters) {
        access.require(SEE_ESTATE);
        if (quarters < 1 || quarters > MOST_QUARTERS) {
            throw new Refused("Ask for 1 to " + MOST_QUARTERS + " quarters, not " + quarters + ".");
        }
        Map<String, LifeLine> lines = LifeCurve.lines(lifeCurves());
        ReplacementTally tally = new ReplacementTally(today(), quarters);
        jars.stream(
                access.reach(),
                today(),
                jar -> tally.add(jar.area(), jar.jarType(), jar.since(), jar.chances(), lines.get(jar.jarType())));
        return tally.forecast();
    }

    /** How each jar type has lasted so far, over the whole estate: a curve of few jars would tell less, not other jars. */
    public List<LifeCurve> lifeCurves() {
        access.require(SEE_ESTATE);
        return lives.curves(today());
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
