package fusetale.report;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Writes pages as PDF: typefaces embedded, text as text, the same bytes for the same pages. */
final class PagesPdf {
    private PagesPdf() {}

    static byte[] bytes(Pages pages) {
        try (PDDocument document = new PDDocument();
                PdfBoxGraphics2DFontTextDrawer text = new PdfBoxGraphics2DFontTextDrawer()) {
            for (Type type : Type.ALL) {
                try (InputStream in = type.file()) {
                    text.registerFont(type.at(1).getFontName(), PDType0Font.load(document, in, true));
                }
            }
            for (int i = 0; i < pages.count(); i++) {
                add(document, pages, i, text);
            }
            document.getDocumentInformation().setTitle(pages.title());
            document.getDocumentInformation().setCreator("Fusetale");
            document.getDocumentCatalog().setLanguage("en");
            PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
            preferences.setDisplayDocTitle(true);
            document.getDocumentCatalog().setViewerPreferences(preferences);
            // without one of ours the library makes one of the clock
            document.setDocumentId(1L);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void add(PDDocument document, Pages pages, int index, PdfBoxGraphics2DFontTextDrawer text)
            throws IOException {
        float width = (float) (pages.widthPixels() * Pages.POINTS_IN_A_PIXEL);
        float height = (float) (pages.heightPixels() * Pages.POINTS_IN_A_PIXEL);
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
        g.setFontTextDrawer(text);
        g.transform(AffineTransform.getScaleInstance(Pages.POINTS_IN_A_PIXEL, Pages.POINTS_IN_A_PIXEL));
        pages.paint(g, index);
        g.dispose();
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.drawForm(g.getXFormObject());
        }
    }
}
