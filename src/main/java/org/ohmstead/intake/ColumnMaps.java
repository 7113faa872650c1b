package org.ohmstead.intake;

import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;
import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.map.ColumnMap;
import org.ohmstead.intake.map.MapGuess;
import org.ohmstead.intake.map.MappedFile;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.interceptor.TransactionAspectSupport;

/** The saved column maps, by which tables of other shapes become surveys. */
@Service
public class ColumnMaps {

    private final ColumnMapShelf shelf;
    private final Stages stages;
    private final Access access;
    private final AuditTrail audit;

    ColumnMaps(ColumnMapShelf shelf, Stages stages, Access access, AuditTrail audit) {
        this.shelf = shelf;
        this.stages = stages;
        this.access = access;
        this.audit = audit;
    }

    /** The latest version of each, retired ones too, by name. */
    @Transactional(readOnly = true)
    public List<ColumnMapView> all() {
        access.require(SEE_ESTATE);
        return shelf.latest(access.reach());
    }

    /** @throws NotFound when there is none of that name within reach */
    @Transactional(readOnly = true)
    public ColumnMapView named(String name) {
        return all().stream()
                .filter(view -> view.name().equals(name))
                .findFirst()
                .orElseThrow(() -> NotFound.of("column map", name));
    }

    /**
     * Saves a map: its first version, or its next one.
     *
     * @param areaId null for every area
     * @throws Refused when it could never read anything
     */
    @Transactional
    public ColumnMapView save(String name, @Nullable Long areaId, String belongsTo, ColumnMap map) {
        return add(name, areaId, belongsTo, false, map);
    }

    /** Leaves a map out from now on; it stays on record. */
    @Transactional
    public ColumnMapView retire(String name) {
        ColumnMapView view = named(name);
        return add(name, view.areaId(), view.belongsTo(), true, view.map());
    }

    private ColumnMapView add(String name, @Nullable Long areaId, String belongsTo, boolean retired, ColumnMap map) {
        if (areaId == null) {
            access.require(SETTLE_SURVEYS);
        } else {
            access.require(SETTLE_SURVEYS, areaId);
        }
        if (name.isBlank() || name.length() > 80) {
            throw new Refused("A column map needs a name of at most 80 letters.");
        }
        if (!shelf.isWithin(name.strip(), access.reach())) {
            throw new Refused("A map of an area out of your reach has that name; choose another.");
        }
        MapShape.require(map);
        int version = shelf.add(
                name.strip(), areaId, belongsTo, retired, map, access.current().username());
        audit.record(retired ? "retired" : "saved", "column map", name.strip(), areaId, Map.of("version", version));
        return named(name.strip());
    }

    /** What the file seems to be: to be looked over by a person. */
    public ColumnMap guess(byte[] sample) {
        access.require(HAND_IN_SURVEYS);
        try {
            return MapGuess.of(ByteSource.of(sample));
        } catch (IOException impossible) {
            throw new UncheckedIOException("Bytes in memory cannot fail to be read", impossible);
        }
    }

    /** What handing the file in by this map would come to: the same stages, and nothing is kept. */
    @Transactional
    public MapPreview preview(String fileName, byte[] sample, ColumnMap map) {
        access.require(HAND_IN_SURVEYS);
        MapShape.require(map);
        TransactionAspectSupport.currentTransactionStatus().setRollbackOnly();
        MappedFile read = SheetReading.mapped(sample, map);
        Handover handover = new Handover(UUID.randomUUID(), fileName, sample, null);
        int part = read.sheets().size() > 1 ? 1 : 0;
        Passage passage = stages.run(new Passage(handover, part, List.of()), map);
        return new MapPreview(read.fits(), read.sheets(), passage.verdict(), passage.remarks());
    }
}
