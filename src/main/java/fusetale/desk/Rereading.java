package fusetale.desk;

import fusetale.circuit.Circuit;
import fusetale.desk.state.DeskModel;
import fusetale.desk.watch.WatchWords;
import fusetale.desk.watch.Watched;
import fusetale.explore.Words;

/** Takes what the watch of the circuit file tells into the window. The first reading is the one the window opened with. */
final class Rereading {
    private static final Words WORDS = Words.of(Rereading.class);

    private final DeskModel model;
    private final Window window;
    private boolean obstructed;

    Rereading(DeskModel model, Window window) {
        this.model = model;
        this.window = window;
    }

    /** The circuit file was read anew. */
    void watched(Watched watched) {
        boolean before = obstructed;
        obstructed = !watched.current();
        Circuit board = watched.board();
        if (obstructed) {
            window.notice(WatchWords.line(watched));
        } else if (board != null && !board.equals(model.board())) {
            String gone = model.redrawn(board)
                    .map(g -> " " + WORDS.say("sentence.gone", g))
                    .orElse("");
            window.notice(WatchWords.line(watched) + gone);
        } else if (before) {
            // only what this said itself: the window may still be telling what was lost on opening
            window.notice("");
        }
    }
}
