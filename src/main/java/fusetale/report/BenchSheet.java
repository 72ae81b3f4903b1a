package fusetale.report;

import fusetale.circuit.Mains;
import fusetale.explore.Doubt;
import fusetale.explore.FuseFate;
import fusetale.explore.Outcome;
import fusetale.explore.Question;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.store.Preferences;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The bench sheet: what to measure on paper across, black only, with boxes to write in; power off first, then on. What does not
 * fit the first page goes on further ones.
 */
public final class BenchSheet implements Pages {
    /** Pixels in a millimetre of paper, at 96 in an inch of 25.4 mm. */
    private static final double PIXELS_IN_A_MILLIMETRE = 96 / 25.4;

    private static final double MARGIN = 40;
    private static final double TABLE_GAP = 40;
    private static final double HEAD_BASELINE = 62;
    private static final double HEAD_BOTTOM = 80;
    private static final double MOST_DRAWING_RATIO = 0.32;

    /** Letters of a drawing, 15 px, are still read by whoever bends over the sheet; smaller, it gets a page of its own. */
    private static final double LEAST_SCALE = 0.6;

    /** Fewer lines of a table than this below a drawing are not worth the turning of pages. */
    private static final int LEAST_ROWS = 4;

    private static final double FUSE_HEIGHT = 42;
    private static final int FUSES_ACROSS = 3;
    private static final double SENTENCE_LINE = 22;
    private static final double CAUTION_LINE = 19;
    private static final double FOOT_HEIGHT = 44;
    private static final Color BLACK = Color.BLACK;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
    private static final Words WORDS = Words.of(BenchSheet.class);

    private final Outcome off;
    private final Outcome on;
    private final String sentence;
    private final boolean supposed;
    private final SheetDrawing drawing;
    private final Details details;
    private final List<Sheet> sheets;

    /**
     * What stands on the sheet besides the machine.
     *
     * @param repair what the repair is called; may be empty
     * @param day day printed on it
     * @param paper what is in the printer
     * @param outOfDate whether the question has changed since the outcomes were worked out, which is printed on it
     */
    public record Details(String repair, LocalDate day, Preferences.Paper paper, boolean outOfDate) {}

    /** What stands on one page. */
    private record Sheet(boolean drawn, List<SheetRow> off, List<SheetRow> on, List<FuseFate> fuses, boolean cautions) {
        /** The page of a drawing too large to stand beside anything. */
        static final Sheet DRAWING = new Sheet(true, List.of(), List.of(), List.of(), false);
    }

    /**
     * A sheet to print.
     *
     * @param off the question with the power off
     * @param on the same with the power on
     * @param faults each fault in words, {@code D1 is shorted}; empty for a healthy machine
     * @param drawing the machine's drawing, or {@link SheetDrawing#NONE}
     * @param details what else stands on it
     */
    public BenchSheet(Outcome off, Outcome on, List<String> faults, SheetDrawing drawing, Details details) {
        if (off.question().arrangement().powerOn()
                || !on.question().arrangement().powerOn()) {
            throw new IllegalArgumentException("a sheet is of an outcome with the power off and one with it on");
        }
        this.off = off;
        this.on = on;
        this.supposed = !faults.isEmpty();
        this.sentence = supposed
                ? WORDS.say("sheet.supposed-is", String.join(" " + WORDS.say("picture.and") + " ", faults))
                : WORDS.say("sheet.nothing-supposed");
        this.drawing = drawing;
        this.details = details;
        List<Sheet> roomy = divided(2);
        this.sheets = roomy.size() == (drawnAlone() ? 2 : 1) ? roomy : divided(1);
    }

    @Override
    public int count() {
        return sheets.size();
    }

    @Override
    public double widthPixels() {
        return details.paper() == Preferences.Paper.A4 ? 297 * PIXELS_IN_A_MILLIMETRE : 11 * 96;
    }

    @Override
    public double heightPixels() {
        return details.paper() == Preferences.Paper.A4 ? 210 * PIXELS_IN_A_MILLIMETRE : 8.5 * 96;
    }

    @Override
    public String title() {
        return WORDS.say("sheet.title") + ": " + subject();
    }

    /** The machine, and the repair where it has a name of its own. */
    private String subject() {
        String machine = on.question().healthy().name();
        return details.repair().isBlank() || details.repair().equals(machine)
                ? machine
                : machine + ", " + details.repair();
    }

    @Override
    public String spoken(int page) {
        Sheet sheet = sheets.get(page);
        StringBuilder text = new StringBuilder(title()).append(". ");
        if (page == 0) {
            warnings().forEach(w -> text.append(w).append(' '));
            text.append(sentence).append(' ');
        }
        spoken(text, heading(off, "sheet.off"), sheet.off());
        spoken(text, heading(on, "sheet.on"), sheet.on());
        sheet.fuses().forEach(f -> text.append(spoken(f)));
        if (sheet.cautions()) {
            cautions().forEach(c -> text.append(c).append(' '));
        }
        return text.append(WORDS.say("sheet.page", page + 1, count())).toString();
    }

    private void spoken(StringBuilder text, String heading, List<SheetRow> rows) {
        if (rows.isEmpty()) {
            return;
        }
        text.append(heading).append(". ");
        for (SheetRow row : rows) {
            text.append(WORDS.say(
                    supposed ? "sheet.spoken-supposed" : "sheet.spoken",
                    row.where(),
                    row.meterOn(),
                    row.healthy(),
                    row.supposed()));
            text.append(' ');
        }
    }

    @Override
    public void paint(Graphics2D g, int page) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(0, 0, widthPixels(), heightPixels()));
        Sheet sheet = sheets.get(page);
        Pen pen = new Pen(g);
        head(pen);
        double y = HEAD_BOTTOM;
        if (page == 0) {
            y = supposed(pen, warning(g, pen, y));
        }
        if (sheet.drawn()) {
            double height = sheet.equals(Sheet.DRAWING) ? floor() - y - 14 : drawingHeight();
            drawing.paint(g, new Rectangle2D.Double(MARGIN, y + 14, width(), height));
            y += height + 14;
        }
        y = tables(g, sheet, y + 18);
        y = fuses(g, pen, sheet, y);
        if (sheet.cautions()) {
            cautions(pen, y);
        }
        foot(pen, page);
    }

    private double width() {
        return widthPixels() - 2 * MARGIN;
    }

    private void head(Pen pen) {
        Question question = on.question();
        double x = pen.write(WORDS.say("sheet.title"), Type.SHOUT.at(30), BLACK, MARGIN, HEAD_BASELINE) + 22;
        Font font = Type.WORDS.at(16);
        Mains mains = question.healthy().mains();
        String right = WORDS.say(
                "sheet.day", DAY.format(details.day()), Notation.format(mains.volts()), Notation.format(mains.hertz()));
        double room = widthPixels() - MARGIN - Pen.width(right, font) - 24 - x;
        pen.write(Pen.fitted(subject(), Type.WORDS.at(18), room), Type.WORDS.at(18), BLACK, x, HEAD_BASELINE);
        pen.writeEndingAt(right, font, BLACK, widthPixels() - MARGIN, HEAD_BASELINE);
    }

    /** What must not be missed: whether it may be powered up at all. */
    private List<String> warnings() {
        Stream<String> stale = details.outOfDate() ? Stream.of(WORDS.say("sheet.out-of-date")) : Stream.of();
        Stream<String> danger = on.doNotPowerUp()
                ? on.doubts().stream()
                        .filter(d -> d.severity() == Doubt.Severity.DANGER)
                        .map(d -> WORDS.say("sheet.danger", d.text()))
                : Stream.of(WORDS.say("sheet.first"));
        return Stream.concat(stale, danger).toList();
    }

    /** Lines of the warning; a long one goes on in a further line. */
    private List<String> warningLines() {
        return warnings().stream()
                .flatMap(w -> Pen.lines(w, Type.HEADING.at(17), width() - 66).stream())
                .toList();
    }

    private double warningHeight() {
        return 18 + 25.0 * warningLines().size();
    }

    /** The box of the warning; hatched where there is danger. Gives its bottom. */
    private double warning(Graphics2D g, Pen pen, double top) {
        double height = warningHeight();
        Rectangle2D hatched = new Rectangle2D.Double(MARGIN, top, 32, height);
        if (on.doNotPowerUp() || details.outOfDate()) {
            Signs.blackHatch(g, hatched);
        }
        g.setColor(BLACK);
        g.setStroke(new BasicStroke(2f));
        g.draw(new Rectangle2D.Double(MARGIN, top, width(), height));
        double y = top + 27;
        for (String line : warningLines()) {
            pen.write(line, Type.HEADING.at(17), BLACK, MARGIN + 46, y);
            y += 25;
        }
        return top + height;
    }

    private List<String> sentenceLines() {
        return Pen.lines(sentence, Type.WORDS.at(16), width());
    }

    private double sentenceHeight() {
        return 6 + SENTENCE_LINE * sentenceLines().size();
    }

    /** What is supposed, in full however much it is; gives its bottom. */
    private double supposed(Pen pen, double top) {
        double y = top + 2;
        for (String line : sentenceLines()) {
            y += SENTENCE_LINE;
            pen.write(line, Type.WORDS.at(16), BLACK, MARGIN, y);
        }
        return top + sentenceHeight();
    }

    private double floor() {
        return heightPixels() - FOOT_HEIGHT;
    }

    /** Whether the drawing can be read where it stands above the tables, and leaves them some room. */
    private boolean drawnBeside() {
        double tables = SheetTable.HEAD_HEIGHT + LEAST_ROWS * SheetTable.ROW_HEIGHT;
        return drawing.heightAt(width()) > 0
                && drawing.scaleIn(width(), drawingHeight()) >= LEAST_SCALE
                && firstTop() + drawingHeight() + 14 + tables <= floor();
    }

    /** Where the tables of the first page begin, a drawing apart. */
    private double firstTop() {
        return HEAD_BOTTOM + warningHeight() + sentenceHeight() + 18;
    }

    private boolean drawnAlone() {
        return drawing.heightAt(width()) > 0 && !drawnBeside();
    }

    private double drawingHeight() {
        return Math.min(drawing.heightAt(width()), heightPixels() * MOST_DRAWING_RATIO);
    }

    private double tables(Graphics2D g, Sheet sheet, double top) {
        if (sheet.off().isEmpty() && sheet.on().isEmpty()) {
            return top;
        }
        double each = (width() - TABLE_GAP) / 2;
        if (!sheet.off().isEmpty()) {
            new SheetTable(heading(off, "sheet.off"), sheet.off(), supposed).paint(g, MARGIN, top, each);
        }
        if (!sheet.on().isEmpty()) {
            new SheetTable(heading(on, "sheet.on"), sheet.on(), supposed)
                    .paint(g, MARGIN + each + TABLE_GAP, top, each);
        }
        int most = Math.max(sheet.off().size(), sheet.on().size());
        return top + SheetTable.HEAD_HEIGHT + most * SheetTable.ROW_HEIGHT + 12;
    }

    private static String heading(Outcome outcome, String key) {
        return WORDS.say(key, Settings.words(outcome.question().arrangement()));
    }

    /** The fuses, with a box for what is found in their clips; gives where the next thing goes. */
    private double fuses(Graphics2D g, Pen pen, Sheet sheet, double top) {
        if (sheet.fuses().isEmpty()) {
            return top;
        }
        pen.write(WORDS.say("sheet.fuses"), Type.HEADING.at(18), BLACK, MARGIN, top + 22);
        double across = (width() - (FUSES_ACROSS - 1) * 28) / FUSES_ACROSS;
        double y = top + 34;
        for (int i = 0; i < sheet.fuses().size(); i++) {
            FuseFate fuse = sheet.fuses().get(i);
            double x = MARGIN + i % FUSES_ACROSS * (across + 28);
            Font name = Type.TABLE_NAME.at(17);
            Font font = Type.TABLE.at(16);
            double line = fuse.wrongLink() ? y + 19 : y + 26;
            double after = pen.write(fuse.part(), name, BLACK, x, line) + 10;
            pen.write(Pen.fitted(marked(fuse), font, x + across - 102 - after), font, BLACK, after, line);
            if (fuse.wrongLink()) {
                pen.write(holds(fuse), Type.TABLE.at(14), BLACK, x, y + 36);
            }
            SheetTable.box(g, x + across - 92, y + 6);
            if (i % FUSES_ACROSS == FUSES_ACROSS - 1 || i == sheet.fuses().size() - 1) {
                y += FUSE_HEIGHT;
            }
        }
        return y + 8;
    }

    private static String marked(FuseFate fuse) {
        return Tables.link(fuse.marked()) + ", " + fuse.marked().size().replace("x", " × ") + " mm";
    }

    private static String holds(FuseFate fuse) {
        return WORDS.say("sheet.fuse-holds", Tables.link(fuse.fitted()));
    }

    private static String spoken(FuseFate fuse) {
        return fuse.part() + ": " + marked(fuse) + (fuse.wrongLink() ? "; " + holds(fuse) : "") + ". ";
    }

    private double fusesHeight() {
        int lines = (on.fuses().size() + FUSES_ACROSS - 1) / FUSES_ACROSS;
        return lines == 0 ? 0 : 34 + lines * FUSE_HEIGHT + 8;
    }

    private List<String> cautions() {
        Stream<String> ofTheMachine = Stream.of(off, on)
                .flatMap(o -> o.doubts().stream())
                .filter(Doubt::minded)
                .map(Doubt::text);
        return Stream.concat(
                        Stream.of("caution.off", "caution.on").map(WORDS::say),
                        Stream.concat(ofTheMachine, Stream.of(WORDS.say("caution.estimates"))))
                .distinct()
                .toList();
    }

    private List<String> cautionLines() {
        return cautions().stream()
                .flatMap(c -> Pen.lines(c, Type.WORDS.at(14), width()).stream())
                .toList();
    }

    private void cautions(Pen pen, double top) {
        double y = top + 20;
        for (String line : cautionLines()) {
            pen.write(line, Type.WORDS.at(14), BLACK, MARGIN, y);
            y += CAUTION_LINE;
        }
    }

    private double cautionsHeight() {
        return 14 + cautionLines().size() * CAUTION_LINE;
    }

    private void foot(Pen pen, int page) {
        Font font = Type.WORDS.at(13.5);
        double y = heightPixels() - 24;
        String right = WORDS.say("sheet.page", page + 1, count());
        String left = WORDS.say("sheet.bold", on.question().meter().words());
        double room = width() - Pen.width(right, font) - 24;
        pen.write(Pen.fitted(left, font, room), font, BLACK, MARGIN, y);
        pen.writeEndingAt(right, font, BLACK, widthPixels() - MARGIN, y);
    }

    /** Which lines go on which page. */
    private List<Sheet> divided(int mostAtAPoint) {
        List<SheetRow> offRows = SheetRow.of(off, mostAtAPoint);
        List<SheetRow> onRows = SheetRow.of(on, mostAtAPoint);
        double floor = floor();
        boolean drawn = drawnBeside();
        double top = firstTop() + (drawn ? drawingHeight() + 14 : 0);
        double tail = fusesHeight() + cautionsHeight();
        List<Sheet> all = new ArrayList<>();
        int done = 0;
        int rows = Math.max(offRows.size(), onRows.size());
        boolean complete = false;
        while (!complete) {
            double room = floor - top - SheetTable.HEAD_HEIGHT - 12;
            // what is supposed may fill the first page
            int fit = Math.max(all.isEmpty() ? 0 : 1, (int) (room / SheetTable.ROW_HEIGHT));
            int here = Math.min(fit, rows - done);
            double used = here == 0 ? 0 : SheetTable.HEAD_HEIGHT + here * SheetTable.ROW_HEIGHT + 12;
            // on a page of its own it must do, however much there is
            complete = done + here == rows && (here == 0 || top + used + tail <= floor);
            all.add(new Sheet(
                    drawn && all.isEmpty(),
                    part(offRows, done, here),
                    part(onRows, done, here),
                    complete ? on.fuses() : List.of(),
                    complete));
            done += here;
            top = HEAD_BOTTOM + 4;
        }
        if (drawnAlone()) {
            all.add(Sheet.DRAWING);
        }
        return List.copyOf(all);
    }

    private static List<SheetRow> part(List<SheetRow> rows, int from, int count) {
        return rows.subList(Math.min(from, rows.size()), Math.min(from + count, rows.size()));
    }

    /** What is supposed, as printed below the warning. */
    public String sentence() {
        return sentence;
    }

    /** The heads of the tables' first four columns: where, meter on, healthy, as supposed. */
    public List<String> heads() {
        return Stream.of("sheet.where", "sheet.meter-on", "sheet.healthy", "sheet.supposed")
                .map(WORDS::say)
                .toList();
    }

    /** The lines of the table with the power on, or off, as cells under {@link #heads}. */
    public List<List<String>> cells(boolean powerOn) {
        return sheets.stream()
                .flatMap(s -> (powerOn ? s.on() : s.off()).stream())
                .map(SheetRow::cells)
                .toList();
    }

    /** What a person who had it made is told: what must not be missed, then what it is; lines of at most 100 columns. */
    public List<String> told() {
        List<String> lines = new ArrayList<>(Tables.dangers(on));
        String pages = WORDS.say(count() == 1 ? "sheet.one-page" : "sheet.pages", title(), count());
        lines.addAll(Paragraph.lines(pages, TextTable.WIDTH));
        return lines;
    }
}
