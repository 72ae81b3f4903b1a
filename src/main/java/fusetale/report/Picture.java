package fusetale.report;

import java.awt.Graphics2D;

/** A picture that can be written to a file. */
public interface Picture {
    /** Width of most pictures [px]. */
    int WIDTH = 1200;

    /** Width [px]. */
    default int width() {
        return WIDTH;
    }

    /** Height [px]. */
    int height();

    /** What is supposed, as one sentence. */
    String sentence();

    /** What the picture says, for whoever cannot see it, a line each. */
    String description();

    /** Paints it. */
    void paint(Graphics2D g);
}
