package fusetale.report;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Harm;
import fusetale.circuit.Circuit;
import fusetale.explore.Happening;
import fusetale.explore.Outcome;
import fusetale.explore.Times;
import fusetale.explore.Words;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;

/** The picture of an aftermath: the sentence, what to beware of, and when what happens on a logarithmic line of time. */
public final class AftermathPicture implements Picture {
    private static final double ROW_HEIGHT = 34;
    private static final double INSET = 18;
    private static final double LINE_X = 640;
    private static final int MOST_ROWS = 18;
    private static final Words WORDS = Words.of(AftermathPicture.class);

    private final Outcome outcome;
    private final Aftermath aftermath;
    private final PictureHead head;
    private final List<Happening> rows;
    private final String setting;
    private final int height;

    /**
     * A picture to paint.
     *
     * @param outcome what to show
     * @param aftermath its aftermath
     * @param faults each fault in words
     * @param setting machine, arrangement and meter in words
     */
    public AftermathPicture(Outcome outcome, Aftermath aftermath, List<String> faults, String setting) {
        this.outcome = outcome;
        this.aftermath = aftermath;
        this.head = new PictureHead(outcome, faults, setting);
        this.setting = setting;
        Circuit circuit = outcome.question().healthy();
        List<Happening> all = Happening.of(circuit, aftermath.events());
        this.rows = all.subList(0, Math.min(MOST_ROWS, all.size()));
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        this.height = (int) Math.ceil(paintPaper(nowhere, new Pen(nowhere)) + 12 + PictureHead.FOOTER_HEIGHT);
        nowhere.dispose();
    }

    @Override
    public int height() {
        return height;
    }

    @Override
    public String sentence() {
        return head.sentence();
    }

    /** A line an event. */
    @Override
    public String description() {
        StringBuilder text = new StringBuilder(setting);
        outcome.doubts().forEach(d -> text.append('\n').append(d.text()));
        for (Happening row : rows) {
            text.append('\n').append(WORDS.say("timeline.step", row.words(), when(row)));
        }
        return text.toString();
    }

    @Override
    public void paint(Graphics2D g) {
        PictureHead.ground(g, height);
        Pen pen = new Pen(g);
        paintPaper(g, pen);
        PictureHead.footer(g, pen, height, true);
    }

    /** Everything but the foot; gives its bottom. */
    private double paintPaper(Graphics2D g, Pen pen) {
        double top = head.paint(g, pen) + 16;
        double left = PictureHead.MARGIN;
        double right = PictureHead.RIGHT;
        double first = top + 76;
        double rowsHeight = Math.max(1, rows.size()) * ROW_HEIGHT;
        double bottom = first + rowsHeight + StripChart.SCALE_HEIGHT + 22;
        g.setColor(Ink.PAPER);
        g.fill(new Rectangle2D.Double(left, top, right - left, bottom - top));
        pen.write(WORDS.say("table.aftermath"), Type.HEADING.at(20), Ink.INK, left + INSET, top + 34);
        paintLegend(g, pen, top + 34);
        pen.write(
                AftermathTable.setting(aftermath.settings()), Type.TABLE.at(14), Ink.SOFT_INK, left + INSET, top + 58);
        if (rows.isEmpty()) {
            pen.write(
                    WORDS.say("timeline.nothing", Times.of(aftermath.settings().horizonSeconds())),
                    Type.WORDS.at(17),
                    Ink.INK,
                    left + INSET,
                    first + 22);
            return bottom;
        }
        for (int k = 0; k < rows.size(); k++) {
            paintRow(pen, rows.get(k), first + (k + 0.5) * ROW_HEIGHT + 5.5);
        }
        TimelineChart.of(rows, aftermath.settings())
                .draw(
                        g,
                        new Rectangle2D.Double(
                                LINE_X, first, right - INSET - 16 - LINE_X, rowsHeight + StripChart.SCALE_HEIGHT));
        return bottom;
    }

    private void paintRow(Pen pen, Happening row, double y) {
        double left = PictureHead.MARGIN + INSET;
        boolean lost = row.gravity() == Harm.Gravity.DAMAGE;
        Font words = lost ? Type.TABLE_FIGURE.at(16) : Type.TABLE.at(16);
        double whenEnd = LINE_X - 16;
        Font small = Type.TABLE.at(15);
        String when = when(row);
        pen.writeEndingAt(when, small, Ink.SOFT_INK, whenEnd, y);
        double room = whenEnd - Pen.width(when, small) - 14 - left;
        pen.write(Pen.fitted(row.words(), words, room), words, Ink.INK, left, y);
    }

    private String when(Happening row) {
        String when = row.when();
        int machines = aftermath.settings().machines();
        return row.count() == machines
                ? when
                : WORDS.say("timeline.when-share", when, Happening.share(row.count(), machines));
    }

    /** The three bars and what they mean, ending at the right edge. */
    private static void paintLegend(Graphics2D g, Pen pen, double y) {
        Font font = Type.TABLE.at(15);
        double x = PictureHead.RIGHT - INSET;
        for (Harm.Gravity gravity : List.of(Harm.Gravity.DAMAGE, Harm.Gravity.WARNING, Harm.Gravity.RELIEF)) {
            String text = WORDS.say("gravity." + gravity.name().toLowerCase(Locale.ROOT));
            pen.writeEndingAt(text, font, Ink.INK, x, y);
            x -= Pen.width(text, font) + 8;
            TimelineChart.bar(g, new Rectangle2D.Double(x - 34, y - 12, 34, 14), gravity);
            x -= 34 + 22;
        }
    }
}
