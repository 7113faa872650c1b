package org.ohmstead.copy;

import java.time.LocalDate;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/**
 * A column and how its field is made of a value; the factories are named after the column's type, which a binary COPY
 * must meet exactly.
 *
 * @param write appends the field
 */
public record CopyColumn<T>(String name, Writer<T> write) {

    /** Appends one field of a value. */
    @FunctionalInterface
    public interface Writer<T> {
        void write(T value, WireBuffer out);
    }

    public static <T> CopyColumn<T> bigint(String name, ToLongFunction<T> of) {
        return new CopyColumn<>(name, (value, out) -> out.field(of.applyAsLong(value)));
    }

    public static <T> CopyColumn<T> integer(String name, ToIntFunction<T> of) {
        return new CopyColumn<>(name, (value, out) -> out.intField(of.applyAsInt(value)));
    }

    public static <T> CopyColumn<T> integerOrNull(String name, Function<T, @Nullable Integer> of) {
        return new CopyColumn<>(name, (value, out) -> {
            Integer number = of.apply(value);
            if (number == null) {
                out.nullField();
            } else {
                out.intField(number);
            }
        });
    }

    public static <T> CopyColumn<T> doublePrecision(String name, Function<T, @Nullable Double> of) {
        return new CopyColumn<>(name, (value, out) -> out.doubleField(of.apply(value)));
    }

    public static <T> CopyColumn<T> text(String name, Function<T, @Nullable String> of) {
        return new CopyColumn<>(name, (value, out) -> out.field(of.apply(value)));
    }

    /** The constant's name as text. */
    public static <T> CopyColumn<T> word(String name, Function<T, @Nullable Enum<?>> of) {
        return new CopyColumn<>(name, (value, out) -> {
            Enum<?> constant = of.apply(value);
            out.field(constant == null ? null : constant.name());
        });
    }

    public static <T> CopyColumn<T> date(String name, Function<T, @Nullable LocalDate> of) {
        return new CopyColumn<>(name, (value, out) -> out.field(of.apply(value)));
    }

    public static <T> CopyColumn<T> jsonb(String name, Function<T, String> of) {
        return new CopyColumn<>(name, (value, out) -> out.jsonField(of.apply(value)));
    }
}
