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

/**
 * SHA-256 over everything a judgement looks at: two judgements of one fingerprint and engine are the same. Each survey is
 * digested once; the fingerprints of a history and of its beginnings are made of these.
 */
final class Fingerprint {

    private static final ClassValue<List<Method>> COMPONENTS = new ClassValue<>() {
        @Override
        protected List<Method> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getAccessor)
                    .toList();
        }
    };

    private final StringHistory history;
    private final byte[][] surveys;

    private Fingerprint(StringHistory history, byte[][] surveys) {
        this.history = history;
        this.surveys = surveys;
    }

    static Fingerprint over(StringHistory history) {
        Digest digest = new Digest();
        byte[][] surveys = new byte[history.surveys().size()][];
        Arrays.setAll(surveys, i -> digest.of(history.surveys().get(i)));
        return new Fingerprint(history, surveys);
    }

    /** Over all of it, judged within these limits. */
    byte[] judgedBy(Limits limits) {
        Digest digest = new Digest();
        digest.add(Judge.ENGINE_VERSION + "/" + ForecastParameters.standard().version() + "/" + limits.version()
                + new TreeMap<>(limits.changed()));
        digest.add(history.plan());
        digest.add(history.spells());
        digest.add(history.remakes());
        for (byte[] survey : surveys) {
            digest.add(survey);
        }
        return digest.done();
    }

    /**
     * Over what the forecast has seen of the first surveys: work done after the last of them is left out, since it tells
     * nothing of them, and so are the days on which jars were taken out.
     */
    byte[] ofFirst(int count) {
        Digest digest = new Digest();
        LocalDate until = history.surveys().subList(0, count).stream()
                .map(SurveyReadings::takenOn)
                .reduce(history.plan().inServiceOn(), (a, b) -> a.isAfter(b) ? a : b);
        digest.add(history.plan());
        history.spells().stream()
                .filter(spell -> !spell.during().from().isAfter(until))
                .forEach(spell ->
                        digest.add(spell.position() + "/" + spell.during().from() + "/" + spell.baselineOhmic()));
        history.remakes().stream()
                .filter(remake -> !remake.remadeOn().isAfter(until))
                .forEach(digest::add);
        for (int i = 0; i < count; i++) {
            digest.add(surveys[i]);
        }
        return digest.done();
    }

    /** Takes values in one after the other. */
    private static final class Digest {

        private final MessageDigest digest = Sha256.digest();
        private final ByteBuffer buffer = ByteBuffer.allocate(8192);

        byte[] of(SurveyReadings survey) {
            add(survey);
            return done();
        }

        byte[] done() {
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
        void add(@Nullable Object value) {
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

        void add(String text) {
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

        void add(byte[] made) {
            flush();
            digest.update(made);
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
}
