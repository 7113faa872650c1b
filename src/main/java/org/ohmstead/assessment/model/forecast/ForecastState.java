package org.ohmstead.assessment.model.forecast;

import java.nio.ByteBuffer;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Everything the forecast remembers of a string after its surveys so far. Nothing outside this package can change it;
 * {@link Forecaster} makes the next one.
 */
public final class ForecastState {
    private static final int LAYOUT = 3;

    final GroupState jars;
    final GroupState links;
    final VoltWatch volts;
    final LastSurvey last;

    ForecastState(GroupState jars, GroupState links, VoltWatch volts, LastSurvey last) {
        this.jars = jars;
        this.links = links;
        this.volts = volts;
        this.last = last;
    }

    /** The site's date of the last survey, null before the first. */
    public @Nullable LocalDate asOf() {
        return last.takenOn();
    }

    ForecastState copy() {
        return new ForecastState(jars.copy(), links.copy(), volts.copy(), last);
    }

    ForecastState after(LastSurvey next) {
        return new ForecastState(jars, links, volts, next);
    }

    /** For the store: layout, parameter version, number of jars, then 64-bit numbers. */
    public byte[] toBytes(ForecastParameters parameters) {
        double[] numbers = numbers();
        ByteBuffer buffer = ByteBuffer.allocate(3 * Integer.BYTES + numbers.length * Double.BYTES);
        buffer.putInt(LAYOUT).putInt(parameters.version()).putInt(jars.units.length);
        buffer.asDoubleBuffer().put(numbers);
        return buffer.array();
    }

    private double[] numbers() {
        DoubleTape tape = new DoubleTape();
        last.write(tape);
        jars.write(tape);
        links.write(tape);
        volts.write(tape);
        return tape.toArray();
    }

    /**
     * Reads a stored state back, bit by bit the same.
     *
     * @return null when it was stored by another layout or parameter version and must be rebuilt from the surveys
     */
    public static @Nullable ForecastState fromBytes(byte[] bytes, ForecastParameters parameters) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        if (buffer.getInt() != LAYOUT || buffer.getInt() != parameters.version()) {
            return null;
        }
        int count = buffer.getInt();
        double[] numbers = new double[buffer.remaining() / Double.BYTES];
        buffer.asDoubleBuffer().get(numbers);
        DoubleTape tape = new DoubleTape(numbers);
        LastSurvey last = LastSurvey.read(tape);
        GroupState jars = GroupState.read(tape, parameters.jars(), count);
        GroupState links = GroupState.read(tape, parameters.links(), count + 1);
        return new ForecastState(jars, links, VoltWatch.read(tape, count), last);
    }
}
