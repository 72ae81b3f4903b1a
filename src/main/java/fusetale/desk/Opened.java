package fusetale.desk;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Problem;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DrawnBoard;
import fusetale.report.drawing.SymbolStyle;
import fusetale.store.Kept;
import fusetale.store.Repair;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/** What opening a file gave. Read away from the window's thread: files, part models and drawing take longer than a frame. */
sealed interface Opened {
    /**
     * A board, as a new repair or one where it was left.
     *
     * @param first the state to begin with
     * @param file what was opened
     * @param repair the repair that was kept, where one was opened
     * @param lost what of it could not be read
     * @param drawn its drawing, which may still be in the making
     */
    record Board(
            BenchState first,
            Path file,
            Optional<Kept<Repair>> repair,
            List<String> lost,
            CompletableFuture<DrawnBoard> drawn)
            implements Opened {
        /** Copies the list. */
        public Board {
            lost = List.copyOf(lost);
        }
    }

    /**
     * A circuit file with errors.
     *
     * @param file the file
     * @param text what stands in it; empty where it cannot be read at all
     * @param problems everything that is wrong with it
     */
    record Unreadable(Path file, String text, List<Problem> problems) implements Opened {
        /** Copies the list. */
        public Unreadable {
            problems = List.copyOf(problems);
        }
    }

    /** No repair, or one whose circuit is gone. */
    record NoRepair(Path file) implements Opened {}

    /** Reads a circuit file or a repair, and begins to draw its board. */
    static Opened read(Path file, SymbolStyle style) {
        Path name = file.getFileName();
        boolean isRepair =
                name != null && name.toString().toLowerCase(Locale.ROOT).endsWith(".repair.yaml");
        if (!isRepair) {
            return board(file, file, Optional.empty(), style);
        }
        Optional<Kept<Repair>> found = Repair.read(file);
        Optional<Path> circuit = found.flatMap(k -> k.value().circuitFile(file));
        return circuit.isEmpty() ? new NoRepair(file) : board(file, circuit.get(), found, style);
    }

    private static Opened board(Path file, Path circuit, Optional<Kept<Repair>> repair, SymbolStyle style) {
        CircuitFile read = CircuitReader.withShippedParts().read(circuit);
        Circuit board = read.circuit();
        if (board == null) {
            return new Unreadable(circuit, text(circuit), read.problems());
        }
        CompletableFuture<DrawnBoard> drawn =
                CompletableFuture.supplyAsync(() -> DrawnBoard.of(board, style), Opened::away);
        List<String> lost = new ArrayList<>();
        BenchState first = BenchState.atFirst(circuit, board);
        if (repair.isPresent()) {
            OpenRepair.Restored restored =
                    OpenRepair.restored(circuit, board, repair.get().value());
            lost.addAll(repair.get().lost());
            lost.addAll(restored.lost());
            first = restored.state();
        }
        return new Board(first, file, repair, lost, drawn);
    }

    /** What stands in a file; empty where it cannot be read. */
    static String text(Path file) {
        try {
            return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            return "";
        }
    }

    /** Runs something on a thread of its own, which does not keep the program alive. */
    static void away(Runnable work) {
        Thread thread = new Thread(work, "fusetale opens");
        thread.setDaemon(true);
        thread.start();
    }
}
