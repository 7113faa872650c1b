package org.ohmstead.intake.fuzz;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Changes of a text that keep its lines, cells and numbers in sight. */
final class TextMutations {

    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(?:[.,]\\d+)?");
    private static final Pattern WORD = Pattern.compile("[A-Za-zµΩ°]{2,}");
    private static final String[] NUMBERS = {
        "0",
        "-0",
        "-1",
        "1e9",
        "1e-400",
        "1e400",
        "99999999999999999999",
        "2147483648",
        "0x10",
        "1.",
        ".5",
        "1,5",
        "1.000,5",
        "1'000",
        "NaN",
        "Infinity",
        "∞",
        "OL",
        "n/a",
        "-",
        "#DIV/0!",
        "=1+1",
        "1e",
        "٣",
        "½",
        "0.4.1",
        "9999",
        "10000"
    };
    private static final String[] WORDS = {
        "ohmstead survey sheet",
        "position",
        "site",
        "string",
        "taken at",
        "ohmic kind",
        "impedance",
        "conductance",
        "jar mΩ",
        "jar S",
        "jar V",
        "jar °C",
        "jar SG",
        "link µΩ",
        "link 9 µΩ",
        "link 0 µΩ",
        "note",
        "on float",
        "yes",
        "2026-02-30T25:61",
        "2026-11-18",
        "+999999999-12-31T23:59",
        "-0001-01-01T00:00Z",
        "0000-00-00",
        "\uFEFF",
        "#",
        "\"",
        "\"\"",
        "\u0000",
        "\u202E",
        "\uD800",
        "İ",
        "Jar 7-8",
        "+",
        "7-8",
        "",
        "&lt;",
        "null",
        "true"
    };
    private static final String[] DELIMITERS = {",", ";", "\t", "|", " ", "\n", "\r", "\""};
    private static final String[] NESTING = {"[", "{\"a\":", "<a>", "(", "\"", "[[{\"b\":["};
    private static final int LONG = 50_000;

    private TextMutations() {}

    static String mutate(String text, String other, SplittableRandom random) {
        return switch (random.nextInt(12)) {
            case 0, 1 -> lines(text, other, random);
            case 2, 3 -> replaceOne(NUMBER, text, NUMBERS[random.nextInt(NUMBERS.length)], random);
            case 4 -> replaceOne(NUMBER, text, figure(random), random);
            case 5, 6 -> replaceOne(WORD, text, WORDS[random.nextInt(WORDS.length)], random);
            case 7 -> delimiters(text, random);
            case 8 -> insert(text, NESTING[random.nextInt(NESTING.length)].repeat(random.nextInt(1, 40)), random);
            case 9 -> insert(text, WORDS[random.nextInt(WORDS.length)], random);
            case 10 -> text.replace("\n", random.nextBoolean() ? "\r" : "\r\n");
            default -> random.nextInt(100) > 0 ? insert(text, " ", random) : endless(text, random);
        };
    }

    /** Lines left out, doubled, swapped, or taken from another file. */
    private static String lines(String text, String other, SplittableRandom random) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        switch (random.nextInt(5)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
            case 2 -> lines.set(at, lines.set(random.nextInt(lines.size()), lines.get(at)));
            case 3 -> lines.set(at, lines.get(at) + lines.get(random.nextInt(lines.size())));
            default -> {
                String[] others = other.split("\n", -1);
                lines.add(at, others[random.nextInt(others.length)]);
            }
        }
        return String.join("\n", lines);
    }

    /** What a cell may say, sound or not. */
    static String cell(SplittableRandom random) {
        return switch (random.nextInt(3)) {
            case 0 -> NUMBERS[random.nextInt(NUMBERS.length)];
            case 1 -> WORDS[random.nextInt(WORDS.length)];
            default -> figure(random);
        };
    }

    private static String figure(SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0 -> Integer.toString(random.nextInt());
            case 1 -> Double.toString(random.nextDouble() * 10);
            case 2 -> "9".repeat(random.nextInt(1, 400));
            default -> "0." + "0".repeat(random.nextInt(400)) + "1";
        };
    }

    private static String delimiters(String text, SplittableRandom random) {
        String from = DELIMITERS[random.nextInt(DELIMITERS.length)];
        String to = DELIMITERS[random.nextInt(DELIMITERS.length)];
        return random.nextBoolean()
                ? text.replace(from, to)
                : replaceOne(Pattern.compile(Pattern.quote(from)), text, to, random);
    }

    private static String insert(String text, String words, SplittableRandom random) {
        int at = random.nextInt(text.length() + 1);
        return text.substring(0, at) + words + text.substring(at);
    }

    /** A very long cell, row, run of blanks or file. */
    private static String endless(String text, SplittableRandom random) {
        String[] units = {"x", ",", ";", " ", "\n", "1,", "\u00a0", "\"\"", "1,0.4\n", "#\n"};
        String run = units[random.nextInt(units.length)].repeat(random.nextInt(LONG));
        return insert(text, random.nextBoolean() ? run : run + "x", random);
    }

    private static String replaceOne(Pattern pattern, String text, String by, SplittableRandom random) {
        Matcher found = pattern.matcher(text);
        int from = random.nextInt(text.length() + 1);
        return found.find(from) || found.find(0)
                ? text.substring(0, found.start()) + by + text.substring(found.end())
                : text + by;
    }
}
