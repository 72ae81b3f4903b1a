package fusetale.report;

import fusetale.explore.Words;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * One of the two tables of a bench sheet, or a part of it.
 *
 * @param heading its number and how the bench is set
 * @param rows its lines
 * @param supposed whether it tells what would be read as supposed
 */
record SheetTable(String heading, List<SheetRow> rows, boolean supposed) {
    /** Height of a line [px]; a hand writes into its box at arm's length. */
    static final double ROW_HEIGHT = 40;

    /** What heading and heads take above the first line [px]. */
    static final double HEAD_HEIGHT = 58;

    private static final double BOX_WIDTH = 92;
    private static final double BOX_HEIGHT = 29;
    private static final double GAP = 10;
    private static final double METER_WIDTH = 78;
    private static final double WHERE_RATIO = 0.27;
    private static final double RANGE_RATIO = 0.6;
    private static final Words WORDS = Words.of(SheetTable.class);
    private static final Color BLACK = Color.BLACK;

    /** Where its columns begin. */
    private record Columns(double where, double meter, double healthy, double supposed, double box) {
        static Columns of(double left, double width, boolean supposed) {
            double box = left + width - BOX_WIDTH;
            double meter = left + width * WHERE_RATIO;
            double healthy = meter + METER_WIDTH;
            return new Columns(left, meter, healthy, supposed ? healthy + (box - healthy) * RANGE_RATIO : box, box);
        }
    }

    /** Paints it from {@code top} down. */
    void paint(Graphics2D g, double left, double top, double width) {
        Pen pen = new Pen(g);
        Columns columns = Columns.of(left, width, supposed);
        Font heading = Type.HEADING.at(18);
        pen.write(Pen.fitted(heading(), heading, width), heading, BLACK, left, top + 18);
        heads(pen, columns, top + 47);
        rule(g, left, width, top + HEAD_HEIGHT, 1.2);
        double y = top + HEAD_HEIGHT;
        for (SheetRow row : rows) {
            row(g, pen, columns, row, y);
            y += ROW_HEIGHT;
            rule(g, left, width, y, 0.5);
        }
    }

    private void heads(Pen pen, Columns at, double y) {
        Font font = Type.TABLE.at(14);
        pen.write(WORDS.say("sheet.where"), font, BLACK, at.where(), y);
        pen.write(WORDS.say("sheet.meter-on"), font, BLACK, at.meter(), y);
        pen.write(WORDS.say("sheet.healthy"), font, BLACK, at.healthy(), y);
        if (supposed) {
            pen.write(WORDS.say("sheet.supposed"), font, BLACK, at.supposed(), y);
        }
        pen.write(WORDS.say("sheet.you-read"), font, BLACK, at.box(), y);
    }

    private void row(Graphics2D g, Pen pen, Columns at, SheetRow row, double top) {
        double line = top + ROW_HEIGHT / 2 + 6;
        Font small = Type.TABLE.at(13);
        Font plain = Type.TABLE.at(16);
        double room = at.meter() - at.where() - GAP;
        boolean labelled = !row.label().isEmpty() || !row.moving().isEmpty();
        double first = labelled ? line - 7 : line;
        Font name = Type.TABLE_NAME.at(17);
        pen.write(Pen.fitted(row.where(), name, room), name, BLACK, at.where(), first);
        pen.write(row.meterOn(), plain, BLACK, at.meter(), first);
        if (!row.label().isEmpty()) {
            String label = Pen.fitted(row.label(), small, at.healthy() - at.where() - GAP);
            pen.write(label, small, BLACK, at.where(), line + 8);
        }
        double wide = at.supposed() - at.healthy() - GAP;
        fitting(pen, row.healthy(), Type.TABLE_FIGURE, at.healthy(), wide, first);
        if (supposed) {
            Type type = row.told() ? Type.TABLE_NAME : Type.TABLE;
            double beside = at.box() - at.supposed() - GAP;
            fitting(pen, row.supposed(), type, at.supposed(), beside, first);
            if (!row.moving().isEmpty()) {
                pen.write(Pen.fitted(row.moving(), small, beside), small, BLACK, at.supposed(), line + 8);
            }
        }
        box(g, at.box(), top + (ROW_HEIGHT - BOX_HEIGHT) / 2);
    }

    /** Writes a figure smaller where it would not fit: no digit is ever cut. */
    private static void fitting(Pen pen, String text, Type type, double x, double width, double y) {
        double size = 17;
        while (size > 10 && Pen.width(text, type.at(size)) > width) {
            size -= 0.5;
        }
        pen.write(text, type.at(size), BLACK, x, y);
    }

    /** An empty box to write in. */
    static void box(Graphics2D g, double x, double y) {
        g.setColor(BLACK);
        g.setStroke(new BasicStroke(1.4f));
        g.draw(new Rectangle2D.Double(x, y, BOX_WIDTH, BOX_HEIGHT));
    }

    /** A line across. */
    static void rule(Graphics2D g, double left, double width, double y, double thick) {
        g.setColor(BLACK);
        g.setStroke(new BasicStroke((float) thick));
        g.draw(new Line2D.Double(left, y, left + width, y));
    }
}
