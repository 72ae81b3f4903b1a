package fusetale.desk;

import fusetale.desk.match.MadeUp;
import fusetale.desk.match.MatchModel;
import fusetale.desk.match.Weigher;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.DeskModel.Freshness;
import fusetale.explore.Progress;
import fusetale.match.Ask;
import fusetale.match.Findings;
import fusetale.match.LookAlike;
import fusetale.match.Matcher;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.sentence.SentenceException;
import fusetale.store.Preferences;
import fusetale.store.Store;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextField;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;

/**
 * Writes pictures of every state of the window: by day, with the lamp off, in greys, at 1280 × 720, large, and with everything at 150 %.
 * Arguments: the folder to write to, and perhaps the beginning of the names of those wanted.
 */
public final class Screens {
    private Screens() {}

    /** Writes them. */
    public static void main(String[] arguments) {
        Application.launch(Pictures.class, arguments);
    }

    /**
     * How the window is shown.
     *
     * @param name what to call it
     * @param grey whether colours are taken away
     */
    private record Look(String name, int width, int height, int perCent, Preferences.Light light, boolean grey) {}

    private static final List<Look> LOOKS = List.of(
            new Look("light", 1280, 720, 100, Preferences.Light.LIGHT, false),
            new Look("dark", 1280, 720, 100, Preferences.Light.LAMP_OFF, false),
            new Look("grey", 1280, 720, 100, Preferences.Light.LIGHT, true),
            new Look("large", 1280, 720, 150, Preferences.Light.LIGHT, false),
            new Look("wide", 1920, 1080, Preferences.TEXT_AS_THE_WINDOW, Preferences.Light.LIGHT, false));

    /**
     * One state.
     *
     * @param name what to call it
     * @param board which board
     * @param steps lines of the sentence, {@code !COMMAND}, {@code @card PART}, {@code @type text}, {@code @word},
     *     {@code @broken BOARD}, {@code @found reading}, {@code @field text}, {@code @taken FILE}, {@code @wrong},
     *     {@code @sound}
     */
    private record State(String name, String board, List<String> steps) {
        /** How the made-up figures of the places that weigh readings are told; the rest asks the matcher. */
        Weigher.Maker weighing() {
            if (name.startsWith("seen")) {
                return (board, meter) -> new Unweighed();
            }
            if (name.startsWith("matched")) {
                return Weigher.matcher(new Matcher.Settings(2, 1, null));
            }
            return name.contains("danger")
                    ? MadeUp.in(MadeUp.Mood.DANGER)
                    : MadeUp.in(name.contains("first-look") ? MadeUp.Mood.FIRST_LOOK : MadeUp.Mood.PLAIN);
        }
    }

    /** Weighs nothing, at once: what is only looked at needs no answer. */
    private static final class Unweighed implements Weigher {
        @Override
        public Ranking rank(Findings findings, Consumer<Ranking> sharper, Progress progress, BooleanSupplier stopped) {
            Ranking.HowFar none = new Ranking.HowFar(0, 0, 0, 0);
            return new Ranking(List.of(), 1, false, List.of(), List.of(), List.of(), none);
        }

        @Override
        public NextReadings next(
                Findings findings,
                Set<String> outOfReach,
                List<Ask> ruledOut,
                Progress progress,
                BooleanSupplier stopped) {
            return new NextReadings(List.of(), NextReadings.Verdict.NO_MORE_TO_LEARN, "", null);
        }

        @Override
        public List<LookAlike> lookAlikes(Findings findings, Progress progress, BooleanSupplier stopped) {
            return List.of();
        }
    }

    private static final List<String> SHORT = List.of("br1 leg1 shorted", "f1 holds 25 A");
    private static final List<String> FERRY = List.of("br201 leg1 shorted", "f201 holds 25 A");

    private static final List<String> FOUR = List.of(
            "!PLACE_MATCH", "@found tp1 18.2 dc", "@found tp1 0.02 ac", "@found tp2 0.01 dc", "@found tp4 14.0 ac");
    private static final List<String> MANY = List.of(
            "!PLACE_MATCH",
            "@found tp1 15.8 dc",
            "@found tp1 0.24 ac",
            "@found tp2 13.4 dc",
            "@found tp4 14.0 ac",
            "@found tp2 13.2 ohms",
            "@found F1 whole",
            "@found tp5 OL ohms",
            "@found tp3 to tp1 OL diode test (power off, pull f1)",
            "@found E1 dark");

    private static final List<State> STATES = List.of(
            new State("start", "", List.of()),
            new State("first-light-healthy", "first-light", List.of()),
            new State("first-light-supposed", "first-light", with(SHORT, "ac volts")),
            new State("first-light-too-close", "first-light", List.of("r2 drifted x1.1")),
            new State("first-light-card", "first-light", with(SHORT, "@card BR1")),
            new State("first-light-line", "first-light", List.of("@type br1 ")),
            new State("first-light-meter", "first-light", List.of("!METER")),
            new State(
                    "first-light-reading", "first-light", List.of("r2 open", "@read tp1 16.9 dc", "@read tp2 0.02 dc")),
            new State("first-light-aftermath", "first-light", with(SHORT, "!AFTERMATH")),
            new State("first-light-waves", "first-light", with(SHORT, "!WAVES")),
            new State("first-light-bars", "first-light", with(SHORT, "!BARS")),
            new State("first-light-off", "first-light", with(SHORT, "diode test")),
            new State("first-light-sheet", "first-light", with(SHORT, "!SHEET")),
            new State("first-light-export", "first-light", List.of("!EXPORT")),
            new State("preferences", "first-light", List.of("!PREFERENCES")),
            new State("keys", "first-light", List.of("!KEYS")),
            new State("word", "first-light", with(SHORT, "@word")),
            new State("unreadable", "", List.of("@broken first-light")),
            new State("match-empty", "first-light", List.of("!PLACE_MATCH")),
            new State("match-one", "first-light", List.of("!PLACE_MATCH", "@found tp1 18.2 dc")),
            new State("match-four", "first-light", FOUR),
            new State("match-seen", "first-light", with(FOUR, "@found F1 whole")),
            new State("match-many", "first-light", MANY),
            new State("match-suspect", "first-light", with(FOUR, "@found tp1 3.1 dc")),
            new State("match-danger", "first-light", List.of("!PLACE_MATCH", "@found F1 blown", "@found tp2 13 ohms")),
            new State("match-new", "first-light", with(FOUR, "@found new r2", "@found tp2 14.4 dc")),
            new State("match-new-last", "first-light", with(FOUR, "@found replaced r2, f1")),
            new State("match-wrong", "first-light", List.of("!PLACE_MATCH", "@wrong")),
            new State("match-taken", "first-light", List.of("!PLACE_MATCH", "@taken circuits/first-light-dark.csv")),
            new State("match-first-look", "first-light", FOUR),
            new State("match-typing", "first-light", with(FOUR, "@field 14")),
            new State("match-row", "first-light", with(FOUR, "@row")),
            new State("matched-empty", "first-light", List.of("!PLACE_MATCH")),
            new State(
                    "matched-lamp",
                    "first-light",
                    List.of("!PLACE_MATCH", "@found tp1 18.2 dc", "@found tp2 0.01 dc", "@found E1 dark")),
            new State(
                    "matched-look-again",
                    "first-light",
                    List.of(
                            "!PLACE_MATCH",
                            "@found E1 dark",
                            "@found tp1 16.84 dc",
                            "@found tp2 14.41 dc",
                            "@found tp2 6.0 ohms")),
            new State(
                    "matched-seen-twice",
                    "first-light",
                    List.of(
                            "!PLACE_MATCH",
                            "@found E1 dark",
                            "@found tp1 16.84 dc",
                            "@found tp2 14.41 dc",
                            "@found tp2 6.0 ohms",
                            "@found E1 dark")),
            new State("seen-ferry", "night-ferry", List.of("!PLACE_MATCH")),
            new State("seen-ferry-most", "night-ferry", List.of("!PLACE_MATCH", "@found E310 dark", "@sound")),
            new State(
                    "matched-new",
                    "first-light",
                    List.of(
                            "!PLACE_MATCH",
                            "@found tp1 18.2 dc",
                            "@found tp2 0.01 dc",
                            "@found E1 dark",
                            "@found new r2",
                            "@found tp2 14.4 dc",
                            "@found E1 lit")),
            new State(
                    "matched-ferry", "night-ferry", List.of("!PLACE_MATCH", "@found F201 blown", "@found tp4 0.02 dc")),
            new State("fog-bell", "fog-bell", List.of("k1 coil open")),
            new State("night-ferry-healthy", "night-ferry", List.of()),
            new State("night-ferry-whole", "night-ferry", List.of("!DRAWING_ONLY", "!FIT")),
            new State("night-ferry-supposed", "night-ferry", FERRY),
            new State("night-ferry-coil", "night-ferry", List.of("q205 c-e shorted", "!DRAWING_ONLY")),
            new State("night-ferry-bars", "night-ferry", with(FERRY, "!BARS")),
            new State("night-ferry-aftermath", "night-ferry", with(FERRY, "!AFTERMATH")),
            new State("night-ferry-sheet", "night-ferry", with(FERRY, "!SHEET")));

    private static List<String> with(List<String> lines, String... last) {
        List<String> all = new ArrayList<>(lines);
        all.addAll(List.of(last));
        return all;
    }

    /** Goes through all of them. */
    public static final class Pictures extends Application {
        private static final int QUIET_FRAMES = 12;

        private final Deque<State> states = new ArrayDeque<>();
        private final Deque<String> steps = new ArrayDeque<>();
        private Path folder = Path.of("target", "screens");
        private @Nullable Program program;
        private @Nullable Stage stage;
        private @Nullable State state;
        private int quiet;
        private int look = -1;

        @Override
        public void start(Stage primary) throws IOException {
            List<String> arguments = getParameters().getRaw();
            if (!arguments.isEmpty()) {
                folder = Path.of(arguments.get(0));
            }
            String wanted = arguments.size() > 1 ? arguments.get(1) : "";
            Files.createDirectories(folder);
            System.setProperty(
                    Store.PROPERTY,
                    Files.createTempDirectory("fusetale-screens").toString());
            STATES.stream().filter(s -> s.name().startsWith(wanted)).forEach(states::add);
            stage = primary;
            next();
            new AnimationTimer() {
                @Override
                public void handle(long now) {
                    frame();
                }
            }.start();
        }

        private void next() {
            state = states.poll();
            if (state == null) {
                Platform.exit();
                return;
            }
            Stage shown = Objects.requireNonNull(stage);
            program = new Program(shown, state.weighing(), FileChoice.ofSystem(shown));
            program.begin(state.board().isEmpty() ? List.of() : List.of("circuits/" + state.board() + ".yaml"));
            steps.addAll(state.steps());
            quiet = 0;
            look = -1;
        }

        private boolean idle() {
            return Objects.requireNonNull(program)
                    .opened()
                    .map(r -> rests(r.model())
                            && rests(r.matching())
                            && r.window().rests())
                    .orElse(Objects.requireNonNull(state).board().isEmpty());
        }

        /** A first look of made-up figures never becomes a second one. */
        private boolean rests(MatchModel matching) {
            return !matching.workProperty().get().busy()
                    || (Objects.requireNonNull(state).name().contains("first-look")
                            && matching.workProperty().get().of() > 0);
        }

        private static boolean rests(DeskModel model) {
            return model.freshness() == Freshness.FRESH
                    && !model.workingProperty().get().busy()
                    && model.otherPowerProperty()
                            .get()
                            .filter(o -> o.sentence()
                                    .supposition()
                                    .equals(model.asked().supposition()))
                            .isPresent();
        }

        private void frame() {
            quiet = idle() ? quiet + 1 : 0;
            if (quiet < QUIET_FRAMES) {
                return;
            }
            quiet = 0;
            String step = steps.poll();
            if (step != null) {
                take(step);
                return;
            }
            // a window that was resized is laid out by the next frames: one look at a time
            if (look >= 0) {
                write(LOOKS.get(look));
            }
            look++;
            if (look < LOOKS.size()) {
                show(LOOKS.get(look));
            } else {
                next();
            }
        }

        private void show(Look wanted) {
            Stage shown = Objects.requireNonNull(stage);
            Objects.requireNonNull(program)
                    .prefer(p -> p.withTextPerCent(wanted.perCent()).withLight(wanted.light()));
            shown.setWidth(wanted.width());
            shown.setHeight(wanted.height());
        }

        private void take(String step) {
            Program running = Objects.requireNonNull(program);
            if (step.startsWith("@broken ")) {
                running.open(broken(step.substring("@broken ".length())));
                // another look is due only once it has been read
                quiet = -QUIET_FRAMES * 8;
                return;
            }
            if (step.equals("@wrong") || step.startsWith("@taken ")) {
                running.open(step.equals("@wrong") ? wrong() : Path.of(step.substring("@taken ".length())));
                quiet = -QUIET_FRAMES * 8;
                return;
            }
            Window window = running.opened().orElseThrow().window();
            if (step.startsWith("!")) {
                window.commands().take(Command.valueOf(step.substring(1)));
            } else if (step.equals("@word")) {
                window.sentence().begin();
                window.commands().explain();
            } else if (step.startsWith("@card ")) {
                window.openCard(step.substring("@card ".length()));
            } else if (step.startsWith("@type ")) {
                window.sentence().edit(step.substring("@type ".length()));
            } else if (step.startsWith("@read ")) {
                window.commands().takeReading(step.substring("@read ".length()));
            } else if (step.startsWith("@found ")) {
                found(window, step.substring("@found ".length()));
            } else if (step.startsWith("@field ")) {
                window.match().begin();
                ((TextField) window.lookup(".found-text")).setText(step.substring("@field ".length()));
            } else if (step.equals("@sound")) {
                window.lookupAll(".intake-all").stream().skip(1).forEach(b -> ((ButtonBase) b).fire());
            } else if (step.equals("@row")) {
                window.lookupAll(".fit-row").stream().skip(1).findFirst().ifPresent(Node::requestFocus);
            } else {
                window.commands().say(step);
            }
        }

        private static void found(Window window, String line) {
            try {
                window.matches().take(line);
            } catch (SentenceException e) {
                throw new IllegalArgumentException(line, e);
            }
        }

        /** A board's file with two mistakes in it. */
        private Path broken(String board) {
            try {
                String text = Files.readString(Path.of("circuits", board + ".yaml"));
                Path file = Files.createTempDirectory("fusetale-broken").resolve(board + ".yaml");
                return Files.writeString(
                        file, text.replace("is: fuse", "is: fusse").replace("value: 1 kohm", "value: much"));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /** A file of readings with three mistakes in it. */
        private static Path wrong() {
            try {
                Path file = Files.createTempDirectory("fusetale-wrong").resolve("readings.csv");
                return Files.writeString(file, """
                        arrangement,function,from,to,value,unit,meter,note
                        as found,fuse,F1,,blown,,,
                        ,dc,TP1,,18.2,V,,
                        ,dc,TP9,,0.02,V,,wrong point
                        power off,ohms,TP2,,much,,,
                        ,replaced,R22,,,,,
                        """);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private void write(Look wanted) {
            WritableImage image = Objects.requireNonNull(stage).getScene().snapshot(null);
            String name = Objects.requireNonNull(state).name() + "-" + wanted.name() + ".png";
            try {
                Files.write(folder.resolve(name), png(image, wanted.grey()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static byte[] png(WritableImage image, boolean grey) {
            int width = (int) image.getWidth();
            int height = (int) image.getHeight();
            PixelReader pixels = image.getPixelReader();
            int[] argb = new int[width * height];
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    argb[y * width + x] = pixels.getArgb(x, y);
                }
            }
            return PixelsFile.png(argb, width, grey);
        }
    }
}
