package fusetale.report;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Something printed on one page or more, all of one size; measured in px of 1/96 inch. */
public interface Pages {
    /** Points [1/72 inch] in a pixel of a page. */
    double POINTS_IN_A_PIXEL = 0.75;

    /** How many there are, 1 or more. */
    int count();

    /** Width of each [px]. */
    double widthPixels();

    /** Height of each [px]. */
    double heightPixels();

    /** What it is, for the document's own title. */
    String title();

    /**
     * What a page says, for whoever cannot see it.
     *
     * @param page from 0
     */
    String spoken(int page);

    /**
     * Paints one.
     *
     * @param page from 0
     */
    void paint(Graphics2D g, int page);

    /**
     * One as a PNG.
     *
     * @param page from 0
     * @param scale pixels of the picture in a pixel of the page: 3.125 makes 300 a inch
     */
    default byte[] png(int page, double scale) {
        BufferedImage image = new BufferedImage(
                (int) Math.round(widthPixels() * scale),
                (int) Math.round(heightPixels() * scale),
                BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        paint(g, page);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.setUseCache(false);
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** All as one PDF 1.6 document, text as text. */
    default byte[] pdf() {
        return PagesPdf.bytes(this);
    }
}
