package fusetale.report;

import fusetale.circuit.Circuit;
import fusetale.circuit.TestPoint;
import fusetale.explore.Compared;
import fusetale.explore.Doubt;
import fusetale.explore.Outcome;
import fusetale.explore.Trace;
import fusetale.explore.Words;
import fusetale.quantity.Unit;
import fusetale.signal.Waveform;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;

/**
 * The picture of an outcome: the supposition as a sentence, what to beware of, how far each reading moved against what
 * healthy machines show, and the waveforms of the points that moved most.
 */
public final class SupposePicture implements Picture {
    /** Most height [px]; one with few readings is less high. */
    public static final int MOST_HEIGHT = 900;

    private static final double MARGIN = PictureHead.MARGIN;
    private static final double RIGHT = PictureHead.RIGHT;
    private static final double ROW_HEIGHT = 26;
    private static final double ROOMY_ROW_HEIGHT = 32;
    private static final double FOOTER_HEIGHT = PictureHead.FOOTER_HEIGHT;
    private static final double LEAST_WAVES_HEIGHT = 236;
    private static final double MOST_WAVES_HEIGHT = 340;
    private static final double INSET = 18;

    private static final double FUNCTION_X = 296;
    private static final double STRIP_X = 372;
    private static final double STRIP_END = 800;
    private static final double HEALTHY_END = 968;
    private static final double BUILT_END = 1058;
    private static final double SUPPOSED_END = RIGHT - INSET;

    private static final Words WORDS = Words.of(SupposePicture.class);

    private final Outcome outcome;
    private final PictureHead head;
    private final String setting;
    private final int height;

    /**
     * A picture to paint.
     *
     * @param outcome what to show
     * @param faults each fault in words, {@code D1 is shorted}; empty for a healthy machine
     * @param setting machine, arrangement and meter in words
     */
    public SupposePicture(Outcome outcome, List<String> faults, String setting) {
        this.outcome = outcome;
        this.head = new PictureHead(outcome, faults, setting);
        this.setting = setting;
        this.height = measured();
    }

    @Override
    public int height() {
        return height;
    }

    /** The height it takes, found by painting it where nobody looks. */
    private int measured() {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        boolean waves = !traces().isEmpty();
        double room = MOST_HEIGHT - FOOTER_HEIGHT - (waves ? LEAST_WAVES_HEIGHT : 0) - 12;
        double bottom = paintReadings(nowhere, new Pen(nowhere), room);
        nowhere.dispose();
        double needed = bottom + 12 + (waves ? MOST_WAVES_HEIGHT : 0) + FOOTER_HEIGHT;
        return Math.min(MOST_HEIGHT, (int) Math.ceil(needed));
    }

    @Override
    public String sentence() {
        return head.sentence();
    }

    /** The doubts and the readings that moved. */
    @Override
    public String description() {
        StringBuilder text = new StringBuilder(setting);
        for (Doubt doubt : outcome.doubts()) {
            text.append('\n').append(doubt.text());
        }
        for (Compared row : outcome.readings()) {
            if (!row.tooCloseToTell()) {
                text.append('\n')
                        .append(WORDS.say(
                                "picture.row",
                                row.check().from(),
                                row.check().to(),
                                row.check().function().words(),
                                row.asBuilt().shows(),
                                row.asSupposed().shows()));
            }
        }
        return text.toString();
    }

    @Override
    public void paint(Graphics2D g) {
        PictureHead.ground(g, height);
        Pen pen = new Pen(g);
        double floor = height - FOOTER_HEIGHT;
        if (traces().isEmpty()) {
            paintReadings(g, pen, floor - 12);
        } else {
            double bottom = paintReadings(g, pen, floor - LEAST_WAVES_HEIGHT - 12);
            paintWaves(g, pen, Math.max(bottom + 12, floor - MOST_WAVES_HEIGHT), floor);
        }
        PictureHead.footer(g, pen, height, outcome.question().arrangement().powerOn());
    }

    /** Everything down to the paper of readings; gives its bottom. */
    private double paintReadings(Graphics2D g, Pen pen, double lowest) {
        double y = head.paint(g, pen);
        return paintStrip(g, pen, y + 16, lowest);
    }

    /** Paints the paper of readings, as high as it needs and the room allows; gives its bottom. */
    private double paintStrip(Graphics2D g, Pen pen, double top, double lowest) {
        double first = top + 66;
        double below = StripChart.SCALE_HEIGHT + 30;
        List<Alike> all = Alike.gathered(outcome.readings());
        int fit = (int) ((lowest - first - below) / ROW_HEIGHT);
        List<Alike> rows = all.subList(0, Math.min(fit, all.size()));
        double rowHeight =
                Math.max(ROW_HEIGHT, Math.min(ROOMY_ROW_HEIGHT, (lowest - first - below) / Math.max(1, rows.size())));
        double rowsHeight = rows.size() * rowHeight;
        double bottom = first + rowsHeight + below;
        g.setColor(Ink.PAPER);
        g.fill(new Rectangle2D.Double(MARGIN, top, RIGHT - MARGIN, bottom - top));
        pen.write(WORDS.say("picture.moved"), Type.HEADING.at(20), Ink.INK, MARGIN + INSET, top + 34);
        paintLegend(g, pen, top + 34);
        paintHeads(pen, top + 57);
        for (int i = 0; i < rows.size(); i++) {
            paintRow(pen, rows.get(i), first + (i + 0.5) * rowHeight + 5.5);
        }
        StripChart.of(rows.stream().map(Alike::first).toList())
                .draw(
                        g,
                        new Rectangle2D.Double(
                                STRIP_X, first, STRIP_END - STRIP_X, rowsHeight + StripChart.SCALE_HEIGHT));
        pen.write(
                left(rows.stream().mapToInt(r -> r.rows().size()).sum()),
                Type.TABLE.at(15),
                Ink.SOFT_INK,
                MARGIN + INSET,
                bottom - 14);
        return bottom;
    }

    /** What of the readings is not drawn. */
    private String left(int drawn) {
        int all = outcome.readings().size();
        long moved =
                outcome.readings().stream().filter(r -> !r.tooCloseToTell()).count();
        if (drawn == all) {
            return WORDS.say("picture.all", moved, all);
        }
        return moved > drawn
                ? WORDS.say("picture.more-moved", moved, all, moved - drawn)
                : WORDS.say("picture.rest-close", moved, all);
    }

    /** The signs and what they mean, ending at the right edge. */
    private void paintLegend(Graphics2D g, Pen pen, double y) {
        Font font = Type.TABLE.at(15);
        double x = SUPPOSED_END;
        x = ending(pen, "picture.too-close", font, x, y);
        Signs.hollowDiamond(g, x, y - 5, Ink.PAPER);
        x = ending(pen, "picture.supposed", font, x - 26, y);
        Signs.diamond(g, x, y - 5);
        x = ending(pen, "picture.healthy", font, x - 26, y) - 12;
        g.setColor(Ink.HEALTHY_RANGE);
        g.fill(new Rectangle2D.Double(x - 17, y - 12, 34, 14));
        Signs.ring(g, x, y - 5);
    }

    /** Writes a legend's text ending at {@code right}; gives where its sign goes. */
    private static double ending(Pen pen, String key, Font font, double right, double y) {
        String text = WORDS.say(key);
        pen.writeEndingAt(text, font, Ink.INK, right, y);
        return right - Pen.width(text, font) - 14;
    }

    private static void paintHeads(Pen pen, double y) {
        Font font = Type.TABLE.at(14);
        pen.write(WORDS.say("picture.lower"), font, Ink.SOFT_INK, STRIP_X, y);
        pen.writeEndingAt(WORDS.say("picture.higher"), font, Ink.SOFT_INK, STRIP_END, y);
        pen.writeEndingAt(WORDS.say("picture.range-head"), font, Ink.SOFT_INK, HEALTHY_END, y);
        pen.writeEndingAt(WORDS.say("picture.built-head"), font, Ink.SOFT_INK, BUILT_END, y);
        pen.writeEndingAt(WORDS.say("picture.supposed-head"), font, Ink.MARKER_LINE, SUPPOSED_END, y);
    }

    private void paintRow(Pen pen, Alike alike, double y) {
        Compared row = alike.first();
        boolean tells = !row.tooCloseToTell();
        Font names = Type.TABLE_NAME.at(17);
        Circuit circuit = outcome.question().healthy();
        String name = alike.names(circuit, names, FUNCTION_X - MARGIN - INSET - 10);
        double x = pen.write(name, names, Ink.INK, MARGIN + INSET, y) + 8;
        String label = circuit.point(row.check().from()).map(TestPoint::label).orElse("");
        Font small = Type.TABLE.at(15);
        pen.write(Pen.fitted(label, small, FUNCTION_X - x - 6), small, Ink.SOFT_INK, x, y);
        pen.write(row.check().function().words(), small, Ink.SOFT_INK, FUNCTION_X, y);
        String range = Figures.range(row);
        pen.writeEndingAt(range, small, Ink.SOFT_INK, HEALTHY_END, y);
        pen.writeEndingAt(row.asBuilt().shows(), Type.TABLE.at(17), Ink.INK, BUILT_END, y);
        pen.writeEndingAt(
                row.asSupposed().shows(),
                tells ? Type.TABLE_FIGURE.at(17) : Type.TABLE.at(17),
                tells ? Ink.MARKER_LINE : Ink.SOFT_INK,
                SUPPOSED_END,
                y);
    }

    private void paintWaves(Graphics2D g, Pen pen, double top, double bottom) {
        double cycle =
                1 / outcome.question().arrangement().hertz(outcome.question().healthy());
        int count = traces().size();
        double gap = 24;
        double width = (RIGHT - MARGIN - (count - 1) * gap) / count;
        for (int i = 0; i < count; i++) {
            Trace trace = traces().get(i);
            double x = MARGIN + i * (width + gap);
            paintWaveHead(g, pen, trace, x, x + width, top + 20);
            g.setColor(Ink.PAPER);
            g.fill(new Rectangle2D.Double(x, top + 32, width, bottom - top - 38));
            boolean once = !outcome.bench().pulses().isEmpty();
            JFreeChart chart = once ? WaveChart.ofRun(trace) : WaveChart.of(trace, cycle);
            chart.draw(g, new Rectangle2D.Double(x + 2, top + 46, width - 20, bottom - top - 58));
        }
    }

    /** What happens while something is pulsed, where something is; else the points that moved most. */
    private List<Trace> traces() {
        return outcome.bench().pulses().isEmpty()
                ? outcome.traces()
                : outcome.bench().pulses().get(0).traces();
    }

    private void paintWaveHead(Graphics2D g, Pen pen, Trace trace, double left, double right, double y) {
        boolean steady =
                Math.abs(trace.asBuilt().mean()) > 0.2 * trace.asBuilt().rms();
        boolean once = !outcome.bench().pulses().isEmpty();
        ToDoubleFunction<Waveform> size = once ? Waveform::highest : steady ? Waveform::mean : Waveform::rms;
        double then = size.applyAsDouble(trace.asSupposed());
        double before = size.applyAsDouble(trace.asBuilt());
        String supposed = Figures.beside(then, before, trace.unit());
        String built = Figures.beside(before, then, trace.unit());
        Font strong = Type.TABLE_FIGURE.at(16);
        Font plain = Type.TABLE.at(16);
        pen.writeEndingAt(supposed, strong, Ink.MARKER_LINE, right, y);
        double x = right - Pen.width(supposed, strong) - 13;
        Signs.diamond(g, x, y - 5.5);
        x -= 18;
        pen.writeEndingAt(built, plain, Ink.INK, x, y);
        x -= Pen.width(built, plain) + 12;
        Signs.ring(g, x, y - 5.5);
        String kind = WORDS.say(once ? "picture.highest" : steady ? "picture.mean" : "picture.rms");
        x -= 12;
        pen.writeEndingAt(kind, plain, Ink.SOFT_INK, x, y);
        x -= Pen.width(kind, plain) + 12;
        String title =
                trace.label() + ", " + WORDS.say(trace.unit() == Unit.VOLT ? "picture.volts" : "picture.amperes");
        pen.write(Pen.fitted(title, Type.HEADING.at(17), x - left), Type.HEADING.at(17), Ink.INK, left, y);
    }
}
