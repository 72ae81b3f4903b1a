package fusetale.report.drawing;

/**
 * The end of a part's lead, where a wire begins.
 *
 * @param net what it is soldered to
 * @param x [px]
 * @param y [px]
 * @param side where the wire leaves
 */
public record Port(String net, double x, double y, Side side) {
    Port moved(double byX, double byY) {
        return new Port(net, x + byX, y + byY, side);
    }
}
