package org.ohmstead.reports;

import java.util.Locale;
import org.ohmstead.kernel.Refused;

/** The forms a report can take. */
public enum ReportForm {
    CSV("text/csv;charset=UTF-8;header=present"),
    XLSX("application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
    PDF("application/pdf"),
    ZIP("application/zip");

    private final String mediaType;

    ReportForm(String mediaType) {
        this.mediaType = mediaType;
    }

    public String mediaType() {
        return mediaType;
    }

    /** "pdf". */
    public String suffix() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @throws Refused when there is none of that name */
    public static ReportForm of(String suffix) {
        for (ReportForm form : values()) {
            if (form.suffix().equals(suffix)) {
                return form;
            }
        }
        throw new Refused("There is no form \"" + suffix + "\". Forms are csv, xlsx, pdf and, of compliance, zip.");
    }
}
