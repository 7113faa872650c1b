package org.ohmstead.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.ohmstead.intake.check.Place;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.FileReading;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.springframework.stereotype.Component;

/** The first stage: bytes become one survey sheet. */
@Component
class SheetReading {

    /** Whether exactly one readable sheet came out. */
    boolean read(Passage passage) {
        List<SurveySheet> first = new ArrayList<>(1);
        FileReading file = reading(passage.handover().bytes(), first);
        passage.remark(remarks(file.findings(), RemarkCode.FILE_UNREADABLE));
        if (file.sheets() > 1) {
            passage.remark(
                    List.of(Remark.of(RemarkCode.SEVERAL_SHEETS, Place.FILE, file.sheets() + " sheets", "one sheet")));
            return false;
        }
        first.forEach(sheet -> passage.remark(remarks(sheet.findings(), RemarkCode.SHEET_UNREADABLE)));
        if (passage.verdict() == UploadState.REFUSED || first.isEmpty()) {
            return false;
        }
        passage.read(first.get(0));
        return true;
    }

    private static FileReading reading(byte[] bytes, List<SurveySheet> first) {
        try {
            return SheetReader.read(ByteSource.of(bytes), sheet -> {
                if (first.isEmpty()) {
                    first.add(sheet);
                }
            });
        } catch (IOException impossible) {
            throw new UncheckedIOException("Bytes in memory cannot fail to be read", impossible);
        }
    }

    private static List<Remark> remarks(List<Finding> findings, RemarkCode whenUnreadable) {
        return findings.stream()
                .map(finding -> Remark.of(codeOf(finding, whenUnreadable), finding))
                .toList();
    }

    private static RemarkCode codeOf(Finding finding, RemarkCode whenUnreadable) {
        return switch (finding.weight()) {
            case NOTED -> RemarkCode.READ_BY_RULE;
            case VALUE_LOST -> RemarkCode.VALUE_LOST;
            case UNREADABLE -> whenUnreadable;
        };
    }
}
