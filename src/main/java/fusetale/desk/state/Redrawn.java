package fusetale.desk.state;

import fusetale.circuit.Circuit;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where one has been, on a board that was drawn anew. The circuit in the file is the only one there is: going back changes what was
 * supposed, never the machine.
 *
 * @param history every state whose sentence the new board understands, on the new board
 * @param gone why the present sentence could not be kept; empty where it was
 */
record Redrawn(History history, Optional<String> gone) {
    /**
     * Takes every state over.
     *
     * @param history states of one board
     * @param old the grammar of that board
     * @param now the grammar of the new one
     */
    static Redrawn of(History history, Sentences old, Sentences now) {
        List<BenchState> kept = new ArrayList<>();
        Optional<String> gone = Optional.empty();
        int at = 0;
        for (int k = 0; k < history.states().size(); k++) {
            BenchState state = history.states().get(k);
            boolean present = k == history.at();
            try {
                add(kept, state.with(now.circuit()).with(now.parse(old.text(state.sentence()))));
            } catch (SentenceException unclear) {
                if (present) {
                    gone = Optional.of(String.valueOf(unclear.getMessage()));
                    add(kept, state.with(now.circuit()).with(begun(now.circuit(), state.sentence())));
                }
            }
            at = present ? kept.size() - 1 : at;
        }
        return new Redrawn(new History(kept, at), gone);
    }

    /** What stood between two equal states may be gone. */
    private static void add(List<BenchState> kept, BenchState next) {
        if (kept.isEmpty() || !kept.get(kept.size() - 1).equals(next)) {
            kept.add(next);
        }
    }

    /** Nothing supposed, with the meter that is at hand. */
    private static Sentence begun(Circuit board, Sentence before) {
        Sentence first = Sentence.atFirst(board);
        boolean able = before.setting().meter().has(first.setting().function());
        return able
                ? first.withSetting(first.setting().withMeter(before.setting().meter()))
                : first;
    }
}
