package org.ohmstead.intake.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ohmstead.intake.RemarkView;
import org.ohmstead.intake.check.Severity;
import org.ohmstead.intake.file.FileText;

/** The first lines of a file that is text, each with whether a remark points at it. */
final class RawText {

    private static final int MOST_LINES = 600;

    private RawText() {}

    /** @param remark its message, empty when none points here */
    record Line(int number, String text, String remark, String severity) {}

    /** Nothing when the file is not text. */
    static List<Line> of(byte[] bytes, List<RemarkView> remarks) {
        List<Line> lines = new ArrayList<>();
        for (String text : FileText.firstLines(bytes, MOST_LINES)) {
            lines.add(line(lines.size() + 1, text, remarks));
        }
        return lines;
    }

    private static Line line(int number, String text, List<RemarkView> remarks) {
        return remarks.stream()
                .filter(remark -> remark.line() == number)
                .max((a, b) -> a.severity().compareTo(b.severity()))
                .map(remark -> new Line(number, text, remark.message(), word(remark.severity())))
                .orElseGet(() -> new Line(number, text, "", ""));
    }

    private static String word(Severity severity) {
        return severity.word().toLowerCase(Locale.ROOT);
    }
}
