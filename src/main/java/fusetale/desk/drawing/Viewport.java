package fusetale.desk.drawing;

import fusetale.report.drawing.Box;

/**
 * Which piece of the sheet is seen, and how large: a sheet's x comes to x · scale + left. Immutable.
 *
 * @param scale pixels of the view for one of the sheet
 * @param left where the sheet's left edge is in the view [px]
 * @param top where its upper edge is [px]
 */
record Viewport(double scale, double left, double top) {
    private static final double LEAST = 0.12;
    private static final double MOST = 4;
    private static final double MARGIN = 14;

    /** So that a box of the sheet fits a view, in its middle, at most as large as drawn times {@code most}. */
    static Viewport showing(Box box, double width, double height, double most) {
        double scale = Math.min(
                most,
                Math.min(
                        (width - 2 * MARGIN) / Math.max(1, box.width()),
                        (height - 2 * MARGIN) / Math.max(1, box.height())));
        double within = bounded(scale);
        return new Viewport(
                within,
                (width - box.width() * within) / 2 - box.x() * within,
                (height - box.height() * within) / 2 - box.y() * within);
    }

    /**
     * So that a box of the sheet is seen as large as it can be, but never smaller than {@code least}: then from its upper left
     * corner on. Nothing is shown beside the sheet as long as there is something on it to be shown.
     */
    static Viewport reading(Box box, Box sheet, double width, double height, double least, double most) {
        Viewport whole = showing(box, width, height, most);
        double scale = Math.max(whole.scale, Math.min(least, most));
        return new Viewport(
                scale,
                placed(scale, box.x(), box.width(), sheet.x(), sheet.width(), width),
                placed(scale, box.y(), box.height(), sheet.y(), sheet.height(), height));
    }

    /** Where the sheet's origin comes to lie along one axis. */
    private static double placed(double scale, double at, double size, double sheetAt, double sheetSize, double room) {
        double free = room - 2 * MARGIN;
        if (sheetSize * scale <= free) {
            return (room - sheetSize * scale) / 2 - sheetAt * scale;
        }
        double wanted = size * scale <= free ? (room - size * scale) / 2 - at * scale : MARGIN - at * scale;
        double first = MARGIN - sheetAt * scale;
        double last = room - MARGIN - (sheetAt + sheetSize) * scale;
        return Math.max(last, Math.min(wanted, first));
    }

    /** Larger or smaller around a point of the view. */
    Viewport zoomed(double factor, double x, double y) {
        double next = bounded(scale * factor);
        double ratio = next / scale;
        return new Viewport(next, x - (x - left) * ratio, y - (y - top) * ratio);
    }

    /** Moved by so many pixels of the view. */
    Viewport moved(double byX, double byY) {
        return new Viewport(scale, left + byX, top + byY);
    }

    /** Moved as little as shows a box of the sheet. */
    Viewport revealing(Box box, double width, double height) {
        double x1 = x(box.x());
        double x2 = x(box.right());
        double y1 = y(box.y());
        double y2 = y(box.bottom());
        double byX = x1 < MARGIN ? MARGIN - x1 : x2 > width - MARGIN ? width - MARGIN - x2 : 0;
        double byY = y1 < MARGIN ? MARGIN - y1 : y2 > height - MARGIN ? height - MARGIN - y2 : 0;
        return moved(byX, byY);
    }

    double x(double sheetX) {
        return sheetX * scale + left;
    }

    double y(double sheetY) {
        return sheetY * scale + top;
    }

    private static double bounded(double scale) {
        return Math.max(LEAST, Math.min(scale, MOST));
    }
}
