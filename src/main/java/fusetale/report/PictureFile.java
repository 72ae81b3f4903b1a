package fusetale.report;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The kinds of file a picture can be written as. */
public enum PictureFile {
    /** Pixels, twice as many each way as the picture's own measure, for sharp print. */
    PNG {
        @Override
        public byte[] bytes(Picture picture) {
            return png(picture, SHARP);
        }
    },

    /** Outlines, text included, so that it needs no typeface; what it says stands in its title and description. */
    SVG {
        @Override
        public byte[] bytes(Picture picture) {
            Document document = document();
            SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
            context.setComment("");
            context.setPrecision(2);
            SVGGraphics2D g = new SVGGraphics2D(context, true);
            g.setSVGCanvasSize(new Dimension(picture.width(), picture.height()));
            picture.paint(g);
            Element root = g.getRoot();
            root.setAttributeNS(null, "viewBox", "0 0 " + picture.width() + " " + picture.height());
            root.setAttributeNS(null, "role", "img");
            root.insertBefore(element(document, "desc", picture.description()), root.getFirstChild());
            root.insertBefore(element(document, "title", picture.sentence()), root.getFirstChild());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try {
                // not Batik's own writer: that one names a DTD for readers to fetch
                TransformerFactory.newInstance().newTransformer().transform(new DOMSource(root), new StreamResult(out));
            } catch (TransformerException e) {
                throw new IllegalStateException("this Java cannot write XML", e);
            }
            return out.toByteArray();
        }
    };

    private static final int SHARP = 2;

    /**
     * The picture as a PNG.
     *
     * @param scale pixels each way in a pixel of the picture's own measure, 1 or more
     */
    public static byte[] png(Picture picture, int scale) {
        BufferedImage image =
                new BufferedImage(scale * picture.width(), scale * picture.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        picture.paint(g);
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

    /** The picture as the bytes of such a file. */
    public abstract byte[] bytes(Picture picture);

    /** The kind that a file's ending asks for, if it is one of ours. */
    public static Optional<PictureFile> of(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".png")) {
            return Optional.of(PNG);
        }
        return name.endsWith(".svg") ? Optional.of(SVG) : Optional.empty();
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument("http://www.w3.org/2000/svg", "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("this Java has no XML document builder", e);
        }
    }

    private static Element element(Document document, String name, String text) {
        Element element = document.createElementNS("http://www.w3.org/2000/svg", name);
        element.setTextContent(text);
        return element;
    }
}
