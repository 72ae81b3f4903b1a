package fusetale.desk;

import fusetale.report.drawing.SymbolStyle;
import fusetale.store.Preferences;

/** What a window asks of the program around it. */
interface Desk {
    /** How the user likes it. */
    Preferences preferences();

    /** Whose symbols are drawn. */
    SymbolStyle symbols();

    /** Does what concerns more than this window's board: opening, keeping, printing, help. */
    void take(Command command);
}
