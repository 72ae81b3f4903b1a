package fusetale.report.drawing;

/**
 * One stroke of the pen, or one filled shape.
 *
 * @param outline its path
 * @param weight width of its line; {@link Weight#FILLED} where its inside is filled instead
 * @param tone what it is drawn with
 */
public record Stroke(Outline outline, Weight weight, Tone tone) {
    /** In ink. */
    Stroke(Outline outline, Weight weight) {
        this(outline, weight, Tone.INK);
    }

    /** Whether its inside is filled, and no line drawn. */
    public boolean filled() {
        return weight == Weight.FILLED;
    }

    /** In ink, along SVG path data. */
    static Stroke ink(String path, Weight weight) {
        return new Stroke(Outline.of(path), weight);
    }

    Stroke mapped(Outline.Place place) {
        return new Stroke(outline.mapped(place), weight, tone);
    }
}
