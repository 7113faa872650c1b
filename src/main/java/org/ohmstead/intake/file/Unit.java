package org.ohmstead.intake.file;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The units a sheet may be written in. Powers of ten are moved in decimal, so that 0.0121 mΩ becomes 12.1 µΩ and nothing
 * else.
 */
public enum Unit {
    OHM(Quantity.RESISTANCE, 0, "Ω", "ohm", "ohms"),
    MILLIOHM(Quantity.RESISTANCE, -3, "mΩ", "mohm", "mohms", "milliohm", "milliohms"),
    MICROOHM(Quantity.RESISTANCE, -6, "µΩ", "uohm", "uohms", "microohm", "microohms"),
    SIEMENS(Quantity.CONDUCTANCE, 0, "S", "s", "mho", "siemens"),
    MILLISIEMENS(Quantity.CONDUCTANCE, -3, "mS", "ms", "mmho", "millisiemens"),
    KILOSIEMENS(Quantity.CONDUCTANCE, 3, "kS", "ks", "kmho", "kilosiemens"),
    VOLT(Quantity.VOLTAGE, 0, "V", "v", "volt", "volts"),
    MILLIVOLT(Quantity.VOLTAGE, -3, "mV", "mv", "millivolt", "millivolts"),
    AMPERE(Quantity.CURRENT, 0, "A", "a", "amp", "amps", "ampere", "amperes"),
    MILLIAMPERE(Quantity.CURRENT, -3, "mA", "ma", "milliamp", "milliamps"),
    HERTZ(Quantity.FREQUENCY, 0, "Hz", "hz", "hertz"),
    KILOHERTZ(Quantity.FREQUENCY, 3, "kHz", "khz"),
    CELSIUS(Quantity.TEMPERATURE, 0, "°C", "°c", "c", "degc", "celsius"),
    FAHRENHEIT(Quantity.TEMPERATURE, 0, "°F", "°f", "f", "degf", "fahrenheit"),
    GRAVITY(Quantity.GRAVITY, 0, "SG", "sg"),
    GRAVITY_POINTS(Quantity.GRAVITY, -3, "g/l", "g/l", "kg/m³", "kg/m3");

    private static final BigDecimal FREEZING = BigDecimal.valueOf(32);
    private static final BigDecimal FIVE = BigDecimal.valueOf(5);
    private static final BigDecimal NINE = BigDecimal.valueOf(9);

    private static final Map<String, Unit> NAMED = Arrays.stream(values())
            .flatMap(unit -> unit.spellings.stream().map(spelling -> Map.entry(spelling, unit)))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (first, same) -> first));

    private final Quantity quantity;
    private final int powerOfTen;
    private final String sign;
    private final List<String> spellings;

    Unit(Quantity quantity, int powerOfTen, String sign, String... spellings) {
        this.quantity = quantity;
        this.powerOfTen = powerOfTen;
        this.sign = sign;
        List<String> all = new ArrayList<>(Arrays.asList(spellings));
        all.add(Spelling.plain(sign));
        this.spellings = List.copyOf(all);
    }

    public Quantity quantity() {
        return quantity;
    }

    public String sign() {
        return sign;
    }

    /** The number in the other unit of the same quantity; exact in decimal, but for the ninths of °F. */
    public double to(Unit target, BigDecimal number) {
        if (this == FAHRENHEIT) {
            return number.subtract(FREEZING)
                    .multiply(FIVE)
                    .divide(NINE, MathContext.DECIMAL64)
                    .doubleValue();
        }
        return number.scaleByPowerOfTen(powerOfTen - target.powerOfTen).doubleValue();
    }

    boolean isPowerOfTenOf(Unit target) {
        return this != FAHRENHEIT && quantity == target.quantity;
    }

    /** By which a number in this unit is multiplied to be in the other. */
    int powerOfTenTo(Unit target) {
        return powerOfTen - target.powerOfTen;
    }

    /** Reads a unit as people write it. */
    public static Optional<Unit> named(String words) {
        return Optional.ofNullable(NAMED.get(Spelling.plain(words)));
    }

    /** The signs of a quantity's units, for messages: "A, mA". */
    public static String signsOf(Quantity quantity) {
        return Arrays.stream(values())
                .filter(unit -> unit.quantity == quantity)
                .map(Unit::sign)
                .collect(Collectors.joining(", "));
    }
}
