package fusetale.desk;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** Pixels as a PNG. */
final class PixelsFile {
    private PixelsFile() {}

    /**
     * The file.
     *
     * @param argb rows from the top
     * @param width of a row
     * @param grey whether colours are taken away
     */
    static byte[] png(int[] argb, int width, boolean grey) {
        int height = argb.length / width;
        BufferedImage image =
                new BufferedImage(width, height, grey ? BufferedImage.TYPE_BYTE_GRAY : BufferedImage.TYPE_INT_RGB);
        for (int k = 0; k < argb.length; k++) {
            image.setRGB(k % width, k / width, argb[k]);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.setUseCache(false);
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
