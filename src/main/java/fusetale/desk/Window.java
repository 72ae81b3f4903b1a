package fusetale.desk;

import fusetale.bench.Check;
import fusetale.circuit.MeterFunction;
import fusetale.desk.board.BoardView;
import fusetale.desk.card.CardView;
import fusetale.desk.card.PartCard;
import fusetale.desk.consequence.Consequence;
import fusetale.desk.consequence.ConsequenceLine;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Scrolling;
import fusetale.desk.line.AmountView;
import fusetale.desk.line.LineModel;
import fusetale.desk.line.SentenceView;
import fusetale.desk.match.MatchModel;
import fusetale.desk.match.MatchView;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.DeskModel.Freshness;
import fusetale.desk.state.Sheet;
import fusetale.desk.state.Working;
import fusetale.desk.strip.HowFarView;
import fusetale.desk.strip.StripRows;
import fusetale.desk.tags.TagFigures;
import fusetale.desk.tags.TagRow;
import fusetale.desk.waves.WaveRow;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import fusetale.sentence.Piece;
import fusetale.store.Saved;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** The one window: what it shows is settled by the model, what it does by {@link Command}. */
final class Window extends StackPane {
    private static final Words WORDS = Words.of(Window.class);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final double MARGIN = 20;
    private static final double FIGURES_HEIGHT = 172;
    /** Work shorter than this is not worth a sign. */
    private static final Duration PATIENCE = Duration.millis(100);

    private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

    private final DeskModel model;
    private final SentenceView sentence;
    private final ConsequenceLine consequence = new ConsequenceLine();
    private final BoardView board = new BoardView();
    private final HowFarView strip = new HowFarView();
    private final WaveRow waves = new WaveRow();
    private final Figures figures = new Figures(strip, waves);
    private final BorderPane middle = new BorderPane();
    private final ScrollPane scroll = Scrolling.around(middle);
    private final Label machine = new Label();
    private final Label status = new Label();
    private final Label kept = new Label();
    private final Label matchStatus = new Label();
    private final Label matchKept = new Label();
    private String notice = "";
    private boolean beginning;
    private final Region progress = new Region();
    private final Button sections = new Button();
    private final StackPane boardAndChips;
    private final Overlay overlay = new Overlay();
    private final PauseTransition patience = new PauseTransition(PATIENCE);
    private final Commands commands;
    private final MatchModel matching;
    private final MatchView match;
    private final Button placeRead = new Button(WORDS.say("place.read"));
    private final Button placeMatch = new Button(WORDS.say("place.match"));
    private final VBox all = new VBox();
    private final List<Region> reading;
    private final List<Region> matched;

    Window(DeskModel model, Sheet sheet, MatchModel matching, Desk desk) {
        this.model = model;
        this.matching = matching;
        this.match = new MatchView(matching);
        this.sentence = new SentenceView(model);
        getStyleClass().add("desk");
        getStylesheets().add(Window.class.getResource("desk.css").toExternalForm());
        Region row = questionRow();
        reading = List.of(row, sentenceRow(), progressRow(), consequenceRow(), scroll, keyStrip());
        matched = List.of(row, match, matchStrip());
        VBox.setVgrow(scroll, Priority.ALWAYS);
        VBox.setVgrow(match, Priority.ALWAYS);
        boardAndChips = new StackPane(board, sections);
        StackPane.setAlignment(sections, Pos.BOTTOM_LEFT);
        StackPane.setMargin(sections, new Insets(0, 0, 10, 12));
        sections.getStyleClass().add("section-chip");
        sections.setOnAction(e -> chooseSection());
        board.drawing().onLooked(this::nameSection);
        middle.setCenter(boardAndChips);
        BorderPane.setMargin(boardAndChips, new Insets(8, MARGIN, 0, MARGIN));
        strip.setMinHeight(FIGURES_HEIGHT);
        waves.setMinHeight(FIGURES_HEIGHT);
        middle.setBottom(figures);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setAccessibleText(WORDS.say("place.read"));
        sentence.suggestions().setManaged(false);
        getChildren().addAll(all, overlay, sentence.suggestions());
        this.commands = new Commands(this, sheet, desk);
        addEventFilter(KeyEvent.KEY_PRESSED, commands::pressed);
        addEventFilter(KeyEvent.KEY_TYPED, commands::typed);
        sentence.onChosen(this::open);
        board.drawing().onChosen(this::openCard);
        board.drawing().onUpward(part -> board.cord().focus(nearestTag(part)));
        board.cord().onChosen(tag -> commands.read());
        match.onSupposed(s -> commands.take(Command.PLACE_READ));
        match.onChanged(() -> matchStatus.setText(matching.status()));
        match.onAll(commands::chooseFound);
        match.onOpened(() -> commands.take(Command.OPEN_READINGS));
        strip.setOnChosen(this::goTo);
        waves.setOnChosen(commands::waves);
        patience.setOnFinished(e -> showTags());
        model.shownProperty().addListener(changed -> showOutcome());
        model.otherPowerProperty().addListener(changed -> {
            showFigures();
            showConsequence();
        });
        model.glancedProperty().addListener(changed -> follow());
        model.workingProperty().addListener(changed -> showWork());
        model.sentenceProperty().addListener((property, before, now) -> {
            notice = "";
            // while a hand drags an amount only readings follow; marks take longer than a frame
            if (now.equals(model.state().sentence())) {
                commands.lookAtSupposed(before, now);
                commands.marks();
            } else if (!model.follows()) {
                showTags();
            }
        });
        model.historyProperty().addListener(changed -> showState());
        model.refusalProperty().addListener(changed -> showConsequence());
        showState();
        showWork();
        place(false);
    }

    private Region questionRow() {
        Label brand = new Label(WORDS.say("brand"));
        brand.setFont(Faces.SHOUT.at(18));
        placeRead.setOnAction(e -> commands.take(Command.PLACE_READ));
        placeMatch.setOnAction(e -> commands.take(Command.PLACE_MATCH));
        for (Button place : List.of(placeRead, placeMatch)) {
            place.getStyleClass().add("place");
            place.setMinWidth(Region.USE_PREF_SIZE);
        }
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        machine.getStyleClass().add("label-soft");
        Button open = new Button(WORDS.say("open"));
        open.setOnAction(e -> commands.take(Command.OPEN));
        HBox row = new HBox(24, brand, placeRead, placeMatch, space, machine, open);
        row.getStyleClass().add("question-row");
        row.setAlignment(Pos.CENTER_LEFT);
        row.setMinHeight(40);
        return row;
    }

    private Region sentenceRow() {
        Button putBack = new Button(WORDS.say("put-back"));
        putBack.setMinWidth(Region.USE_PREF_SIZE);
        putBack.setOnAction(e -> commands.take(Command.PUT_BACK_ALL));
        Button suppose = new Button(WORDS.say("suppose"));
        suppose.getStyleClass().add("first");
        suppose.setMinWidth(Region.USE_PREF_SIZE);
        suppose.setOnAction(e -> commands.take(Command.SUPPOSE));
        HBox.setHgrow(sentence, Priority.ALWAYS);
        HBox row = new HBox(10, sentence, putBack, suppose);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPadding(new Insets(5, MARGIN, 3, MARGIN));
        row.setMinHeight(Region.USE_PREF_SIZE);
        return row;
    }

    private Region progressRow() {
        progress.getStyleClass().add("progress");
        progress.setMinHeight(3);
        progress.setMaxHeight(3);
        progress.setVisible(false);
        HBox row = new HBox(progress);
        row.setMinHeight(3);
        row.setMaxHeight(3);
        return row;
    }

    private Region consequenceRow() {
        VBox row = new VBox(consequence);
        row.setPadding(new Insets(2, MARGIN, 4, MARGIN));
        // a danger is never cut: the board gives way
        row.setMinHeight(Region.USE_PREF_SIZE);
        return row;
    }

    private Region keyStrip() {
        status.getStyleClass().add("status");
        kept.getStyleClass().add("status");
        List<Button> hints = List.of(
                        Command.SUPPOSE,
                        Command.METER,
                        Command.READING,
                        Command.AFTERMATH,
                        Command.WAVES,
                        Command.BARS,
                        Command.DRAWING_ONLY,
                        Command.SHEET,
                        Command.EXPORT,
                        Command.KEYS)
                .stream()
                .map(this::hint)
                .toList();
        return new KeyStrip(List.of(status, kept), hints);
    }

    private Region matchStrip() {
        matchStatus.getStyleClass().add("status");
        matchStatus.setText(matching.status());
        matchKept.getStyleClass().add("status");
        matchKept.textProperty().bind(kept.textProperty());
        List<Button> hints = List.of(
                        Command.READING,
                        Command.WHAT_NEXT,
                        Command.CANNOT_REACH,
                        Command.AGAIN,
                        Command.SEEN,
                        Command.UNDO,
                        Command.OPEN_READINGS,
                        Command.SAVE_READINGS,
                        Command.PLACE_READ,
                        Command.KEYS)
                .stream()
                .map(this::hint)
                .toList();
        return new KeyStrip(List.of(matchStatus, matchKept), hints);
    }

    /** Goes to the place where one says what was read, or to that where one supposes. */
    void place(boolean toMatch) {
        all.getChildren().setAll(toMatch ? matched : reading);
        placeRead.pseudoClassStateChanged(HERE, !toMatch);
        placeMatch.pseudoClassStateChanged(HERE, toMatch);
        if (toMatch) {
            matching.show();
            match.begin();
        } else {
            matching.hide();
        }
    }

    /** Whether the place where one says what was read is shown. */
    boolean matching() {
        return all.getChildren().contains(match);
    }

    MatchView match() {
        return match;
    }

    MatchModel matches() {
        return matching;
    }

    private Button hint(Command command) {
        Label cap = new Label(command.keys());
        cap.getStyleClass().add("key-cap");
        Button hint = new Button(WORDS.say("hint." + command), cap);
        hint.getStyleClass().add("key-hint");
        hint.setMinWidth(Region.USE_PREF_SIZE);
        hint.setAccessibleText(WORDS.say("command." + command));
        hint.setOnAction(e -> commands.take(command));
        return hint;
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        Region list = sentence.suggestions();
        double top =
                sceneToLocal(sentence.localToScene(0, sentence.getHeight())).getY();
        double left = sceneToLocal(sentence.localToScene(0, 0)).getX();
        double width = Math.min(sentence.getWidth(), 900);
        list.resizeRelocate(left, top, width, Math.min(getHeight() - top - 8, list.prefHeight(width)));
    }

    /** Whether the drawing and its marks are those of what is asked. */
    boolean rests() {
        return commands.drawn();
    }

    /** The model behind this window. */
    DeskModel model() {
        return model;
    }

    SentenceView sentence() {
        return sentence;
    }

    BoardView board() {
        return board;
    }

    Overlay overlay() {
        return overlay;
    }

    ConsequenceLine consequence() {
        return consequence;
    }

    Commands commands() {
        return commands;
    }

    /** Shows something else in the middle. */
    void show(Region page) {
        middle.setCenter(page);
        middle.setBottom(null);
    }

    /** Shows the board in the middle again, and the figures below it. */
    void showBoard() {
        board.setShared(false);
        middle.setCenter(boardAndChips);
        middle.setBottom(figures);
        requestLayout();
    }

    /** Shows something below the board in place of the figures. */
    void below(Region view, String back, Runnable turnBack) {
        board.setShared(true);
        middle.setBottom(new Below(view, back, turnBack, heightProperty()));
    }

    /** Says something in the line under the sentence, until it is told otherwise or the sentence changes. */
    void notice(String text) {
        notice = text;
        showConsequence();
        if (matching()) {
            match.notice(text);
        }
    }

    /** Tells what became of the repair's file. */
    void saved(Saved saved) {
        if (saved instanceof Saved.There there) {
            kept.setText(WORDS.say("saved", TIME.format(there.time().atZone(ZoneId.systemDefault()))));
        } else if (saved instanceof Saved.Elsewhere elsewhere) {
            notice(WORDS.say("saved.elsewhere", elsewhere.file(), elsewhere.why()));
        } else if (saved instanceof Saved.Failed failed) {
            kept.setText(WORDS.say("saved.not"));
            notice(failed.why());
        }
    }

    /** Folds the figures away, or out again. */
    void drawingOnly() {
        middle.setBottom(middle.getBottom() == null ? figures : null);
    }

    /** What belongs beside the drawing: a press on each section's name shows it. */
    void showSections() {
        List<String> headings = board.drawing().sections();
        sections.setVisible(headings.size() > 1);
        nameSection();
    }

    private void nameSection() {
        sections.setText(board.drawing().shownSection().orElse(WORDS.say("whole")) + "  \u2026");
        sections.setAccessibleText(WORDS.say("sections.spoken", sections.getText()));
    }

    private void chooseSection() {
        List<ChoiceList.Choice> choices = new ArrayList<>();
        Optional<String> now = board.drawing().shownSection();
        choices.add(new ChoiceList.Choice(
                WORDS.say("whole"), now.isEmpty(), () -> board.drawing().fit()));
        for (String heading : board.drawing().sections()) {
            choices.add(new ChoiceList.Choice(
                    heading,
                    now.equals(Optional.of(heading)),
                    () -> board.drawing().lookAtSection(heading)));
        }
        commands.choose(WORDS.say("sections"), choices);
    }

    private void showState() {
        machine.setText(model.board().name());
        commands.drawing();
        commands.marks();
        showTags();
        showConsequence();
    }

    /** The board was drawn. */
    void drawn() {
        showSections();
        showTags();
        if (!beginning) {
            beginning = true;
            afterNextFrame(model::begin);
        }
    }

    private static void afterNextFrame(Runnable deed) {
        new AnimationTimer() {
            private int frames;

            @Override
            public void handle(long now) {
                frames++;
                if (frames == 2) {
                    stop();
                    deed.run();
                }
            }
        }.start();
    }

    private void showOutcome() {
        patience.stop();
        showTags();
        showFigures();
        showConsequence();
        commands.marks();
    }

    /** Tags, while a hand moves or when an answer came. */
    private void showTags() {
        board.show(TagRow.of(model));
    }

    private void showConsequence() {
        Consequence told = Consequence.of(model);
        consequence.show(notice.isEmpty() ? told : told.after(notice));
    }

    private void showFigures() {
        List<Outcome> outcomes = model.outcomes();
        if (!outcomes.isEmpty()) {
            strip.setOutcomes(outcomes);
            waves.setOutcome(outcomes.get(0));
        }
    }

    private void follow() {
        showTags();
        model.glancedProperty()
                .get()
                .ifPresent(g -> strip.setRows(
                        StripRows.of(model.board(), g.readings(), strip.rows().clampOnly())));
        // the hand came back to where it began: no answer will come that clears away its last figures
        if (model.glancedProperty().get().isEmpty() && model.freshness() == Freshness.FRESH) {
            showFigures();
        }
    }

    private void showWork() {
        Working working = model.workingProperty().get();
        if (working.busy() && model.freshness() == Freshness.WORKING) {
            patience.playFromStart();
        } else {
            patience.stop();
            showTags();
        }
        progress.setVisible(working.busy() && working.of() > 0);
        progress.setPrefWidth(working.of() > 0 ? getWidth() * working.done() / working.of() : 0);
        status.setText(status(working));
        showConsequence();
    }

    private String status(Working working) {
        if (working.busy()) {
            return switch (working.step()) {
                case HEALTHY -> WORDS.say("status.healthy", working.done(), working.of());
                case ANSWER -> WORDS.say("status.answer");
                case AFTERMATH -> WORDS.say("status.aftermath");
            };
        }
        return WORDS.say(model.freshness() == Freshness.FRESH ? "status.done" : "status.old");
    }

    /** Opens what can be done with a piece of the sentence. */
    private void open(Piece piece) {
        LineModel line = new LineModel(model);
        switch (piece.kind()) {
            case FAULT -> line.fault(piece).ifPresent(f -> openCard(f.part(), Optional.of(piece)));
            case POWER -> commands.take(Command.POWER);
            case FUNCTION, METER, RANGE -> commands.take(Command.METER);
            default ->
                commands.choose(
                        piece.text(),
                        List.of(
                                new ChoiceList.Choice(WORDS.say("piece.put-back"), false, () -> line.putBack(piece)),
                                new ChoiceList.Choice(
                                        WORDS.say("piece.change"), false, () -> sentence.edit(piece.compact()))));
        }
    }

    void openCard(String part) {
        openCard(part, Optional.empty());
    }

    private void openCard(String part, Optional<Piece> piece) {
        PartCard card = PartCard.of(
                model.board(),
                part,
                commands.place(part),
                model.state().sentence().supposition());
        LineModel line = new LineModel(model);
        Optional<Piece> amount = piece.or(() -> line.pieces().stream()
                        .filter(p ->
                                line.fault(p).map(f -> f.part().equals(part)).orElse(false))
                        .findFirst())
                .filter(p -> line.scale(p).isPresent());
        Optional<AmountView> slider = amount.map(p -> new AmountView(line, p));
        Region extra = slider.map(Region.class::cast).orElseGet(Region::new);
        CardView view = new CardView(card, extra, way -> {
            overlay.close();
            if (way.supposed()) {
                line.pieces().stream()
                        .filter(p -> line.fault(p).map(way.form()::covers).orElse(false))
                        .findFirst()
                        .ifPresent(line::putBack);
            } else {
                commands.say(way.line());
            }
        });
        view.onClosed(overlay::close);
        overlay.open(view, Overlay.Side.RIGHT, consequence);
        if (piece.isPresent() && slider.isPresent()) {
            slider.get().begin();
        } else {
            view.begin();
        }
    }

    /** Puts the keyboard on the tag of a check, turning the meter to its function first. */
    void goTo(Check check) {
        Map<MeterFunction, Command> keys = Map.of(
                MeterFunction.OHMS, Command.OHMS,
                MeterFunction.DIODE_TEST, Command.DIODE_TEST,
                MeterFunction.DC_VOLTS, Command.DC_VOLTS,
                MeterFunction.AC_VOLTS, Command.AC_VOLTS);
        Command turn = keys.get(check.function());
        if (turn != null && model.state().sentence().setting().function() != check.function()) {
            commands.take(turn);
        }
        if (!board.cord().focus(check)) {
            commands.say(check.from() + " to " + check.to());
            board.cord().focus(check);
        }
    }

    private Check nearestTag(String part) {
        return model.tags().stream()
                .min(java.util.Comparator.comparingDouble(c -> board.drawing().distance(part, c.from())))
                .orElseThrow();
    }

    /** The tag that has the keyboard. */
    Optional<TagFigures> focusedTag() {
        return board.cord().focused();
    }
}
