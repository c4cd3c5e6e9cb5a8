package weekwright.desk.export;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.GregorianCalendar;
import java.util.Objects;
import java.util.TimeZone;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;

/** Pages of HTML set for paper (PDF). Nothing is fetched from anywhere, and the same page gives the same bytes. */
final class PdfPages {
    private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/";
    private static final String USUAL_FONT = "DejaVuSansCondensed.ttf";
    private static final String FAMILY = "Weekwright Sheet";
    private static final int USUAL_WEIGHT = 400;
    private static final int BOLD_WEIGHT = 700;

    private PdfPages() {}

    /** The pages. */
    static byte[] of(String html) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = document(html)) {
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException("the pages could not be made", e);
        }
        return out.toByteArray();
    }

    /** How many pages it takes. */
    static int count(String html) {
        try (PDDocument document = document(html)) {
            return document.getNumberOfPages();
        } catch (IOException e) {
            throw new UncheckedIOException("the pages could not be made", e);
        }
    }

    /** Letters of a page that the font lacks, each once; they would be left out. */
    static String lacking(String html) {
        String text = Jsoup.parse(html).body().text();
        try (TrueTypeFont font = new TTFParser().parseEmbedded(font(USUAL_FONT).supply())) {
            CmapLookup letters = font.getUnicodeCmapLookup();
            return text.codePoints()
                    .filter(letter -> letters.getGlyphId(letter) == 0)
                    .distinct()
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
        } catch (IOException e) {
            throw new UncheckedIOException("the font of the pages cannot be read", e);
        }
    }

    private static PDDocument document(String html) throws IOException {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(new W3CDom().fromJsoup(Jsoup.parse(html)), null);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useFont(font(USUAL_FONT), FAMILY, USUAL_WEIGHT, FontStyle.NORMAL, true);
        builder.useFont(font("DejaVuSansCondensed-Bold.ttf"), FAMILY, BOLD_WEIGHT, FontStyle.NORMAL, true);
        builder.withProducer("Weekwright");
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            return timeless(renderer.getPdfDocument());
        }
    }

    /** Takes the hour of making out of it. */
    private static PDDocument timeless(PDDocument document) {
        GregorianCalendar none = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        none.setTimeInMillis(0);
        document.getDocumentInformation().setCreationDate(none);
        document.setDocumentId(0L);
        return document;
    }

    private static FSSupplier<InputStream> font(String name) {
        return () -> Objects.requireNonNull(PdfPages.class.getResourceAsStream(FONTS + name), name);
    }
}
