package org.ohmstead.intake.file;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamException;

/** Turns what a cell of a workbook holds into text: shared words, numbers, dates, yes and no. */
final class WorkbookValues {

    private static final int MOST_SHARED = 500_000;
    private static final long LONGEST_SHARED = 16 << 20;
    private static final MathContext FIFTEEN = new MathContext(15);
    private static final Pattern DIGITS = Pattern.compile("[+-]?\\d{1,20}(?:\\.\\d{0,25})?(?:[eE][+-]?\\d{1,2})?");
    private static final Pattern NOT_CODE = Pattern.compile("\"[^\"]*\"|\\\\.|\\[[^\\]]*\\]|_.|\\*.");
    private static final Pattern DATE_PART = Pattern.compile("[dmyhsDMYHS]");
    private static final LocalDateTime EPOCH = LocalDate.of(1899, 12, 30).atStartOfDay();
    private static final int DAYS_TO_1904 = 1462;
    private static final BigDecimal SECONDS_A_DAY = BigDecimal.valueOf(86_400);
    private static final BigDecimal LAST_DAY = BigDecimal.valueOf(2_958_466);

    private final List<String> shared = new ArrayList<>();
    private long sharedLength;
    private final BitSet dateStyles = new BitSet();
    private final int dayShift;

    private WorkbookValues(boolean from1904) {
        dayShift = from1904 ? DAYS_TO_1904 : 0;
    }

    static WorkbookValues of(Archive archive, boolean from1904) throws IOException, XMLStreamException {
        WorkbookValues values = new WorkbookValues(from1904);
        Optional<ArchiveEntry> words = archive.entry("xl/sharedStrings.xml");
        if (words.isPresent()) {
            SafeXml.elements(archive.open(words.get()), element -> {
                if (element.getLocalName().equals("si")) {
                    values.share(SafeXml.text(element));
                }
            });
        }
        Optional<ArchiveEntry> styles = archive.entry("xl/styles.xml");
        if (styles.isPresent()) {
            values.readStyles(archive, styles.get());
        }
        return values;
    }

    private void share(String words) throws XMLStreamException {
        sharedLength += words.length();
        if (shared.size() >= MOST_SHARED || sharedLength > LONGEST_SHARED) {
            BadArchive tooLarge = BadArchive.tooLarge("more than " + MOST_SHARED + " words, or words too long");
            throw new XMLStreamException(tooLarge.getMessage(), tooLarge);
        }
        shared.add(words);
    }

    private void readStyles(Archive archive, ArchiveEntry styles) throws IOException, XMLStreamException {
        Map<String, String> codes = new HashMap<>();
        int[] style = {-1};
        SafeXml.elements(archive.open(styles), element -> {
            String name = element.getLocalName();
            if (name.equals("numFmt")) {
                codes.put(SafeXml.attribute(element, "numFmtId"), SafeXml.attribute(element, "formatCode"));
            } else if (name.equals("cellXfs")) {
                style[0] = 0;
            } else if (name.equals("cellStyles")) {
                style[0] = -1;
            } else if (name.equals("xf") && style[0] >= 0) {
                dateStyles.set(style[0]++, isDate(SafeXml.attribute(element, "numFmtId"), codes));
            }
        });
    }

    private static boolean isDate(String id, Map<String, String> codes) {
        String code = codes.get(id);
        if (code != null) {
            return DATE_PART.matcher(NOT_CODE.matcher(code).replaceAll("")).find();
        }
        return id.matches("1[4-9]|2[0-2]|4[5-7]|2[7-9]|3[0-6]|5[0-8]");
    }

    static boolean isTrue(String flag) {
        return flag.equals("1") || flag.equals("true");
    }

    String text(String raw, String type, int style) {
        return switch (type) {
            case "s" -> sharedText(raw);
            case "b" -> raw.isEmpty() ? "" : isTrue(raw) ? "yes" : "no";
            case "str", "inlineStr", "e", "d" -> raw;
            default -> number(raw, dateStyles.get(style));
        };
    }

    private String sharedText(String index) {
        boolean known = index.matches("\\d{1,8}") && Integer.parseInt(index) < shared.size();
        return known ? shared.get(Integer.parseInt(index)) : "";
    }

    private String number(String raw, boolean date) {
        if (!DIGITS.matcher(raw).matches()) {
            return raw;
        }
        BigDecimal number = new BigDecimal(raw.replaceFirst("\\.(?=$|[eE])", "")).round(FIFTEEN);
        if (date && number.signum() >= 0 && number.compareTo(LAST_DAY) < 0) {
            return dateText(number);
        }
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private String dateText(BigDecimal days) {
        long seconds =
                days.multiply(SECONDS_A_DAY).setScale(0, RoundingMode.HALF_UP).longValue();
        LocalDateTime at = EPOCH.plusDays(dayShift).plusSeconds(seconds);
        if (days.compareTo(BigDecimal.ONE) < 0) {
            return at.toLocalTime().toString();
        }
        return seconds % 86_400 == 0 ? at.toLocalDate().toString() : at.toString();
    }
}
