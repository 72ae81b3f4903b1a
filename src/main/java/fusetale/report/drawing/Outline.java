package fusetale.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A path free of any toolkit [px].
 *
 * @param steps in order; the first is a {@link Move}
 */
public record Outline(List<Step> steps) {
    /** Part of a circle that a cubic curve of a quarter needs: 4/3·(√2 − 1), off by 0.03 % of the radius at most. */
    private static final double QUARTER = 4 * (Math.sqrt(2) - 1) / 3;

    /** Copies the list. */
    public Outline {
        steps = List.copyOf(steps);
    }

    /** One step of the pen. */
    public sealed interface Step permits Move, Line, Curve, Close {}

    /** Lifts the pen and sets it down here. */
    public record Move(double x, double y) implements Step {}

    /** A straight line to here. */
    public record Line(double x, double y) implements Step {}

    /** A cubic Bézier curve to {@code x, y}. */
    public record Curve(double x1, double y1, double x2, double y2, double x, double y) implements Step {}

    /** A straight line back to where the pen was set down. */
    public record Close() implements Step {}

    /** Where a point of a path goes. */
    @FunctionalInterface
    interface Place {
        double[] of(double x, double y);
    }

    /** The letters of SVG's path data: {@code M x y L x y C x1 y1 x2 y2 x y Z}, absolute (W3C, SVG 1.1, section 8.3). */
    static Outline of(String path) {
        List<Step> steps = new ArrayList<>();
        String[] words = path.strip().split("[ ,]+", -1);
        int i = 0;
        while (i < words.length) {
            String letter = words[i];
            if (letter.equals("M")) {
                steps.add(new Move(number(words, i + 1), number(words, i + 2)));
                i += 3;
            } else if (letter.equals("L")) {
                steps.add(new Line(number(words, i + 1), number(words, i + 2)));
                i += 3;
            } else if (letter.equals("C")) {
                steps.add(new Curve(
                        number(words, i + 1),
                        number(words, i + 2),
                        number(words, i + 3),
                        number(words, i + 4),
                        number(words, i + 5),
                        number(words, i + 6)));
                i += 7;
            } else if (letter.equals("Z")) {
                steps.add(new Close());
                i++;
            } else {
                throw new IllegalArgumentException("no path: " + path);
            }
        }
        return new Outline(steps);
    }

    private static double number(String[] words, int at) {
        return Double.parseDouble(words[at]);
    }

    /** A straight line. */
    public static Outline line(double x1, double y1, double x2, double y2) {
        return new Outline(List.of(new Move(x1, y1), new Line(x2, y2)));
    }

    /** A rectangle. */
    public static Outline rectangle(Box box) {
        return new Outline(List.of(
                new Move(box.x(), box.y()),
                new Line(box.right(), box.y()),
                new Line(box.right(), box.bottom()),
                new Line(box.x(), box.bottom()),
                new Close()));
    }

    /** A circle of four curves. */
    public static Outline circle(double x, double y, double radius) {
        double k = QUARTER * radius;
        return new Outline(List.of(
                new Move(x + radius, y),
                new Curve(x + radius, y + k, x + k, y + radius, x, y + radius),
                new Curve(x - k, y + radius, x - radius, y + k, x - radius, y),
                new Curve(x - radius, y - k, x - k, y - radius, x, y - radius),
                new Curve(x + k, y - radius, x + radius, y - k, x + radius, y),
                new Close()));
    }

    /** Half circles in a row along a line from the left to the right, all bulging upwards. */
    static Outline humps(double left, double right, double y, int count) {
        double radius = (right - left) / (2 * count);
        double k = QUARTER * radius;
        List<Step> steps = new ArrayList<>();
        steps.add(new Move(left, y));
        for (int i = 0; i < count; i++) {
            double x = left + 2 * radius * i;
            steps.add(new Curve(x, y - k, x + radius - k, y - radius, x + radius, y - radius));
            steps.add(new Curve(x + radius + k, y - radius, x + 2 * radius, y - k, x + 2 * radius, y));
        }
        return new Outline(steps);
    }

    /** This and another one behind it. */
    Outline and(Outline other) {
        List<Step> both = new ArrayList<>(steps);
        both.addAll(other.steps);
        return new Outline(both);
    }

    /** Every point taken elsewhere. */
    Outline mapped(Place place) {
        List<Step> mapped = new ArrayList<>();
        for (Step step : steps) {
            if (step instanceof Move m) {
                double[] p = place.of(m.x(), m.y());
                mapped.add(new Move(p[0], p[1]));
            } else if (step instanceof Line l) {
                double[] p = place.of(l.x(), l.y());
                mapped.add(new Line(p[0], p[1]));
            } else if (step instanceof Curve c) {
                double[] one = place.of(c.x1(), c.y1());
                double[] two = place.of(c.x2(), c.y2());
                double[] end = place.of(c.x(), c.y());
                mapped.add(new Curve(one[0], one[1], two[0], two[1], end[0], end[1]));
            } else {
                mapped.add(step);
            }
        }
        return new Outline(mapped);
    }

    /** The least box around its points and the handles of its curves. */
    public Box bounds() {
        double[] b = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        mapped((x, y) -> {
            b[0] = Math.min(b[0], x);
            b[1] = Math.min(b[1], y);
            b[2] = Math.max(b[2], x);
            b[3] = Math.max(b[3], y);
            return new double[] {x, y};
        });
        return Box.between(b[0], b[1], b[2], b[3]);
    }

    /** As SVG path data, two decimals at most. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (Step step : steps) {
            if (step instanceof Move m) {
                text.append(String.format(Locale.ROOT, "M%.2f %.2f ", m.x(), m.y()));
            } else if (step instanceof Line l) {
                text.append(String.format(Locale.ROOT, "L%.2f %.2f ", l.x(), l.y()));
            } else if (step instanceof Curve c) {
                text.append(String.format(
                        Locale.ROOT, "C%.2f %.2f %.2f %.2f %.2f %.2f ", c.x1(), c.y1(), c.x2(), c.y2(), c.x(), c.y()));
            } else {
                text.append("Z ");
            }
        }
        return text.toString().strip();
    }
}
