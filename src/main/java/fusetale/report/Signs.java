package fusetale.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The product's signs: ring healthy, solid diamond supposed, hollow diamond too close to tell, hatch danger. */
public final class Signs {
    private static final double RING_RADIUS = 5;
    private static final double DIAMOND_RADIUS = 7.5;
    private static final double HATCH_STRIPE = 5;

    private Signs() {}

    /** A ring: healthy. */
    public static void ring(Graphics2D g, double x, double y) {
        Shape circle = new Ellipse2D.Double(x - RING_RADIUS, y - RING_RADIUS, 2 * RING_RADIUS, 2 * RING_RADIUS);
        g.setColor(Ink.PAPER);
        g.fill(circle);
        g.setColor(Ink.INK);
        g.setStroke(new BasicStroke(2f));
        g.draw(circle);
    }

    /** A solid diamond: supposed. */
    public static void diamond(Graphics2D g, double x, double y) {
        g.setColor(Ink.MARKER_LINE);
        g.fill(diamond(x, y, DIAMOND_RADIUS));
    }

    /** A hollow diamond: supposed, but too close to tell. */
    public static void hollowDiamond(Graphics2D g, double x, double y, Color ground) {
        Shape shape = diamond(x, y, DIAMOND_RADIUS + 1.5);
        g.setColor(ground);
        g.fill(shape);
        g.setColor(Ink.MARKER_LINE);
        g.setStroke(new BasicStroke(1.8f));
        g.draw(shape);
    }

    /** A box of slanting stripes: danger. */
    public static void hatch(Graphics2D g, Rectangle2D box) {
        hatch(g, box, Ink.DANGER_GROUND, Ink.MARKER_FILL);
    }

    /** The same for a printer without colours. */
    public static void blackHatch(Graphics2D g, Rectangle2D box) {
        hatch(g, box, Color.WHITE, Color.BLACK);
    }

    /** Stripes are cut to the box beforehand, so that no clip is needed. */
    private static void hatch(Graphics2D g, Rectangle2D box, Color ground, Color stripes) {
        g.setColor(ground);
        g.fill(box);
        g.setColor(stripes);
        double height = box.getHeight();
        for (double x = box.getX() - height; x < box.getMaxX(); x += 2 * HATCH_STRIPE) {
            Path2D stripe = new Path2D.Double();
            stripe.moveTo(x, box.getMaxY());
            stripe.lineTo(x + height, box.getY());
            stripe.lineTo(x + height + HATCH_STRIPE, box.getY());
            stripe.lineTo(x + HATCH_STRIPE, box.getMaxY());
            stripe.closePath();
            Area cut = new Area(stripe);
            cut.intersect(new Area(box));
            g.fill(cut);
        }
    }

    private static Shape diamond(double x, double y, double radius) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - radius);
        path.lineTo(x + radius, y);
        path.lineTo(x, y + radius);
        path.lineTo(x - radius, y);
        path.closePath();
        return path;
    }
}
