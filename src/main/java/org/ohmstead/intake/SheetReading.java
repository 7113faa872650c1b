package org.ohmstead.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmstead.access.Access;
import org.ohmstead.intake.check.Place;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.FileReading;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.map.ColumnMap;
import org.ohmstead.intake.map.MapReading;
import org.ohmstead.intake.map.MappedFile;
import org.springframework.stereotype.Component;

/** The first stage: bytes become one survey sheet. */
@Component
class SheetReading {

    private final ColumnMapShelf maps;
    private final Access access;

    SheetReading(ColumnMapShelf maps, Access access) {
        this.maps = maps;
        this.access = access;
    }

    /** Whether exactly one readable sheet came out, of the house's own form or by a saved column map. */
    boolean read(Passage passage) {
        List<SurveySheet> first = new ArrayList<>(1);
        FileReading file = reading(passage.handover().bytes(), first);
        Optional<ColumnMapView> map =
                file.sheets() == 0 ? fitting(passage.handover().bytes()) : Optional.empty();
        if (map.isPresent()) {
            String named = map.get().name() + ", version " + map.get().version();
            passage.remark(List.of(Remark.of(RemarkCode.READ_BY_MAP, Place.FILE, named, "")));
            return readBy(passage, map.get().map());
        }
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

    /** Whether exactly one readable survey came out by this map. */
    boolean readBy(Passage passage, ColumnMap map) {
        MappedFile file = mapped(passage.handover().bytes(), map);
        passage.remark(remarks(file.findings(), RemarkCode.FILE_UNREADABLE));
        if (file.sheets().size() != 1) {
            String seen = file.sheets().size() + " surveys";
            passage.remark(List.of(Remark.of(RemarkCode.SEVERAL_SHEETS, Place.FILE, seen, "one survey")));
            return false;
        }
        SurveySheet sheet = file.sheets().get(0);
        passage.remark(remarks(sheet.findings(), RemarkCode.SHEET_UNREADABLE));
        if (passage.verdict() == UploadState.REFUSED) {
            return false;
        }
        passage.read(sheet);
        return true;
    }

    /** The saved map that fits and names the most titles; of equal ones the one saved last. */
    private Optional<ColumnMapView> fitting(byte[] bytes) {
        Map<ColumnMapView, Integer> fitting = new HashMap<>();
        for (ColumnMapView view : maps.latest(access.reach())) {
            MappedFile file = view.retired() ? null : mapped(bytes, view.map());
            if (file != null && file.fits()) {
                fitting.put(view, file.titlesFound());
            }
        }
        return fitting.entrySet().stream()
                .max(Map.Entry.<ColumnMapView, Integer>comparingByValue()
                        .thenComparing(entry -> entry.getKey().savedAt()))
                .map(Map.Entry::getKey);
    }

    static MappedFile mapped(byte[] bytes, ColumnMap map) {
        try {
            return MapReading.read(ByteSource.of(bytes), map);
        } catch (IOException impossible) {
            throw new UncheckedIOException("Bytes in memory cannot fail to be read", impossible);
        }
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
