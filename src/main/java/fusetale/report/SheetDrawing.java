package fusetale.report;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** The drawing of a machine on a printed page, black only. */
public interface SheetDrawing {
    /** No drawing: what is around it moves up. */
    SheetDrawing NONE = new SheetDrawing() {
        @Override
        public double heightAt(double widthPixels) {
            return 0;
        }

        @Override
        public void paint(Graphics2D g, Rectangle2D box) {}
    };

    /** How high it would like to be at a width, both in px of 1/96 inch; it may get less. */
    double heightAt(double widthPixels);

    /** Paints it into a box, keeping its own proportions; nothing outside. */
    void paint(Graphics2D g, Rectangle2D box);
}
