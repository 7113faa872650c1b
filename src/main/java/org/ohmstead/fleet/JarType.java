package org.ohmstead.fleet;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

@Entity
class JarType {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Version
    private int version;

    private String code = "";
    private String description = "";

    @Enumerated(EnumType.STRING)
    private Technology technology = Technology.VENTED_LEAD_ACID;

    private int cellsPerJar;
    private double nominalVolts;
    private double ratedAmpereHours;
    private double ratedHours;
    private @Nullable Double endVoltsPerCell;
    private @Nullable Double ratingCelsius;
    private @Nullable Double designLifeYears;
    private @Nullable Double designLifeCelsius;
    private @Nullable Double floatVoltsPerCell;
    private String ratingSource = "";
    private @Nullable Double referenceOhmic;

    @Enumerated(EnumType.STRING)
    private @Nullable OhmicKind referenceOhmicKind;

    private @Nullable Double referenceOhmicHertz;
    private @Nullable String referenceOhmicSource;
    private @Nullable Double ohmicPerKelvin;
    private @Nullable String ohmicPerKelvinSource;
    private @Nullable Double warrantyYears;
    private @Nullable LocalDate retiredOn;

    /** For the mapper. */
    protected JarType() {}

    JarType(JarTypeEntry entry) {
        become(entry);
    }

    void become(JarTypeEntry entry) {
        code = entry.code();
        description = entry.description();
        technology = entry.technology();
        cellsPerJar = entry.cellsPerJar();
        nominalVolts = entry.nominalVolts();
        warrantyYears = entry.warrantyYears();
        retiredOn = entry.retiredOn();
        beRated(entry);
        referTo(entry);
    }

    private void beRated(JarTypeEntry entry) {
        ratedAmpereHours = entry.ratedAmpereHours();
        ratedHours = entry.ratedHours();
        endVoltsPerCell = entry.endVoltsPerCell();
        ratingCelsius = entry.ratingCelsius();
        designLifeYears = entry.designLifeYears();
        designLifeCelsius = entry.designLifeCelsius();
        floatVoltsPerCell = entry.floatVoltsPerCell();
        ratingSource = entry.ratingSource();
    }

    private void referTo(JarTypeEntry entry) {
        referenceOhmic = entry.referenceOhmic();
        referenceOhmicKind = entry.referenceOhmicKind();
        referenceOhmicHertz = entry.referenceOhmicHertz();
        referenceOhmicSource = entry.referenceOhmicSource();
        ohmicPerKelvin = entry.ohmicPerKelvin();
        ohmicPerKelvinSource = entry.ohmicPerKelvinSource();
    }

    long id() {
        return Known.id(id);
    }

    String code() {
        return code;
    }

    boolean isRetired() {
        return retiredOn != null;
    }

    JarTypeView view() {
        return new JarTypeView(id(), version, entry());
    }

    private JarTypeEntry entry() {
        return new JarTypeEntry(
                code,
                description,
                technology,
                cellsPerJar,
                nominalVolts,
                ratedAmpereHours,
                ratedHours,
                endVoltsPerCell,
                ratingCelsius,
                designLifeYears,
                designLifeCelsius,
                floatVoltsPerCell,
                ratingSource,
                referenceOhmic,
                referenceOhmicKind,
                referenceOhmicHertz,
                referenceOhmicSource,
                ohmicPerKelvin,
                ohmicPerKelvinSource,
                warrantyYears,
                retiredOn);
    }
}
