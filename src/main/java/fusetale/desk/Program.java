package fusetale.desk;

import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.desk.help.Glossary;
import fusetale.desk.help.HelpView;
import fusetale.desk.help.KeyLine;
import fusetale.desk.help.OnThisBoard;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Palette;
import fusetale.desk.kit.Scaled;
import fusetale.desk.match.MatchModel;
import fusetale.desk.match.Weigher;
import fusetale.desk.preferences.PreferencesModel;
import fusetale.desk.preferences.PreferencesView;
import fusetale.desk.preferences.SystemLight;
import fusetale.desk.start.StartModel;
import fusetale.desk.start.StartView;
import fusetale.desk.start.UnreadableView;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.Sheet;
import fusetale.desk.state.Workers;
import fusetale.desk.trouble.Guard;
import fusetale.desk.trouble.Trouble;
import fusetale.desk.trouble.TroubleView;
import fusetale.desk.watch.CircuitWatch;
import fusetale.desk.work.Newest;
import fusetale.explore.Words;
import fusetale.match.Matcher;
import fusetale.match.ReadingsFile;
import fusetale.match.ReadingsReader;
import fusetale.report.drawing.SymbolStyle;
import fusetale.store.Autosave;
import fusetale.store.Preferences;
import fusetale.store.Saved;
import fusetale.store.Store;
import fusetale.store.UnwritableFile;
import java.io.File;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.StackPane;
import javafx.stage.DirectoryChooser;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;

/** The program around the window: what is open, how it is kept, and the pages that lie over it. */
final class Program implements Desk {
    private static final Words WORDS = Words.of(Program.class);
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 760;
    private static final double WIDE = 1600;
    private static final String CSV = "csv";
    private static final int WIDE_PER_CENT = 125;
    /** Seed of the machines that readings are compared with; the same every time, so that answers are too. */
    private static final long SEED = 1;

    private final Stage stage;
    private final Weigher.Maker weighing;
    private final FileChoice files;
    private final Store store = Store.here();
    private final Clock clock = Clock.systemUTC();
    private final PreferencesModel preferences;
    private final StackPane layers = new StackPane();
    private final Scaled scaled = new Scaled(layers);
    private final Guard guard;
    private final Newest opening;
    private final Newest askingLight;
    private final BooleanSupplier darkSystem;
    private boolean systemIsDark;
    private @Nullable OpenRepair open;
    /** What had the keyboard before a page lay over the window. */
    private @Nullable Node had;

    private @Nullable CircuitWatch waitsFor;

    Program(Stage stage) {
        this(
                stage,
                Weigher.matcher(
                        new Matcher.Settings(threads(), SEED, Store.here().dictionaries())),
                FileChoice.ofSystem(stage),
                SystemLight::isDark);
    }

    /** With something else that weighs readings, and that says which file, on a light system, as tests have it. */
    Program(Stage stage, Weigher.Maker weighing, FileChoice files) {
        this(stage, weighing, files, () -> false);
    }

    private Program(Stage stage, Weigher.Maker weighing, FileChoice files, BooleanSupplier darkSystem) {
        this.darkSystem = darkSystem;
        this.stage = stage;
        this.weighing = weighing;
        this.files = files;
        this.preferences = new PreferencesModel(
                store, () -> Meter.builtIn().stream().map(Meter::name).toList());
        this.guard = new Guard(this::keep, this::sentence, clock, Platform::runLater, this::tell);
        this.opening = workers().line();
        this.askingLight = workers().line();
    }

    private Workers workers() {
        return new Workers(Platform::runLater, e -> guard.uncaughtException(Thread.currentThread(), e));
    }

    /** The window keeps one for itself. */
    private static int threads() {
        return Math.max(1, Runtime.getRuntime().availableProcessors() - 1);
    }

    /** Opens what was asked for on the command line, or the first screen. */
    void begin(List<String> arguments) {
        begin(arguments, () -> Opened.read(Path.of(arguments.get(0)), preferences()));
    }

    /** The same where somebody reads the file already. */
    void begin(List<String> arguments, Supplier<Opened> read) {
        Faces.load();
        Thread.setDefaultUncaughtExceptionHandler(guard);
        Thread.currentThread().setUncaughtExceptionHandler(guard);
        Scene scene = new Scene(scaled, WIDTH, HEIGHT);
        scene.getStylesheets()
                .add(Objects.requireNonNull(Faces.class.getResource("desk.css")).toExternalForm());
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::sized);
        scene.setOnDragOver(this::dragged);
        scene.setOnDragDropped(this::dropped);
        stage.setScene(scene);
        stage.setTitle(WORDS.say("brand"));
        stage.setOnHidden(e -> closeRepair());
        preferences.preferencesProperty().addListener(changed -> {
            prefer();
            askLight();
        });
        scene.widthProperty().addListener(changed -> prefer());
        // asked again whenever one comes back: many systems go dark in the evening
        stage.focusedProperty().addListener((property, before, now) -> {
            if (now) {
                askLight();
            }
        });
        prefer();
        if (arguments.isEmpty()) {
            showStart();
        } else {
            open(Path.of(arguments.get(0)), read, String.join(" and ", arguments.subList(1, arguments.size())));
        }
        stage.show();
    }

    @Override
    public Preferences preferences() {
        return preferences.preferences();
    }

    @Override
    public SymbolStyle symbols() {
        return symbols(preferences());
    }

    /** The symbols that somebody prefers. */
    static SymbolStyle symbols(Preferences preferences) {
        return preferences.symbols() == Preferences.Symbols.IEEE_315 ? SymbolStyle.IEEE_315 : SymbolStyle.IEC_60617;
    }

    @Override
    public void take(Command command) {
        switch (command) {
            case OPEN -> showStart();
            case OPEN_READINGS ->
                files.toOpen(WORDS.say("readings"), List.of(CSV)).ifPresent(this::openReadings);
            case PREFERENCES -> show(new PreferencesView(preferences, this::chosenFolder, this::leave));
            case KEYS -> help();
            case TEXT_LARGER -> preferences.textPerCent(textPerCent() + 10);
            case TEXT_SMALLER -> preferences.textPerCent(textPerCent() - 10);
            case TEXT_AS_DRAWN -> preferences.textPerCent(Preferences.LEAST_TEXT_PER_CENT);
            default -> {
                OpenRepair repair = open;
                if (repair != null) {
                    paper(repair).take(command);
                }
            }
        }
    }

    private Papers paper(OpenRepair repair) {
        return new Papers(repair, this, stage);
    }

    /** Asks which file. */
    FileChoice files() {
        return files;
    }

    /** What everything is painted on. */
    Scene scene() {
        return stage.getScene();
    }

    /** What lies open. */
    Optional<OpenRepair> opened() {
        return Optional.ofNullable(open);
    }

    /** Lays a page over everything. */
    void show(Node page) {
        OpenRepair repair = open;
        if (repair == null) {
            layers.getChildren().setAll(page);
            page.requestFocus();
            return;
        }
        Window window = repair.window();
        if (!window.isDisabled()) {
            had = scene().getFocusOwner();
        }
        layers.getChildren().setAll(window, page);
        page.requestFocus();
        // nothing of what is hidden gets the keyboard; last, or it would be moved to whatever comes next
        window.setDisable(true);
    }

    /** Takes the page away; with nothing open the first screen comes back. */
    void leave() {
        OpenRepair repair = open;
        if (repair == null) {
            showStart();
        } else {
            layers.getChildren().setAll(repair.window());
            repair.window().setDisable(false);
            begin(repair.window());
        }
    }

    /** Gives the keyboard back to what had it before a page lay over the window, or to the line. */
    private void begin(Window window) {
        Node back = had;
        had = null;
        if (back != null && back.getScene() != null && back.isVisible() && !back.isDisabled()) {
            back.requestFocus();
        } else if (window.matching()) {
            window.match().begin();
        } else {
            window.sentence().begin();
        }
    }

    private void help() {
        List<KeyLine> keys = Arrays.stream(Command.values())
                .map(c -> new KeyLine(c.keys(), WORDS.say("command." + c)))
                .toList();
        OpenRepair repair = open;
        Glossary glossary = Glossary.all(
                repair == null
                        ? java.util.Map.of()
                        : OnThisBoard.of(repair.model().board()));
        show(new HelpView(keys, glossary, this::leave));
    }

    private void showStart() {
        show(new StartView(new StartModel(store, ZoneId.systemDefault()), new StartView.Deeds() {
            @Override
            public void begin(Path circuit) {
                Program.this.open(circuit);
            }

            @Override
            public void open(Path repair) {
                Program.this.open(repair);
            }

            @Override
            public Optional<Path> chosenRepair() {
                return files.toOpen(WORDS.say("files"), List.of("yaml", "yml"));
            }

            @Override
            public void leave() {
                if (open != null) {
                    Program.this.leave();
                }
            }
        }));
    }

    /** Opens a circuit as a new repair, a repair where it was left, or a file of readings on the board that lies open. */
    void open(Path file) {
        if (String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).endsWith("." + CSV)) {
            openReadings(file);
            return;
        }
        CircuitWatch waiting = waitsFor;
        waitsFor = null;
        if (waiting != null) {
            waiting.close();
        }
        Preferences liked = preferences();
        open(file, () -> Opened.read(file, liked), "");
    }

    /** Opens what is read away from the window, then says a line about it, unless something else was opened meanwhile. */
    private void open(Path file, Supplier<Opened> read, String line) {
        OpenRepair repair = open;
        if (repair == null) {
            show(waiting(file));
        } else {
            repair.window().notice(WORDS.say("opening", file));
        }
        opening.start(turn -> {
            Opened opened = read.get();
            turn.show(() -> show(opened, line));
        });
    }

    /** Takes what stands in a file of readings, all of it or nothing. */
    private void openReadings(Path file) {
        OpenRepair repair = open;
        if (repair == null) {
            tellIn(WORDS.say("readings.no-board", String.valueOf(file.getFileName())));
            return;
        }
        repair.window().notice(WORDS.say("opening", file));
        Circuit board = repair.model().board();
        opening.start(turn -> {
            ReadingsFile read = new ReadingsReader(board).read(file);
            turn.show(() -> {
                if (repair.equals(open)) {
                    show(repair, file, read);
                }
            });
        });
    }

    private void show(OpenRepair repair, Path file, ReadingsFile read) {
        if (read.usable()) {
            leave();
            repair.window().place(true);
            repair.window().notice(TakenReadings.take(repair.model(), file, read));
        } else {
            repair.window().notice("");
            show(UnreadableView.ofReadings(
                    file, Opened.text(file), read.problems(), () -> take(Command.OPEN_READINGS), this::leave));
        }
    }

    private static Node waiting(Path file) {
        Label said = new Label(WORDS.say("opening", file));
        said.getStyleClass().add("notice");
        said.setFocusTraversable(true);
        said.setAccessibleText(said.getText());
        return said;
    }

    private void show(Opened opened, String line) {
        if (opened instanceof Opened.Board board) {
            show(board);
            OpenRepair repair = open;
            if (repair != null && !line.isEmpty()) {
                repair.window().commands().say(line);
            }
        } else if (opened instanceof Opened.Unreadable unreadable) {
            show(unreadable);
        } else if (opened instanceof Opened.NoRepair none) {
            tellIn(WORDS.say("no-repair", none.file()));
        }
    }

    /** Shows what stands in a file that cannot be used, and opens it as soon as it can. */
    private void show(Opened.Unreadable unreadable) {
        closeRepair();
        stage.setTitle(WORDS.say("title", String.valueOf(unreadable.file().getFileName())));
        waitsFor = CircuitWatch.later(
                unreadable.file(), CircuitReader.withShippedParts(), CircuitWatch.BETWEEN, watched -> {
                    if (watched.current()) {
                        Platform.runLater(() -> mended(unreadable.asked()));
                    }
                });
        show(new UnreadableView(
                unreadable.file(), unreadable.text(), unreadable.problems(), this::showStart, this::showStart));
    }

    /** A circuit that could not be used can be now: what was asked for is opened, which may be a repair of it. */
    private void mended(Path asked) {
        if (waitsFor != null) {
            open(asked);
        }
    }

    private Autosave autosave(Opened.Board board) {
        Autosave.Keeping keeping = new Autosave.Keeping(
                store, saved -> saved(saved, board.first().board().name()));
        return board.repair()
                .map(kept -> keeping.opened(board.file(), kept))
                .orElseGet(() -> keeping.fresh(Store.freshRepair(
                        preferences().repairs(store), board.first().board().name())));
    }

    private void show(Opened.Board opened) {
        closeRepair();
        BenchState first = opened.first();
        List<String> lost = opened.lost();
        Autosave autosave = autosave(opened);
        Workers workers = workers();
        DeskModel model = DeskModel.resting(workers, opened.been());
        Sheet sheet = new Sheet(workers);
        sheet.draw(first.board(), symbols(), opened.drawn()::join);
        MatchModel matching = new MatchModel(model, workers, weighing);
        Window window = new Window(model, sheet, matching, this);
        Rereading rereading = new Rereading(model, window);
        CircuitWatch watch = CircuitWatch.later(
                Objects.requireNonNull(first.file()),
                CircuitReader.withShippedParts(),
                CircuitWatch.BETWEEN,
                watched -> Platform.runLater(() -> rereading.watched(watched)));
        open = new OpenRepair(model, matching, window, autosave, watch);
        model.historyProperty().addListener(changed -> autosave.changed(OpenRepair.kept(model, clock.instant())));
        stage.setTitle(WORDS.say("title", first.board().name()));
        leave();
        if (!lost.isEmpty()) {
            window.notice(WORDS.say("lost", String.join(" ", lost)));
        }
        if (opened.repair().isEmpty()) {
            autosave.changed(OpenRepair.kept(model, clock.instant()));
        }
        list(autosave.file(), first.board().name()).ifPresent(window::notice);
    }

    /** Puts a repair on the list of recent ones; gives why it could not be. */
    private Optional<String> list(Path file, String name) {
        try {
            store.changeRecent(r -> r.opened(file, name, clock.instant()));
            return Optional.empty();
        } catch (UnwritableFile e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }

    /** A repair was kept; one that goes on in another file is found there again, also where it was kept on closing. */
    private void saved(Saved saved, String name) {
        Optional<String> unlisted =
                saved instanceof Saved.Elsewhere elsewhere ? list(elsewhere.file(), name) : Optional.empty();
        OpenRepair repair = open;
        if (repair == null) {
            return;
        }
        Platform.runLater(() -> {
            repair.window().saved(saved);
            unlisted.ifPresent(repair.window()::notice);
        });
    }

    private Optional<Saved> keep() {
        OpenRepair repair = open;
        return repair == null ? Optional.empty() : repair.autosave().now();
    }

    private String sentence() {
        OpenRepair repair = open;
        return repair == null
                ? ""
                : repair.model().sentences().text(repair.model().state().sentence());
    }

    private void tell(Trouble trouble) {
        show(new TroubleView(trouble, () -> {
            guard.told();
            leave();
        }));
    }

    /** Says something in the window, or on the first screen where none is open. */
    private void tellIn(String text) {
        OpenRepair repair = open;
        if (repair != null) {
            leave();
            repair.window().notice(text);
        } else {
            showStart();
            Label said = new Label(text);
            said.setWrapText(true);
            said.getStyleClass().add("notice");
            StackPane.setAlignment(said, javafx.geometry.Pos.BOTTOM_CENTER);
            layers.getChildren().add(said);
        }
    }

    private void closeRepair() {
        CircuitWatch waiting = waitsFor;
        waitsFor = null;
        if (waiting != null) {
            waiting.close();
        }
        OpenRepair repair = open;
        open = null;
        had = null;
        if (repair != null) {
            repair.close();
        }
    }

    private String chosenFolder() {
        File folder = new DirectoryChooser().showDialog(stage);
        return folder == null ? "" : folder.toString();
    }

    /** Likes it otherwise from now on. */
    void prefer(UnaryOperator<Preferences> otherwise) {
        preferences.change(otherwise);
    }

    private void askLight() {
        if (preferences().light() != Preferences.Light.AS_THE_SYSTEM) {
            return;
        }
        askingLight.start(turn -> {
            boolean dark = darkSystem.getAsBoolean();
            turn.show(() -> {
                if (dark != systemIsDark) {
                    systemIsDark = dark;
                    prefer();
                }
            });
        });
    }

    /** Paints and scales everything as the user likes it. */
    private void prefer() {
        Preferences now = preferences();
        boolean dark = now.light() == Preferences.Light.LAMP_OFF
                || (now.light() == Preferences.Light.AS_THE_SYSTEM && systemIsDark);
        scaled.setStyle((dark ? Palette.DARK : Palette.LIGHT).style());
        scaled.factorProperty().set(textPerCent() / 100.0);
        OpenRepair repair = open;
        if (repair != null) {
            repair.window().commands().symbols(symbols());
        }
    }

    /** The size of text that was chosen; where none was, a wide window begins with a larger one. */
    private int textPerCent() {
        int chosen = preferences().textPerCent();
        if (chosen != Preferences.TEXT_AS_THE_WINDOW) {
            return chosen;
        }
        boolean wide = stage.getScene() != null && stage.getScene().getWidth() >= WIDE;
        return wide ? WIDE_PER_CENT : Preferences.LEAST_TEXT_PER_CENT;
    }

    /** The size of text changes on every page, and whatever lies over the window. */
    private void sized(KeyEvent event) {
        Command.of(event, preferences().singleLetters())
                .filter(Command::sizesText)
                .ifPresent(command -> {
                    take(command);
                    event.consume();
                });
    }

    private void dragged(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
            event.consume();
        }
    }

    private void dropped(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            open(event.getDragboard().getFiles().get(0).toPath());
            event.setDropCompleted(true);
            event.consume();
        }
    }
}
