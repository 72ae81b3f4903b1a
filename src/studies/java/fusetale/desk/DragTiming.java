package fusetale.desk;

import fusetale.desk.line.LineModel;
import fusetale.desk.state.DeskModel.Freshness;
import fusetale.sentence.Piece;
import fusetale.sentence.Sentence;
import fusetale.store.Store;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;

/**
 * How long it takes from a hand's move to the painted frame on <i>Night Ferry</i>, solve included: a fault's amount is dragged, the next
 * move made when the frame of the one before is painted. Arguments: what is dragged, such as {@code "r202 drifted x1.2"}.
 */
public final class DragTiming {
    private static final int MOVES = 120;
    private static final int WARM = 30;

    private DragTiming() {}

    /** Measures. */
    public static void main(String[] arguments) {
        Application.launch(Drags.class, arguments);
    }

    /** Drags, and prints what it took. */
    public static final class Drags extends Application {
        private final List<Double> milliseconds = new ArrayList<>();
        private final List<Double> solved = new ArrayList<>();
        private @Nullable Program program;
        private @Nullable Piece piece;
        private @Nullable Sentence asked;
        private long moved;
        private long arrived;
        private int count;
        private boolean painted;
        private Map<String, Long> worked = Map.of();

        @Override
        public void start(Stage stage) throws IOException {
            System.setProperty(
                    Store.PROPERTY, Files.createTempDirectory("fusetale-drag").toString());
            List<String> arguments = getParameters().getRaw();
            Program running = new Program(stage);
            program = running;
            running.begin(
                    List.of("circuits/night-ferry.yaml", arguments.isEmpty() ? "r202 drifted x1.2" : arguments.get(0)));
            stage.setWidth(1280);
            stage.setHeight(720);
            // a pulse comes before its frame is painted; the one after the values were set tells that they were
            stage.getScene().addPostLayoutPulseListener(this::framed);
            new AnimationTimer() {
                @Override
                public void handle(long now) {
                    running.opened().ifPresent(repair -> {
                        stop();
                        watch(repair);
                    });
                }
            }.start();
        }

        private void watch(OpenRepair repair) {
            repair.model()
                    .glancedProperty()
                    .addListener((property, before, now) -> now.filter(
                                    g -> g.sentence().equals(asked))
                            .ifPresent(g -> {
                                arrived = System.nanoTime();
                                painted = true;
                            }));
            new AnimationTimer() {
                @Override
                public void handle(long now) {
                    if (moved == 0
                            && repair.model().freshness() == Freshness.FRESH
                            && !repair.model().workingProperty().get().busy()) {
                        move();
                    }
                }
            }.start();
        }

        private void framed() {
            if (painted) {
                painted = false;
                Platform.runLater(this::measured);
            }
        }

        private void measured() {
            milliseconds.add((System.nanoTime() - moved) / 1e6);
            solved.add((arrived - moved) / 1e6);
            count++;
            if (count == WARM) {
                worked = worked();
            }
            if (count == WARM + MOVES) {
                worked().forEach((thread, nanos) -> System.out.printf(
                        Locale.ROOT,
                        "%-24s worked %.1f ms a move%n",
                        thread,
                        (nanos - worked.getOrDefault(thread, 0L)) / 1e6 / MOVES));
                say("to the readings", solved);
                say("to the laid-out frame", milliseconds);
                Platform.exit();
                return;
            }
            move();
        }

        private void move() {
            OpenRepair repair = Objects.requireNonNull(program).opened().orElseThrow();
            LineModel line = new LineModel(repair.model());
            if (piece == null) {
                piece = line.pieces().stream()
                        .filter(p -> line.scale(p).isPresent())
                        .findFirst()
                        .orElseThrow();
            }
            Piece dragged = Objects.requireNonNull(piece);
            double position = 0.3 + 0.4 * (count % 37) / 37;
            moved = System.nanoTime();
            line.drag(dragged, position);
            asked = repair.model().sentenceProperty().get();
        }

        /** What each kind of thread has worked so far, which tells more than the clock where the machine is shared [ns]. */
        private static Map<String, Long> worked() {
            Map<String, Long> all = new TreeMap<>();
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            for (long id : threads.getAllThreadIds()) {
                ThreadInfo info = threads.getThreadInfo(id);
                long nanos = threads.getThreadCpuTime(id);
                if (info != null && nanos > 0) {
                    all.merge(info.getThreadName(), nanos, Long::sum);
                }
            }
            all.values().removeIf(nanos -> nanos < 100_000_000L);
            return all;
        }

        private static void say(String what, List<Double> all) {
            List<Double> kept = new ArrayList<>(all.subList(WARM, all.size()));
            Collections.sort(kept);
            System.out.printf(
                    Locale.ROOT,
                    "%-24s median %.0f ms, p95 %.0f ms, most %.0f ms (%d moves)%n",
                    what,
                    kept.get(kept.size() / 2),
                    kept.get((int) (0.95 * kept.size())),
                    kept.get(kept.size() - 1),
                    kept.size());
        }
    }
}
