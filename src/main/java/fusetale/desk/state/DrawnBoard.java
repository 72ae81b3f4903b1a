package fusetale.desk.state;

import fusetale.circuit.Circuit;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.SymbolStyle;

/**
 * A board with its drawing.
 *
 * @param board the machine
 * @param style whose symbols it is drawn with
 * @param plan the drawing
 */
public record DrawnBoard(Circuit board, SymbolStyle style, DrawingPlan plan) {
    /** Draws a board; a second for a large one when nothing is warm, so not for the window's thread. */
    public static DrawnBoard of(Circuit board, SymbolStyle style) {
        return new DrawnBoard(board, style, DrawingPlan.of(board, style));
    }

    /** Whether it is the drawing of this board in these symbols. */
    public boolean shows(Circuit other, SymbolStyle symbols) {
        return style == symbols && board.equals(other);
    }
}
