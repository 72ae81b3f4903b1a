package fusetale.desk;

import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Problem;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DrawnBoard;
import fusetale.desk.state.History;
import fusetale.report.drawing.SymbolStyle;
import fusetale.sentence.Sentence;
import fusetale.sentence.Sentences;
import fusetale.sentence.Setting;
import fusetale.store.Kept;
import fusetale.store.Preferences;
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
     * @param been the state to begin with, behind those one can go back to
     * @param file what was opened
     * @param repair the repair that was kept, where one was opened
     * @param lost what of it could not be read, or its board no longer has; its file must not be written over then
     * @param drawn its drawing, which may still be in the making
     */
    record Board(
            History been,
            Path file,
            Optional<Kept<Repair>> repair,
            List<String> lost,
            CompletableFuture<DrawnBoard> drawn)
            implements Opened {
        /** Copies the list. */
        public Board {
            lost = List.copyOf(lost);
        }

        /** The state to begin with. */
        BenchState first() {
            return been.present();
        }
    }

    /**
     * A circuit file with errors.
     *
     * @param asked what was to be opened: the circuit itself, or a repair of it
     * @param file the circuit file
     * @param text what stands in it; empty where it cannot be read at all
     * @param problems everything that is wrong with it
     */
    record Unreadable(Path asked, Path file, String text, List<Problem> problems) implements Opened {
        /** Copies the list. */
        public Unreadable {
            problems = List.copyOf(problems);
        }
    }

    /** No repair, or one whose circuit is gone. */
    record NoRepair(Path file) implements Opened {}

    /** Reads a circuit file or a repair, and begins to draw its board. */
    static Opened read(Path file, Preferences liked) {
        Path name = file.getFileName();
        boolean isRepair =
                name != null && name.toString().toLowerCase(Locale.ROOT).endsWith(".repair.yaml");
        if (!isRepair) {
            return board(file, file, Optional.empty(), liked);
        }
        Optional<Kept<Repair>> found = Repair.read(file);
        Optional<Path> circuit = found.flatMap(k -> k.value().circuitFile(file));
        return circuit.isEmpty() ? new NoRepair(file) : board(file, circuit.get(), found, liked);
    }

    private static Opened board(Path file, Path circuit, Optional<Kept<Repair>> repair, Preferences liked) {
        CircuitFile read = CircuitReader.withShippedParts().read(circuit);
        Circuit board = read.circuit();
        if (board == null) {
            return new Unreadable(file, circuit, text(circuit), read.problems());
        }
        SymbolStyle style = Program.symbols(liked);
        CompletableFuture<DrawnBoard> drawn =
                CompletableFuture.supplyAsync(() -> DrawnBoard.of(board, style), Opened::away);
        if (repair.isEmpty()) {
            BenchState first = BenchState.atFirst(circuit, board).with(begun(board, liked));
            return new Board(History.of(first), file, repair, List.of(), drawn);
        }
        Repair kept = repair.get().value();
        OpenRepair.Restored restored = OpenRepair.restored(circuit, board, kept);
        List<String> lost = new ArrayList<>(repair.get().lost());
        lost.addAll(restored.lost());
        return new Board(restored.history(), file, Optional.of(new Kept<>(kept, lost)), lost, drawn);
    }

    /** Where a new repair begins: with the meter on this bench, and the mains of this house. */
    private static Sentence begun(Circuit board, Preferences liked) {
        Sentence first = Sentence.atFirst(board);
        Setting setting = Meter.builtIn().stream()
                .filter(m ->
                        m.name().equals(liked.meter()) && m.has(first.setting().function()))
                .findFirst()
                .map(first.setting()::withMeter)
                .orElse(first.setting());
        boolean asInFile = liked.mainsHertz() == 0 || first.arrangement().mainsHertz() != null;
        Arrangement bench =
                asInFile ? first.arrangement() : first.arrangement().withMainsHertz((double) liked.mainsHertz());
        return new Sentences(board).settled(first.withSetting(setting).withArrangement(bench));
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
