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
import java.util.Collections;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Objects;
import java.util.TimeZone;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.jsoup.helper.W3CDom;
import weekwright.desk.view.SheetPage;
import weekwright.desk.view.SheetPage.Lane;

/** A day sheet for paper: A4, a group a page where letters of 7 points do it. Nothing is fetched from anywhere. */
public final class SheetPdf {
    private static final List<String> SIZES = List.of("size-12", "size-11", "size-10", "size-9", "size-8", "size-7");
    private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/";
    private static final String USUAL_FONT = "DejaVuSansCondensed.ttf";
    private static final String FAMILY = "Weekwright Sheet";
    private static final int USUAL_WEIGHT = 400;
    private static final int BOLD_WEIGHT = 700;

    private SheetPdf() {}

    /** The pages; the same sheet gives the same bytes. */
    public static byte[] of(SheetPage page) {
        XRLog.setLoggingEnabled(false);
        List<String> sizes = page.lanes().stream().map(lane -> size(page, lane)).toList();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = pages(page, sizes)) {
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException("the pages could not be made", e);
        }
        return out.toByteArray();
    }

    /** Letters of a page that the font lacks, each once; they would be left out of the pages. */
    public static String lacking(SheetPage page) {
        String text = Jsoup.parse(
                        SheetHtml.text(page, Collections.nCopies(page.lanes().size(), SIZES.get(0))))
                .body()
                .text();
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

    /** The largest letters in which a group fits on a page; the smallest where none do. */
    private static String size(SheetPage page, Lane lane) {
        SheetPage alone = new SheetPage(page.title(), page.day(), page.who(), List.of(lane), page.cautions());
        int first = 0;
        int last = SIZES.size() - 1;
        while (first < last) {
            int middle = (first + last) / 2;
            if (count(alone, SIZES.get(middle)) == 1) {
                last = middle;
            } else {
                first = middle + 1;
            }
        }
        return SIZES.get(first);
    }

    private static int count(SheetPage page, String size) {
        try (PDDocument document = pages(page, Collections.nCopies(page.lanes().size(), size))) {
            return document.getNumberOfPages();
        } catch (IOException e) {
            throw new UncheckedIOException("the pages could not be made", e);
        }
    }

    private static PDDocument pages(SheetPage page, List<String> sizes) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(new W3CDom().fromJsoup(Jsoup.parse(SheetHtml.text(page, sizes))), null);
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
        return () -> Objects.requireNonNull(SheetPdf.class.getResourceAsStream(FONTS + name), name);
    }
}
