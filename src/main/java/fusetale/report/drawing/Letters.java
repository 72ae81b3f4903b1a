package fusetale.report.drawing;

import fusetale.report.Pen;
import fusetale.report.Type;
import java.awt.Font;

/** The letters of labels and how much room they take. */
final class Letters {
    /** Capitals and figures of the drawing's face above the base line, as a share of the size: 0.7 by its file. */
    static final double ABOVE = 0.74;

    /** What hangs below the base line, as a share of the size. */
    static final double BELOW = 0.2;

    private Letters() {}

    /** The face of a role at its size. */
    static Font font(Label.Role role) {
        Type type = switch (role) {
            case NAME, NET, POINT -> Type.TABLE_NAME;
            case VALUE, NOTE -> Type.TABLE;
            case HEADING -> Type.HEADING;
            case FIGURE -> Type.TABLE_FIGURE;
        };
        return type.at(role.pixels());
    }

    /** Width of a text [px]. */
    static double width(String text, Label.Role role) {
        return Pen.width(text, font(role));
    }
}
