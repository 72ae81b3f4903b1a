package fusetale.report.drawing;

import fusetale.explore.Words;
import fusetale.report.Ink;
import fusetale.report.Pen;
import fusetale.report.Picture;
import fusetale.report.Signs;
import fusetale.report.Type;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A plan as a picture under a heading, healthy or with marks. */
public final class DrawingPicture implements Picture {
    private static final Words WORDS = Words.of(DrawingPicture.class);

    private static final double LEFT = 20;
    private static final double TITLE_HEIGHT = 40;
    private static final double LINE_HEIGHT = 25;
    private static final double SMALL = 17;
    private static final double LARGE = 26;

    private final DrawingPlan plan;
    private final Marks marks;
    private final Heading heading;
    private final boolean blackOnly;

    /**
     * What stands above a drawing.
     *
     * @param sentence what it shows, as one sentence
     * @param setting machine, arrangement and meter in words
     * @param danger why not to power up; empty where nothing speaks against it
     */
    public record Heading(String sentence, String setting, String danger) {
        /** The drawing alone, as on a sheet that has its own heading. */
        public static final Heading NONE = new Heading("", "", "");
    }

    /**
     * A picture to paint.
     *
     * @param plan what is drawn
     * @param marks what is marked on it
     * @param heading what stands above it
     */
    public DrawingPicture(DrawingPlan plan, Marks marks, Heading heading) {
        this(plan, marks, heading, false);
    }

    private DrawingPicture(DrawingPlan plan, Marks marks, Heading heading, boolean blackOnly) {
        this.plan = plan;
        this.marks = marks;
        this.heading = heading;
        this.blackOnly = blackOnly;
    }

    /** The drawing alone as a printer without colours has it: black on white, the highlighter a pale grey. */
    public DrawingPicture blackOnly() {
        return new DrawingPicture(plan, marks, Heading.NONE, true);
    }

    @Override
    public int width() {
        return (int) Math.ceil(plan.width());
    }

    @Override
    public int height() {
        return (int) Math.ceil(headHeight() + plan.height());
    }

    private double headHeight() {
        if (heading.equals(Heading.NONE)) {
            return 0;
        }
        return LEFT
                + titles().size() * TITLE_HEIGHT
                + LINE_HEIGHT * (1 + dangers().size())
                + (dangers().isEmpty() ? 0 : 8);
    }

    private List<String> titles() {
        return Pen.lines(heading.sentence(), Type.HEADING.at(LARGE), plan.width() - 2 * LEFT);
    }

    private List<String> dangers() {
        return heading.danger().isEmpty()
                ? List.of()
                : Pen.lines(heading.danger(), Type.HEADING.at(SMALL), plan.width() - 2 * LEFT - shoutWidth());
    }

    private static double shoutWidth() {
        return Pen.width(WORDS.say("picture.danger"), Type.SHOUT.at(SMALL)) + 64;
    }

    @Override
    public String sentence() {
        return heading.sentence();
    }

    /** How the bench is set, why not to power up, and every part with what it is joined to, what is marked first. */
    @Override
    public String description() {
        String head = heading.danger().isEmpty()
                ? heading.setting()
                : heading.setting() + "\n" + WORDS.say("picture.danger") + ": " + heading.danger();
        return head + "\n" + String.join("\n", new DrawingText(plan, marks).lines());
    }

    @Override
    public void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(blackOnly ? Color.WHITE : Ink.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, width(), height()));
        head(g);
        g.translate(0, headHeight());
        Painter painter = new Painter(g, blackOnly);
        painter.sections(plan.sections());
        marks.swipes().forEach(painter::stroke);
        painter.headings(plan.sections());
        painter.ink(plan);
        marks.strokes().forEach(painter::stroke);
        marks.labels().forEach(painter::label);
        g.translate(0, -headHeight());
    }

    private void head(Graphics2D g) {
        if (heading.equals(Heading.NONE)) {
            return;
        }
        Pen pen = new Pen(g);
        double y = LEFT;
        for (String line : titles()) {
            pen.write(line, Type.HEADING.at(LARGE), Ink.INK, LEFT, y + LARGE);
            y += TITLE_HEIGHT;
        }
        pen.write(heading.setting(), Type.WORDS.at(SMALL), Ink.SOFT_INK, LEFT, y + SMALL - 4);
        y += LINE_HEIGHT + 8;
        if (dangers().isEmpty()) {
            return;
        }
        double text = shoutWidth();
        Font shout = Type.SHOUT.at(SMALL);
        Signs.hatch(g, new Rectangle2D.Double(LEFT, y - 6, 28, 28));
        g.setColor(Ink.DANGER_GROUND);
        g.fill(new Rectangle2D.Double(LEFT + 28, y - 6, text - 42, 28));
        pen.write(WORDS.say("picture.danger"), shout, Ink.DANGER_TEXT, LEFT + 39, y + 14);
        for (String line : dangers()) {
            pen.write(line, Type.HEADING.at(SMALL), Ink.INK, LEFT + text, y + 14);
            y += LINE_HEIGHT;
        }
    }
}
