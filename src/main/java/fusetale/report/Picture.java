package fusetale.report;

import java.awt.Graphics2D;

/** A picture that can be written to a file, {@value #WIDTH} px wide. */
public interface Picture {
    /** Width [px]. */
    int WIDTH = 1200;

    /** Height [px]. */
    int height();

    /** What is supposed, as one sentence. */
    String sentence();

    /** What the picture says, for whoever cannot see it, a line each. */
    String description();

    /** Paints it. */
    void paint(Graphics2D g);
}
