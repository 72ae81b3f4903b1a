package fusetale.desk;

import fusetale.bench.Arrangement;
import fusetale.circuit.Circuit;
import fusetale.desk.match.MatchModel;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.Found;
import fusetale.desk.state.FoundReader;
import fusetale.desk.state.History;
import fusetale.desk.watch.CircuitWatch;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import fusetale.store.Autosave;
import fusetale.store.Repair;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A repair that lies open: its model, its window, what keeps it and what watches its circuit file.
 *
 * @param model its state
 * @param matching what explains its readings
 * @param window what shows it
 * @param autosave keeps it after every change
 * @param watch reads the circuit file anew when it changes
 */
record OpenRepair(DeskModel model, MatchModel matching, Window window, Autosave autosave, CircuitWatch watch) {
    /**
     * A repair as its board understands it.
     *
     * @param history the state it was left in, behind those one can go back to
     * @param lost what of the repair's file the board no longer has
     */
    record Restored(History history, List<String> lost) {}

    /** The state a repair was left in; what its board no longer understands is told. */
    static Restored restored(Path circuit, Circuit board, Repair repair) {
        List<String> lost = new ArrayList<>();
        Sentences grammar = new Sentences(board);
        Sentence sentence = Sentence.atFirst(board);
        if (!repair.sentence().isBlank()) {
            try {
                sentence = grammar.parse(repair.sentence());
            } catch (SentenceException e) {
                lost.add(String.valueOf(e.getMessage()));
            }
        }
        FoundReader reader = new FoundReader(grammar);
        Arrangement plain = Arrangement.powered(board);
        List<Found> found = new ArrayList<>();
        for (String line : repair.readings()) {
            try {
                found.add(reader.read(line, null, plain));
            } catch (SentenceException e) {
                lost.add(String.valueOf(e.getMessage()));
            }
        }
        Set<String> outOfReach = Set.copyOf(repair.outOfReach());
        BenchState left = new BenchState(circuit, board, sentence, found, outOfReach);
        return new Restored(been(left, grammar, repair.undo()), lost);
    }

    private static Optional<Sentence> parsed(String text, Sentences grammar) {
        try {
            return Optional.of(grammar.parse(text));
        } catch (SentenceException gone) {
            return Optional.empty();
        }
    }

    /** Earlier sentences with what is found now; those that the board no longer has are nowhere to go back to. */
    private static History been(BenchState left, Sentences grammar, List<String> undo) {
        List<BenchState> states = new ArrayList<>();
        for (String text : undo) {
            parsed(text, grammar).map(left::with).ifPresent(states::add);
        }
        states.add(left);
        History history = History.of(states.get(0));
        for (BenchState state : states) {
            history = history.plus(state);
        }
        return history;
    }

    /** The repair as its file is to hold it. */
    static Repair kept(DeskModel model, Instant now) {
        History history = model.historyProperty().get();
        List<String> undo = new ArrayList<>();
        for (BenchState before : history.states().subList(0, history.at())) {
            String text = model.sentences().text(before.sentence());
            if (undo.isEmpty() || !undo.get(undo.size() - 1).equals(text)) {
                undo.add(text);
            }
        }
        BenchState present = model.state();
        Path file = present.file();
        return new Repair(
                present.board().name(),
                file == null ? "" : file.toAbsolutePath().toString(),
                model.sentences().text(present.sentence()),
                undo,
                present.found().stream().map(model.foundReader()::line).toList(),
                present.outOfReach().stream().sorted().toList(),
                now);
    }

    /** Keeps what changed and lets everything go. */
    void close() {
        model.stop();
        matching.stop();
        autosave.now();
        autosave.close();
        watch.close();
    }
}
