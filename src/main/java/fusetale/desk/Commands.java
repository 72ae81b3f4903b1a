package fusetale.desk;

import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.TestPoint;
import fusetale.desk.help.WordView;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.DrawnBoard;
import fusetale.desk.state.Sheet;
import fusetale.desk.state.Shown;
import fusetale.desk.tags.TagFigures;
import fusetale.desk.waves.WaveModel;
import fusetale.explore.Outcome;
import fusetale.explore.Question;
import fusetale.explore.Words;
import fusetale.fault.Catalogue;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.Marks;
import fusetale.report.drawing.SymbolStyle;
import fusetale.sentence.Measured;
import fusetale.sentence.MeasuredParser;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/** What each command does in the window. */
final class Commands {
    private static final Words WORDS = Words.of(Commands.class);
    private static final double SAFE_LAMP_WATTS = 100;

    private final Window window;
    private final DeskModel model;
    private final Sheet sheet;
    private final Desk desk;
    private final Explaining explaining;
    private final Turned turned;
    private boolean swallow;

    Commands(Window window, Sheet sheet, Desk desk) {
        this.window = window;
        this.model = window.model();
        this.sheet = sheet;
        this.desk = desk;
        this.explaining = new Explaining(window);
        this.turned = new Turned(window);
        sheet.drawnProperty().addListener((property, before, now) -> now.ifPresent(this::drawn));
        sheet.markedProperty().addListener((property, before, now) -> marked(now));
    }

    /** A key went down somewhere in the window. */
    void pressed(KeyEvent event) {
        swallow = false;
        if (event.getCode() == KeyCode.ENTER && window.getScene().getFocusOwner() instanceof ButtonBase button) {
            button.fire();
            event.consume();
            return;
        }
        boolean typing = field().isPresent();
        Optional<Command> command = Command.of(event, desk.preferences().singleLetters());
        if (!typing && command.filter(c -> c == Command.KEYS).isEmpty() && beginsReading(event)) {
            // a figure begins a reading: it is typed into the line; but of what is seen it chooses one
            if (!window.match().answering()) {
                window.match().begin();
            }
            return;
        }
        if (command.isEmpty()
                || (typing && !event.isShortcutDown() && !event.isAltDown())
                || (typing && ofTheField(event, command.get()))
                || (event.isAltDown() && desk.preferences().singleLetters())) {
            return;
        }
        if (command.get() == Command.KEYS) {
            if (overlaid(WordView.class) || window.overlay().showing().isEmpty()) {
                explain();
                swallow = true;
                event.consume();
            }
            return;
        }
        if (window.overlay().showing().isPresent() && command.get() != Command.STOP) {
            return;
        }
        take(command.get());
        // a letter that moves the keyboard into a field would also be typed there
        swallow = true;
        event.consume();
    }

    /** Whether a key is the first of a reading: most of them are no command, so this is asked before the table of commands. */
    private boolean beginsReading(KeyEvent event) {
        return window.matching()
                && window.overlay().showing().isEmpty()
                && !event.isShortcutDown()
                && !event.isAltDown()
                && MeterKeys.begins(event);
    }

    /** What has the keyboard, where that is something to type into. */
    private Optional<TextInputControl> field() {
        return window.getScene().getFocusOwner() instanceof TextInputControl field
                ? Optional.of(field)
                : Optional.empty();
    }

    /** What a field does itself: copying, and taking back what is typed in it. */
    private boolean ofTheField(KeyEvent event, Command command) {
        boolean typedBack = event.isShortcutDown() && (command == Command.UNDO || command == Command.REDO);
        return command == Command.COPY
                || (typedBack && field().filter(f -> !f.getText().isEmpty()).isPresent());
    }

    /** Explains the word under the pointer or the keyboard; where there is none, or one is explained already, turns to all of them. */
    void explain() {
        if (!explaining.explain()) {
            take(Command.KEYS);
        }
    }

    private boolean overlaid(Class<? extends Region> kind) {
        return window.overlay().showing().filter(kind::isInstance).isPresent();
    }

    /** What a key types. */
    void typed(KeyEvent event) {
        if (swallow) {
            event.consume();
        }
        swallow = false;
    }

    /** Does what a command says. */
    void take(Command command) {
        if (window.matching() && matched(command)) {
            return;
        }
        switch (command) {
            case PLACE_READ -> toRead();
            case PLACE_MATCH, NEXT_PLACE -> window.place(true);
            case WHAT_NEXT -> {
                window.place(true);
                window.match().next();
            }
            case SEEN -> {
                window.place(true);
                window.match().see();
            }
            case SUPPOSE -> window.sentence().edit("");
            case PUT_BACK_ALL -> say("put back");
            case OHMS -> say("ohms");
            case DIODE_TEST -> say("diode test");
            case DC_VOLTS -> say("dc volts");
            case AC_VOLTS -> say("ac volts");
            case METER -> chooseMeter();
            case POWER -> power();
            case LEADS -> window.sentence().edit(WORDS.say("leads.begun") + " ");
            case SWAP_LEADS -> say("swap leads");
            case READING -> read();
            case CANNOT_REACH -> cannotReach();
            case WAVES -> turned.waves(null);
            case BARS -> turned.bars();
            case AFTERMATH -> turned.aftermath();
            case DRAWING_ONLY -> drawingOnly();
            case FIT -> window.board().drawing().fit();
            case FOLD -> fold();
            case ZOOM_IN -> window.board().drawing().zoom(true);
            case ZOOM_OUT -> window.board().drawing().zoom(false);
            case FIND -> find();
            case UNDO -> model.undo();
            case REDO -> model.redo();
            case AGAIN -> model.askAgain();
            case STOP -> stop();
            default -> desk.take(command);
        }
    }

    /** What a command does where one says what was read; gives whether it does anything there. */
    private boolean matched(Command command) {
        switch (command) {
            case PLACE_MATCH, READING -> window.match().begin();
            case WHAT_NEXT -> window.match().next();
            case SEEN -> window.match().seen();
            case CANNOT_REACH -> window.matches().cannotReach();
            case AGAIN -> {
                if (window.matches().workProperty().get().stopped()) {
                    window.matches().ask();
                } else {
                    window.matches().another();
                }
            }
            case STOP -> {
                if (!window.overlay().close()) {
                    window.match().stop();
                }
            }
            case NEXT_PLACE -> toRead();
            default -> {
                if (!command.everywhere()) {
                    toRead();
                }
                return false;
            }
        }
        return true;
    }

    private void toRead() {
        window.place(false);
        window.sentence().begin();
    }

    /** Lays everything that was found over the window; what is chosen is changed in the line. */
    void chooseFound() {
        List<ChoiceList.Choice> choices = new ArrayList<>();
        List<String> pieces = window.match().pieces();
        for (int k = 0; k < pieces.size(); k++) {
            int index = k;
            choices.add(new ChoiceList.Choice(
                    pieces.get(k),
                    false,
                    () -> javafx.application.Platform.runLater(
                            () -> window.match().change(index))));
        }
        choose(WORDS.say("found"), choices);
    }

    /** Looks at what is newly supposed. */
    void lookAtSupposed(Sentence before, Sentence now) {
        now.supposition().faults().stream()
                .filter(f -> !before.supposition().faults().contains(f))
                .reduce((one, two) -> two)
                .ifPresent(f -> window.board().drawing().lookAtPart(f.part()));
    }

    /** Says a line of the sentence, and tells what is wrong with it where it is not understood. */
    void say(String line) {
        try {
            model.type(line);
        } catch (SentenceException unclear) {
            window.notice(String.valueOf(unclear.getMessage()));
        }
    }

    private void stop() {
        if (window.overlay().close()) {
            return;
        }
        if (window.sentence().editing()) {
            window.sentence().leave();
        } else if (turned.away()) {
            turned.back();
        } else {
            model.stop();
        }
    }

    /**
     * Plugs in or out. While a danger stands, and before it is known whether one does, plugging in is offered with a lamp in series
     * only; both are said in one sentence, so that no step back leads to the power without the lamp.
     */
    private void power() {
        Sentence now = model.state().sentence();
        boolean on = now.arrangement().powerOn();
        Optional<Outcome> powered = otherwise(now);
        boolean mayBurn = !now.supposition().isNothing()
                && powered.map(Outcome::doNotPowerUp).orElse(true);
        boolean lamp = !on && mayBurn && now.arrangement().seriesLampWatts() == null;
        try {
            Sentence next = model.sentences().apply(now, on ? "power off" : "power on");
            model.change(lamp ? model.sentences().apply(next, "lamp " + (int) SAFE_LAMP_WATTS + " W") : next);
            if (lamp && powered.isEmpty()) {
                window.notice(WORDS.say("power.lamp"));
            }
        } catch (SentenceException unclear) {
            window.notice(String.valueOf(unclear.getMessage()));
        }
    }

    /** What the bench shows with the plug the other way; empty where that is not known yet. */
    private Optional<Outcome> otherwise(Sentence now) {
        return model.otherPowerProperty()
                .get()
                .filter(o -> o.answersWithOtherPower(model.board(), now))
                .map(Shown::outcome);
    }

    /** Lays a short list over the window. */
    void choose(String heading, List<ChoiceList.Choice> choices) {
        ChoiceList list = new ChoiceList(heading, choices, window.overlay()::close);
        window.overlay()
                .open(
                        list,
                        Overlay.Side.MIDDLE,
                        window.matching() ? window.match().below() : window.consequence());
        list.begin();
    }

    private void chooseMeter() {
        Sentence now = model.state().sentence();
        List<ChoiceList.Choice> choices = new ArrayList<>();
        for (MeterFunction function : MeterFunction.values()) {
            if (now.setting().meter().has(function) && function != MeterFunction.DC_AMPS) {
                choices.add(new ChoiceList.Choice(
                        function.words(), now.setting().function() == function, () -> say(function.words())));
            }
        }
        for (Meter meter : Meter.builtIn()) {
            choices.add(new ChoiceList.Choice(
                    WORDS.say("meter", meter.name()),
                    meter.name().equals(now.setting().meter().name()),
                    () -> say("meter " + meter.name())));
        }
        choices.add(new ChoiceList.Choice(WORDS.say("leads"), false, () -> take(Command.LEADS)));
        choose(WORDS.say("meter.heading"), choices);
    }

    /** Opens the line for a reading; point and function of the focused tag are filled in. */
    void read() {
        Optional<TagFigures> tag = window.focusedTag();
        Check focused = tag.map(TagFigures::check).orElse(null);
        MeasuredParser parser = new MeasuredParser(model.board());
        MeterFunction function = model.state().sentence().setting().function();
        String prompt = tag.map(t -> WORDS.say("reading.at", t.name(), function.words()))
                .orElseGet(() -> WORDS.say("reading"));
        TypedLine line = new TypedLine(
                prompt,
                typed -> heard(parser, typed, focused, function),
                typed -> take(parser, typed, focused, function),
                window.overlay()::close);
        window.overlay().open(line, Overlay.Side.BELOW, window.consequence());
        line.begin();
    }

    /** Takes a whole typed reading down; gives whether it was understood. */
    boolean takeReading(String typed) {
        return take(
                new MeasuredParser(model.board()),
                typed,
                null,
                model.state().sentence().setting().function());
    }

    private static TypedLine.Heard heard(
            MeasuredParser parser, String typed, @Nullable Check focused, MeterFunction function) {
        if (typed.isBlank()) {
            return new TypedLine.Heard(WORDS.say("reading.hint"), List.of());
        }
        try {
            return new TypedLine.Heard(parser.parse(typed, focused, function).text(), List.of());
        } catch (SentenceException unclear) {
            return new TypedLine.Heard(String.valueOf(unclear.getMessage()), List.of());
        }
    }

    /** Takes a reading down and walks on to the next tag that has none. */
    private boolean take(MeasuredParser parser, String typed, @Nullable Check focused, MeterFunction function) {
        try {
            Measured measured = parser.parse(typed, focused, function);
            model.take(measured);
            walkOn(measured.check());
            return true;
        } catch (SentenceException unclear) {
            return false;
        }
    }

    private void walkOn(Check from) {
        List<Check> tags = model.tags();
        int at = tags.indexOf(from);
        for (int k = 1; k < tags.size(); k++) {
            Check next = tags.get((at + k) % tags.size());
            if (!model.state().measured().containsKey(next)
                    && !model.state().outOfReach().contains(next.from())) {
                javafx.application.Platform.runLater(() -> window.board().cord().focus(next));
                return;
            }
        }
    }

    private void cannotReach() {
        window.focusedTag().ifPresent(tag -> {
            String point = tag.check().from();
            model.reach(point, model.state().outOfReach().contains(point));
            window.board().cord().focus(tag.check());
        });
    }

    private Optional<Outcome> outcome() {
        return model.shownProperty().get().map(Shown::outcome);
    }

    /** Turns to the large waveforms, at one of the small ones. */
    void waves(WaveModel chosen) {
        turned.waves(chosen);
    }

    private void drawingOnly() {
        window.drawingOnly();
    }

    /** Folds a section of the drawing, or unfolds it. */
    private void fold() {
        List<ChoiceList.Choice> choices = new ArrayList<>();
        for (String heading : window.board().drawing().sections()) {
            choices.add(new ChoiceList.Choice(
                    heading,
                    window.board().drawing().folded(heading),
                    () -> window.board().drawing().fold(heading)));
        }
        if (!choices.isEmpty()) {
            choose(WORDS.say("fold"), choices);
        }
    }

    private void find() {
        Circuit board = model.board();
        List<String> names = new ArrayList<>();
        board.points().stream().map(TestPoint::name).forEach(names::add);
        names.addAll(Catalogue.designators(board));
        names.addAll(window.board().drawing().sections());
        TypedLine line = new TypedLine(
                WORDS.say("find"),
                typed -> new TypedLine.Heard(
                        typed.isBlank() ? WORDS.say("find.hint") : WORDS.say("find.near"), near(names, typed)),
                typed -> {
                    List<String> found = near(names, typed);
                    if (found.isEmpty()) {
                        return false;
                    }
                    javafx.application.Platform.runLater(() -> reveal(found.get(0)));
                    return true;
                },
                window.overlay()::close);
        window.overlay().open(line, Overlay.Side.BELOW, window.consequence());
        line.begin();
    }

    private static List<String> near(List<String> names, String typed) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        if (wanted.isEmpty()) {
            return List.of();
        }
        List<String> found = new ArrayList<>();
        names.stream().filter(n -> n.toLowerCase(Locale.ROOT).equals(wanted)).forEach(found::add);
        names.stream()
                .filter(n -> n.toLowerCase(Locale.ROOT).contains(wanted) && !found.contains(n))
                .limit(12)
                .forEach(found::add);
        return found;
    }

    private void reveal(String name) {
        if (window.board().drawing().sections().contains(name)) {
            window.board().drawing().lookAtSection(name);
            return;
        }
        Optional<Check> tag =
                model.tags().stream().filter(c -> c.from().equals(name)).findFirst();
        if (tag.isPresent()) {
            window.board().drawing().focusNearest(name);
            window.board().cord().focus(tag.get());
        } else {
            window.board().drawing().focus(name);
        }
    }

    /** Draws the board anew where it is another. */
    void drawing() {
        sheet.draw(model.board(), desk.symbols());
    }

    private void drawn(DrawnBoard now) {
        window.board()
                .drawing()
                .show(now.plan(), part -> sheet.markedProperty().get().words(part.name()));
        window.drawn();
        marks();
    }

    /** Whether the drawing and its marks are ready. */
    boolean drawn() {
        return sheet.rests();
    }

    private void marked(Sheet.Marked now) {
        window.board().drawing().mark(now.marks());
        window.board().drawing().say(part -> now.words(part.name()));
    }

    /** Where a part stands and what is marked on it, in words. */
    String place(String part) {
        return sheet.markedProperty().get().words(part);
    }

    /** Marks what is supposed, and what follows once that is worked out. */
    void marks() {
        Optional<Outcome> fresh = model.freshness() == DeskModel.Freshness.FRESH ? outcome() : Optional.empty();
        Circuit board = model.board();
        Sentence asked = model.asked();
        sheet.mark(
                board,
                drawing -> fresh.map(o -> Marks.of(drawing, o))
                        .orElseGet(() -> Marks.of(
                                drawing,
                                new Question(
                                        board,
                                        asked.supposition(),
                                        asked.arrangement(),
                                        asked.setting().meter(),
                                        List.of(),
                                        Question.Options.USUAL))));
    }

    /** Draws with these symbols from now on. */
    void symbols(SymbolStyle style) {
        sheet.draw(model.board(), style);
    }

    /** The plan of a board, drawn anew where it is not the one that is shown. */
    DrawingPlan plan(Circuit board) {
        return sheet.drawnProperty()
                .get()
                .filter(d -> d.shows(board, desk.symbols()))
                .map(DrawnBoard::plan)
                .orElseGet(() -> DrawingPlan.of(board, desk.symbols()));
    }
}
