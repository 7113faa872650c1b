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
import org.ohmstead.intake.repair.UseMap;
import org.springframework.stereotype.Component;

/** The first stage: bytes become survey sheets. */
@Component
class SheetReading {

    /** More surveys in one file are history, which is loaded in bulk. */
    static final int MOST_PARTS = 60;

    private final ColumnMapShelf maps;
    private final Access access;

    SheetReading(ColumnMapShelf maps, Access access) {
        this.maps = maps;
        this.access = access;
    }

    /** Whether one readable sheet came out, of the house's own form or by a saved column map. */
    boolean read(Passage passage) {
        Optional<UseMap> asked = UseMap.lastOf(passage.steps());
        if (asked.isPresent()) {
            return readBy(passage, maps.version(asked.get().name(), asked.get().version()));
        }
        List<SurveySheet> sheets = new ArrayList<>();
        FileReading file = reading(passage.handover().bytes(), sheets);
        Optional<ColumnMapView> map =
                file.sheets() == 0 ? fitting(passage.handover().bytes()) : Optional.empty();
        if (map.isPresent()) {
            return readBy(passage, map.get());
        }
        passage.remark(remarks(file.findings(), RemarkCode.FILE_UNREADABLE));
        return choose(passage, sheets, file.sheets());
    }

    private boolean readBy(Passage passage, ColumnMapView map) {
        String named = map.name() + ", version " + map.version();
        passage.remark(List.of(Remark.of(RemarkCode.READ_BY_MAP, Place.FILE, named, "")));
        return readBy(passage, map.map());
    }

    /** Whether one readable survey came out by this map. */
    boolean readBy(Passage passage, ColumnMap map) {
        MappedFile file = mapped(passage.handover().bytes(), map);
        passage.remark(remarks(file.findings(), RemarkCode.FILE_UNREADABLE));
        if (file.sheets().isEmpty()) {
            Place place = Place.FILE;
            passage.remark(List.of(Remark.of(RemarkCode.SHEET_UNREADABLE, place, "no readings", "readings")));
        }
        return choose(passage, file.sheets(), file.sheets().size());
    }

    /** The only sheet, or the one of the asked part. Several are left for passages of their own. */
    private boolean choose(Passage passage, List<SurveySheet> sheets, int count) {
        if (passage.verdict() == UploadState.REFUSED || sheets.isEmpty()) {
            return false;
        }
        int part = passage.part();
        if (part > 0) {
            return part <= sheets.size() ? take(passage, sheets.get(part - 1)) : isGone(passage, count);
        }
        if (count == 1) {
            return take(passage, sheets.get(0));
        }
        if (count > MOST_PARTS || passage.handover().correction() != null) {
            String most = passage.handover().correction() == null ? "at most " + MOST_PARTS : "one, to correct another";
            passage.remark(List.of(Remark.of(RemarkCode.SEVERAL_SHEETS, Place.FILE, count + " surveys", most)));
        } else {
            passage.readSeveral(sheets);
        }
        return false;
    }

    /** Goes on with that sheet, if it is readable. */
    boolean take(Passage passage, SurveySheet sheet) {
        passage.remark(remarks(sheet.findings(), RemarkCode.SHEET_UNREADABLE));
        if (!sheet.isReadable()) {
            return false;
        }
        passage.read(sheet);
        return true;
    }

    private static boolean isGone(Passage passage, int count) {
        passage.remark(List.of(
                Remark.of(RemarkCode.SHEET_UNREADABLE, Place.FILE, count + " surveys", "at least " + passage.part())));
        return false;
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

    private static FileReading reading(byte[] bytes, List<SurveySheet> sheets) {
        try {
            return SheetReader.read(ByteSource.of(bytes), sheet -> {
                if (sheets.size() < MOST_PARTS) {
                    sheets.add(sheet);
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
