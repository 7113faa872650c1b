package org.ohmstead.assessment;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Judge;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.kernel.Sha256;

/** SHA-256 over everything a judgement looks at: two judgements of one fingerprint and engine are the same. */
final class Fingerprint {

    private static final ClassValue<List<Method>> COMPONENTS = new ClassValue<>() {
        @Override
        protected List<Method> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getAccessor)
                    .toList();
        }
    };

    private final MessageDigest digest = Sha256.digest();
    private final ByteBuffer buffer = ByteBuffer.allocate(8192);

    private Fingerprint() {}

    static byte[] of(StringHistory history, Limits limits) {
        Fingerprint fingerprint = new Fingerprint();
        fingerprint.add(Judge.ENGINE_VERSION + "/"
                + ForecastParameters.standard().version() + "/" + limits.version() + new TreeMap<>(limits.changed()));
        fingerprint.add(history.plan());
        fingerprint.add(history.spells());
        fingerprint.add(history.remakes());
        history.surveys().forEach(fingerprint::add);
        return fingerprint.done();
    }

    /**
     * Over what the forecast has seen of the first surveys: work done after the last of them is left out, since it tells
     * nothing of them, and so are the days on which jars were taken out.
     */
    static byte[] ofFirst(int surveys, StringHistory history) {
        Fingerprint fingerprint = new Fingerprint();
        List<SurveyReadings> first = history.surveys().subList(0, surveys);
        LocalDate until = first.stream()
                .map(SurveyReadings::takenOn)
                .reduce(history.plan().inServiceOn(), (a, b) -> a.isAfter(b) ? a : b);
        fingerprint.add(history.plan());
        history.spells().stream()
                .filter(spell -> !spell.during().from().isAfter(until))
                .forEach(spell ->
                        fingerprint.add(spell.position() + "/" + spell.during().from() + "/" + spell.baselineOhmic()));
        history.remakes().stream()
                .filter(remake -> !remake.remadeOn().isAfter(until))
                .forEach(fingerprint::add);
        first.forEach(fingerprint::add);
        return fingerprint.done();
    }

    private byte[] done() {
        flush();
        return digest.digest();
    }

    private void add(SurveyReadings survey) {
        add(survey.surveyId() + "/" + survey.takenAt() + "/" + survey.takenOn() + "/" + survey.ohmicKind() + "/"
                + survey.instrument() + "/" + survey.onFloat());
        add(new double[] {survey.ambientCelsius(), survey.stringVolts(), survey.rippleAmps()});
        add(survey.ohmic());
        add(survey.volts());
        add(survey.celsius());
        add(new double[] {survey.linkMicroohms().length});
        for (double[] straps : survey.linkMicroohms()) {
            add(straps);
        }
    }

    /** Records and lists part by part, so that a component added later counts by itself. */
    private void add(@Nullable Object value) {
        if (value instanceof Record parts) {
            add(parts);
        } else if (value instanceof List<?> list) {
            put(list.size());
            list.forEach(this::add);
        } else if (value instanceof Number number) {
            put(Double.doubleToLongBits(number.doubleValue()));
        } else {
            add(String.valueOf(value));
        }
    }

    private void add(Record parts) {
        for (Method component : COMPONENTS.get(parts.getClass())) {
            try {
                add(component.invoke(parts));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("Every component of a record can be read", e);
            }
        }
    }

    private void add(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        put(bytes.length);
        flush();
        digest.update(bytes);
    }

    private void add(double[] values) {
        put(values.length);
        for (double value : values) {
            put(Double.doubleToLongBits(value));
        }
    }

    private void put(long bits) {
        if (buffer.remaining() < Long.BYTES) {
            flush();
        }
        buffer.putLong(bits);
    }

    private void flush() {
        buffer.flip();
        digest.update(buffer);
        buffer.clear();
    }
}
