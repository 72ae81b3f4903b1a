package fusetale.report;

import fusetale.explore.Compared;
import fusetale.explore.Doubt;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** What stands at the head of every picture of an outcome, the sentence and what to beware of, and at its foot. */
final class PictureHead {
    /** Left edge of what is written [px]. */
    static final double MARGIN = 32;

    /** Right edge of what is written [px]. */
    static final double RIGHT = Picture.WIDTH - MARGIN;

    /** Height [px] of the caution at the foot. */
    static final double FOOTER_HEIGHT = 46;

    private static final int MOST_CONSEQUENCES = 2;
    private static final Words WORDS = Words.of(PictureHead.class);

    private final Outcome outcome;
    private final List<String> faults;
    private final String setting;

    PictureHead(Outcome outcome, List<String> faults, String setting) {
        this.outcome = outcome;
        this.faults = List.copyOf(faults);
        this.setting = setting;
    }

    /** Clears the page. */
    static void ground(Graphics2D g, int height) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Ink.DESK);
        g.fill(new Rectangle2D.Double(0, 0, Picture.WIDTH, height));
    }

    /** Paints sentence and consequences; gives where they end. */
    double paint(Graphics2D g, Pen pen) {
        return consequences(g, pen, words(g, pen, 54) + 30);
    }

    /** Paints the caution. */
    static void footer(Graphics2D g, Pen pen, int height, boolean powerOn) {
        g.setColor(Ink.RULE);
        g.draw(new Line2D.Double(MARGIN, height - FOOTER_HEIGHT + 8, RIGHT, height - FOOTER_HEIGHT + 8));
        String caution = WORDS.say(powerOn ? "picture.caution-on" : "picture.caution-off");
        Font font = Type.WORDS.at(14);
        pen.write(Pen.fitted(caution, font, RIGHT - MARGIN), font, Ink.SOFT_INK, MARGIN, height - 18);
    }

    /** The supposition as one sentence. */
    String sentence() {
        return faults.isEmpty()
                ? WORDS.say("picture.nothing")
                : WORDS.say("picture.suppose") + " " + String.join(" " + WORDS.say("picture.and") + " ", faults) + ".";
    }

    private double words(Graphics2D g, Pen pen, double top) {
        Font plain = Type.WORDS.at(26);
        Font strong = Type.HEADING.at(26);
        double x = MARGIN;
        double y = top;
        if (faults.isEmpty()) {
            pen.write(WORDS.say("picture.nothing"), plain, Ink.SOFT_INK, x, y);
        } else {
            x = pen.write(WORDS.say("picture.suppose") + " ", plain, Ink.SOFT_INK, x, y) + 6;
            for (int i = 0; i < faults.size(); i++) {
                String between = i + 1 == faults.size() ? "." : " " + WORDS.say("picture.and") + " ";
                if (x + Pen.width(faults.get(i) + ".", strong) > RIGHT && x > MARGIN) {
                    x = MARGIN;
                    y += 38;
                }
                String fault = Pen.fitted(faults.get(i), strong, RIGHT - x - 12);
                swipe(g, x - 5, y, Pen.width(fault, strong) + 10);
                x = pen.write(fault, strong, Ink.INK, x, y);
                x = pen.write(between, plain, Ink.SOFT_INK, x + (i + 1 == faults.size() ? 7 : 4), y) + 4;
            }
        }
        pen.write(
                Pen.fitted(setting, Type.WORDS.at(17), RIGHT - MARGIN),
                Type.WORDS.at(17),
                Ink.SOFT_INK,
                MARGIN,
                y + 30);
        return y + 30;
    }

    /** A stroke of the highlighter under a text: slightly slanted ends. */
    private static void swipe(Graphics2D g, double x, double baseline, double width) {
        Path2D path = new Path2D.Double();
        path.moveTo(x + 3, baseline - 24);
        path.lineTo(x + width + 2, baseline - 25);
        path.lineTo(x + width - 2, baseline + 9);
        path.lineTo(x - 2, baseline + 8);
        path.closePath();
        g.setColor(Ink.MARKER_FILL);
        g.fill(path);
    }

    /** The gravest two things to know, danger hatched, others plain; where there is nothing grave, what moved most. */
    private double consequences(Graphics2D g, Pen pen, double top) {
        double y = top;
        List<Doubt> told = outcome.doubts().stream()
                .filter(d -> d.severity() != Doubt.Severity.CAUTION)
                .limit(MOST_CONSEQUENCES)
                .toList();
        if (told.isEmpty()) {
            return lines(pen, furthest(), Type.WORDS.at(17), MARGIN, y) - 32;
        }
        for (Doubt doubt : told) {
            boolean danger = doubt.severity() == Doubt.Severity.DANGER;
            double x = danger ? shout(g, pen, y) : MARGIN;
            y = lines(pen, doubt.text(), danger ? Type.HEADING.at(17) : Type.WORDS.at(17), x, y);
        }
        return y - 32;
    }

    private static double shout(Graphics2D g, Pen pen, double y) {
        String shout = WORDS.say("picture.danger");
        double width = Pen.width(shout, Type.SHOUT.at(17));
        Signs.hatch(g, new Rectangle2D.Double(MARGIN, y - 20, 28, 28));
        g.setColor(Ink.DANGER_GROUND);
        g.fill(new Rectangle2D.Double(MARGIN + 28, y - 20, width + 22, 28));
        pen.write(shout, Type.SHOUT.at(17), Ink.DANGER_TEXT, MARGIN + 39, y);
        return MARGIN + width + 64;
    }

    /** Writes at most two lines; gives where the next text goes. */
    private static double lines(Pen pen, String text, Font font, double x, double top) {
        List<String> lines = Pen.lines(text, font, RIGHT - x);
        double y = top;
        for (int i = 0; i < lines.size() && i < 2; i++) {
            String line = i == 1 && lines.size() > 2 ? Pen.fitted(lines.get(1) + " …", font, RIGHT - x) : lines.get(i);
            pen.write(line, font, Ink.INK, x, y);
            y += 24;
        }
        return y + 8;
    }

    private String furthest() {
        if (outcome.moved().isEmpty()) {
            return WORDS.say("picture.none-moved");
        }
        Compared first = outcome.readings().get(0);
        return WORDS.say(
                "picture.furthest",
                Pairs.name(outcome.question().healthy(), first.check()),
                first.check().function().words(),
                first.asSupposed().shows(),
                first.asBuilt().shows());
    }
}
