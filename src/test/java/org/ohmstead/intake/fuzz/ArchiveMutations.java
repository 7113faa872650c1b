package org.ohmstead.intake.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Changes of an archive: inside its parts, in what it tells of them, and in its bytes. */
final class ArchiveMutations {

    private static final String[] NAMES = {
        "../../outside.csv",
        "/etc/hosts",
        "C:\\walk.csv",
        "a/../b.csv",
        "",
        "x".repeat(300),
        "xl/workbook.xml",
        "xl/sharedStrings.xml",
        "xl/worksheets/sheet1.xml",
        "folder/",
        "\u0000",
        "walk.zip",
        "__MACOSX/._walk.csv"
    };
    private static final String[] XML = {
        "<!DOCTYPE a [<!ENTITY b \"c\">]>",
        "&b;",
        "&#0;",
        "&#xD800;",
        "<a>",
        "</a>",
        "<!--",
        "<![CDATA[",
        "]]>",
        "<?x?>",
        "xmlns:p=\"q\" ",
        "<c r=\"ZZZ99\"><v>1</v></c>",
        "<c t=\"s\"><v>99999999</v></c>",
        "<c t=\"s\"><v>-1</v></c>",
        "<row r=\"9999999\">",
        "<c r=\"1\" s=\"99999999\"><v>1e308</v></c>",
        "<c t=\"b\"><v>2</v></c>",
        "<v/>",
        "<c t=\"d\"><v>2026-11-18</v></c>",
        "<is><t>x</t></is>",
        "<si/>",
        "<xf numFmtId=\"14\"/>",
        "<sheet name=\"a\" r:id=\"rId1\"/>"
    };

    private static final Pattern VALUE = Pattern.compile("(?<=>)[^<>]+(?=<)|(?<=\")[^\"<>]*(?=\")");

    private ArchiveMutations() {}

    static byte[] mutate(byte[] archive, List<Zip.Part> parts, List<Zip.Part> others, SplittableRandom random) {
        return switch (random.nextInt(8)) {
            case 0 -> tableBytes(archive, random);
            case 1 -> ByteMutations.mutate(archive, archive, random);
            default -> repacked(changed(parts, others, random), random);
        };
    }

    /** The end of an archive, where its table of contents stands. */
    private static byte[] tableBytes(byte[] archive, SplittableRandom random) {
        int start = Math.max(0, archive.length - 22 - random.nextInt(600));
        byte[] table = Arrays.copyOfRange(archive, start, archive.length);
        byte[] changed = ByteMutations.mutate(table, table, random);
        return ByteMutations.joined(archive, 0, start, changed, 0, changed.length);
    }

    private static List<Zip.Part> changed(List<Zip.Part> parts, List<Zip.Part> others, SplittableRandom random) {
        List<Zip.Part> changed = new ArrayList<>(parts);
        for (int n = random.nextInt(1, 4); n > 0; n--) {
            int at = random.nextInt(changed.size());
            Zip.Part part = changed.get(at);
            switch (random.nextInt(12)) {
                case 0 -> changed.add(at, others.get(random.nextInt(others.size())));
                case 1 -> changed.add(new Zip.Part(NAMES[random.nextInt(NAMES.length)], part.content()));
                case 2 -> changed.set(at, new Zip.Part(NAMES[random.nextInt(NAMES.length)], part.content()));
                case 3 -> {
                    if (changed.size() > 1) {
                        changed.remove(at);
                    }
                }
                default -> changed.set(at, new Zip.Part(part.name(), content(part.content(), others, random)));
            }
        }
        return changed;
    }

    private static byte[] content(byte[] content, List<Zip.Part> others, SplittableRandom random) {
        byte[] other = others.get(random.nextInt(others.size())).content();
        String text = new String(content, StandardCharsets.UTF_8);
        return switch (random.nextInt(8)) {
            case 0 -> ByteMutations.mutate(content, other, random);
            case 1 -> bytes(TextMutations.mutate(text, new String(other, StandardCharsets.UTF_8), random));
            case 2 -> bytes(markup(text, random));
            default -> bytes(value(text, random));
        };
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** What an element or attribute says, and nothing of the markup round it. */
    private static String value(String text, SplittableRandom random) {
        Matcher found = VALUE.matcher(text);
        int from = random.nextInt(text.length() + 1);
        if (!found.find(from) && !found.find(0)) {
            return text;
        }
        String by = random.nextInt(4) == 0 ? found.group() : TextMutations.cell(random);
        String escaped = by.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
        return text.substring(0, found.start()) + escaped + text.substring(found.end());
    }

    /** Most often between two elements, where it may be read as one. */
    private static String markup(String text, SplittableRandom random) {
        int from = random.nextInt(text.length() + 1);
        int at = random.nextInt(4) == 0 ? from : Math.max(0, text.indexOf('<', from));
        String repeated = XML[random.nextInt(XML.length)].repeat(random.nextInt(20) == 0 ? random.nextInt(2_000) : 1);
        return text.substring(0, at) + repeated + text.substring(at);
    }

    private static byte[] repacked(List<Zip.Part> parts, SplittableRandom random) {
        Zip zip = new Zip();
        int liar = random.nextInt(4) == 0 ? random.nextInt(parts.size()) : -1;
        for (int i = 0; i < parts.size(); i++) {
            Zip.Part part = parts.get(i);
            boolean lies = i == liar;
            zip.with(part.name(), part.content(), random.nextBoolean(), told -> {
                if (lies) {
                    lie(told, random);
                }
            });
        }
        return random.nextInt(30) == 0 ? zip.bytes(random.nextInt(1 << 16)) : zip.bytes();
    }

    private static void lie(Zip.Told told, SplittableRandom random) {
        long[] lies = {0, 1, 0xFFFF_FFFFL, 0x7FFF_FFFFL, told.size + 1, told.packed - 1, random.nextInt(1 << 20)};
        long lie = lies[random.nextInt(lies.length)];
        switch (random.nextInt(7)) {
            case 0 -> told.packed = lie;
            case 1 -> told.size = lie;
            case 2 -> told.crc = lie;
            case 3 -> told.method = (int) lie & 0xFFFF;
            case 4 -> told.flags = 1 << random.nextInt(16);
            case 5 -> told.at = (int) lie;
            default -> told.nameInTable = NAMES[random.nextInt(NAMES.length)];
        }
    }
}
