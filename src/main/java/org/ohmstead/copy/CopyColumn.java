package org.ohmstead.copy;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/**
 * A column and how its field is made of a value; the factories are named after the column's type, which a binary COPY
 * must meet exactly.
 *
 * @param typeOid number of its type in PostgreSQL's catalogue, which is the same everywhere
 * @param write appends the field
 */
public record CopyColumn<T>(String name, int typeOid, Writer<T> write) {

    private static final int BIGINT = 20;
    private static final int INTEGER = 23;
    private static final int TEXT = 25;
    private static final int DOUBLE_PRECISION = 701;
    private static final int DATE = 1082;
    private static final int JSONB = 3802;
    private static final int ANY_ARRAY = 2277;

    /** Appends one field of a value. */
    @FunctionalInterface
    public interface Writer<T> {
        void write(T value, WireBuffer out);
    }

    public static <T> CopyColumn<T> bigint(String name, ToLongFunction<T> of) {
        return new CopyColumn<>(name, BIGINT, (value, out) -> out.field(of.applyAsLong(value)));
    }

    public static <T> CopyColumn<T> integer(String name, ToIntFunction<T> of) {
        return new CopyColumn<>(name, INTEGER, (value, out) -> out.intField(of.applyAsInt(value)));
    }

    public static <T> CopyColumn<T> integerOrNull(String name, Function<T, @Nullable Integer> of) {
        return new CopyColumn<>(name, INTEGER, (value, out) -> {
            Integer number = of.apply(value);
            if (number == null) {
                out.nullField();
            } else {
                out.intField(number);
            }
        });
    }

    public static <T> CopyColumn<T> doublePrecision(String name, Function<T, @Nullable Double> of) {
        return new CopyColumn<>(name, DOUBLE_PRECISION, (value, out) -> out.doubleField(of.apply(value)));
    }

    public static <T> CopyColumn<T> text(String name, Function<T, @Nullable String> of) {
        return new CopyColumn<>(name, TEXT, (value, out) -> out.field(of.apply(value)));
    }

    /** The constant's name as text. */
    public static <T> CopyColumn<T> word(String name, Function<T, @Nullable Enum<?>> of) {
        return new CopyColumn<>(name, TEXT, (value, out) -> {
            Enum<?> constant = of.apply(value);
            out.field(constant == null ? null : constant.name());
        });
    }

    public static <T> CopyColumn<T> date(String name, Function<T, @Nullable LocalDate> of) {
        return new CopyColumn<>(name, DATE, (value, out) -> out.field(of.apply(value)));
    }

    public static <T> CopyColumn<T> jsonb(String name, Function<T, String> of) {
        return new CopyColumn<>(name, JSONB, (value, out) -> out.jsonField(of.apply(value)));
    }

    /** An array of the column's type in the value's row, with one element a part of the value, in their order. */
    public static <T, P> CopyColumn<T> array(CopyColumn<P> element, Function<T, List<P>> parts) {
        return new CopyColumn<>(element.name(), ANY_ARRAY, (value, out) -> {
            List<P> elements = parts.apply(value);
            int start = out.startField();
            out.putArrayHeader(element.typeOid(), elements.size(), true);
            for (P part : elements) {
                element.write().write(part, out);
            }
            out.endField(start);
        });
    }
}
