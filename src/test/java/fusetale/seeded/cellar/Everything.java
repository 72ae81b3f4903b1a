package fusetale.seeded.cellar;

import com.fasterxml.jackson.core.JsonFactory;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Shape;
import javafx.scene.Node;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.ejml.data.DMatrixRMaj;
import org.hipparchus.linear.RealMatrix;
import org.jfree.chart.JFreeChart;
import org.snakeyaml.engine.v2.api.LoadSettings;
import picocli.CommandLine;

/** Breaks: a package that is not in the table, and every library away from home. */
record Everything(
        JsonFactory json,
        Shape shape,
        SVGGraphics2D svg,
        DMatrixRMaj matrix,
        RealMatrix statistics,
        JFreeChart chart,
        LoadSettings yaml,
        CommandLine command,
        PDDocument document,
        PdfBoxGraphics2D page,
        Node node) {}
