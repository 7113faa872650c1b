package org.ohmstead.reports;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;
import java.util.TreeSet;
import java.util.UUID;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.UploadView;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.reports.render.CsvForm;
import org.ohmstead.reports.render.PdfForm;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.XlsxForm;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * A quarter's summary in every form with the very files that its surveys came in by, as a ZIP. {@code SHA256SUMS} inside is
 * checked by {@code sha256sum -c SHA256SUMS}. The same contents give the same bytes.
 */
@Service
public class EvidencePack {

    private static final int FORMS = 3;

    private final Compliance compliance;
    private final SurveyLedger ledger;
    private final Intake intake;

    EvidencePack(Compliance compliance, SurveyLedger ledger, Intake intake) {
        this.compliance = compliance;
        this.ledger = ledger;
        this.intake = intake;
    }

    /** Written file by file; one raw file is held in memory at a time. */
    @Transactional(readOnly = true)
    public void write(ComplianceSummary summary, OutputStream out) throws IOException {
        write(summary, out, Progress.UNSEEN);
    }

    @Transactional(readOnly = true)
    void write(ComplianceSummary summary, OutputStream out, Progress progress) throws IOException {
        TreeSet<Long> surveys = surveys(summary);
        int all = surveys.size() + FORMS;
        progress.at("writing the summary", 0, all);
        Report report = compliance.report(summary);
        SummedZip pack = new SummedZip(out, summary.asOf());
        pack.add(summary.fileName() + ".csv", written(to -> CsvForm.write(report.section("Lines"), to)));
        pack.add(summary.fileName() + ".xlsx", written(to -> XlsxForm.write(report, to)));
        pack.add(summary.fileName() + ".pdf", written(to -> PdfForm.write(compliance.printed(summary), to)));
        int done = FORMS;
        for (long surveyId : surveys) {
            progress.at("adding the surveys' files", done++, all);
            UUID upload = ledger.survey(surveyId).uploadId();
            if (upload != null) {
                UploadView view = intake.upload(upload);
                pack.add("surveys/" + surveyId + "-" + safe(view.fileName()), intake.raw(upload));
            }
        }
        pack.finish();
    }

    private static TreeSet<Long> surveys(ComplianceSummary summary) {
        TreeSet<Long> surveys = new TreeSet<>();
        summary.lines().stream()
                .map(ComplianceLine::surveyId)
                .filter(Objects::nonNull)
                .forEach(surveys::add);
        return surveys;
    }

    private static String safe(String fileName) {
        return fileName.replaceAll("[^A-Za-z0-9._-]", "_").replaceFirst("^\\.+", "_");
    }

    private interface Writing {
        void to(OutputStream out);
    }

    private static byte[] written(Writing writing) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writing.to(out);
        return out.toByteArray();
    }
}
