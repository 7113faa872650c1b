package org.ohmstead.reports.render;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Objects;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** A report as tagged PDF on A4 across, readable in black and white. */
public final class PdfForm {

    static {
        // it tells of every font it loads
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
    }

    private PdfForm() {}

    public static void write(Report report, OutputStream out) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePdfUaAccessibility(true);
        builder.withProducer("Ohmstead");
        font(builder, "SourceSans3-Regular.ttf", "Sans", 400, FontStyle.NORMAL);
        font(builder, "SourceSans3-Semibold.ttf", "Sans", 600, FontStyle.NORMAL);
        font(builder, "SourceSans3-It.ttf", "Sans", 400, FontStyle.ITALIC);
        font(builder, "SourceSerif4-Semibold.ttf", "Serif", 600, FontStyle.NORMAL);
        builder.withHtmlContent(Markup.of(report), null);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            fixDates(document, report);
            document.save(out);
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void font(PdfRendererBuilder builder, String file, String family, int weight, FontStyle style) {
        builder.useFont(() -> stream(file), family, weight, style, true);
    }

    private static InputStream stream(String file) {
        return Objects.requireNonNull(PdfForm.class.getResourceAsStream(file), file);
    }

    /** The report's day instead of the moment of writing, and an identity that follows from the contents. */
    private static void fixDates(PDDocument document, Report report) {
        Calendar day = GregorianCalendar.from(report.asOf().atStartOfDay(ZoneOffset.UTC));
        PDDocumentInformation information = document.getDocumentInformation();
        information.setCreationDate(day);
        information.setModificationDate(day);
        document.setDocumentId((long) report.hashCode());
    }
}
