package fusetale.report.drawing;

/**
 * A text on the sheet.
 *
 * @param text what it says
 * @param x where it is anchored [px]
 * @param y its base line [px]
 * @param anchor which end {@code x} is
 * @param role what it is, which settles its letters
 * @param tone what it is written with
 */
public record Label(String text, double x, double y, Anchor anchor, Role role, Tone tone) {
    /** With the tone that is usual for its role. */
    public Label(String text, double x, double y, Anchor anchor, Role role) {
        this(text, x, y, anchor, role, role.tone());
    }

    /** Which end of a text stands where it is anchored. */
    public enum Anchor {
        /** Its left end. */
        START,
        /** Its middle. */
        MIDDLE,
        /** Its right end. */
        END
    }

    /** What a text is. */
    public enum Role {
        /** Designator of a part. */
        NAME(15, Tone.INK),
        /** Value or rating of a part. */
        VALUE(15, Tone.SOFT_INK),
        /** A name of less weight: a connector's pin, a winding. */
        NOTE(13.5, Tone.SOFT_INK),
        /** Name of a net. */
        NET(14, Tone.INK),
        /** Heading of a section. */
        HEADING(17, Tone.INK),
        /** Number of a test point, in its ring. */
        POINT(12.5, Tone.INK),
        /** A figure of a mark. */
        FIGURE(15, Tone.MARKER_LINE);

        private final double pixels;
        private final Tone tone;

        Role(double pixels, Tone tone) {
            this.pixels = pixels;
            this.tone = tone;
        }

        /** Size of its letters [px]. */
        public double pixels() {
            return pixels;
        }

        /** What it is usually written with. */
        public Tone tone() {
            return tone;
        }
    }

    /** What it covers. */
    public Box bounds() {
        double width = Letters.width(text, role);
        double left = switch (anchor) {
            case START -> x;
            case MIDDLE -> x - width / 2;
            case END -> x - width;
        };
        double size = role.pixels();
        return new Box(left, y - Letters.ABOVE * size, width, (Letters.ABOVE + Letters.BELOW) * size);
    }

    Label moved(double byX, double byY) {
        return new Label(text, x + byX, y + byY, anchor, role, tone);
    }
}
