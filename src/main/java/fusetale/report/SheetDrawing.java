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
        public double scaleIn(double widthPixels, double heightPixels) {
            return 1;
        }

        @Override
        public void paint(Graphics2D g, Rectangle2D box) {}
    };

    /** A picture, as wide as there is room, its proportions kept. */
    static SheetDrawing of(Picture picture) {
        return new SheetDrawing() {
            @Override
            public double heightAt(double widthPixels) {
                return widthPixels * picture.height() / picture.width();
            }

            @Override
            public double scaleIn(double widthPixels, double heightPixels) {
                return Math.min(widthPixels / picture.width(), heightPixels / picture.height());
            }

            @Override
            public void paint(Graphics2D g, Rectangle2D box) {
                double scale = scaleIn(box.getWidth(), box.getHeight());
                Graphics2D inside = (Graphics2D) g.create();
                inside.translate(
                        box.getX() + (box.getWidth() - scale * picture.width()) / 2,
                        box.getY() + (box.getHeight() - scale * picture.height()) / 2);
                inside.scale(scale, scale);
                picture.paint(inside);
                inside.dispose();
            }
        };
    }

    /** How high it would like to be at a width, both in px of 1/96 inch; it may get less. */
    double heightAt(double widthPixels);

    /** How large its letters come out in a box [px of 1/96 inch]; 1 is as they are meant. */
    double scaleIn(double widthPixels, double heightPixels);

    /** Paints it into a box, keeping its own proportions; nothing outside. */
    void paint(Graphics2D g, Rectangle2D box);
}
