package fusetale.desk.match;

import fusetale.circuit.Part;
import fusetale.desk.kit.Reveal;
import fusetale.desk.state.Sights;
import fusetale.explore.Words;
import fusetale.match.Ask;
import fusetale.match.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What is seen without a meter, one row a thing; "don't know" unless somebody says otherwise. */
final class IntakeView extends VBox {
    private static final Words WORDS = Words.of(IntakeView.class);

    private final MatchModel model;
    private final VBox list = new VBox();
    private final List<Node> firsts = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final Button done = new Button(WORDS.say("intake.done"));

    /** What is asked, what may be answered, and the buttons for it, "don't know" before the others. */
    private record Row(Ask.Noticed ask, List<Sights.Choice> choices, List<ToggleButton> buttons) {}

    IntakeView(MatchModel model) {
        super(10);
        this.model = model;
        getStyleClass().add("intake");
        setPadding(new Insets(18, 20, 14, 20));
        Label heading = new Label(WORDS.say("intake"));
        heading.getStyleClass().add("advice-heading");
        Label hint = new Label(WORDS.say("intake.hint"));
        hint.getStyleClass().add("advice-soft");
        hint.setWrapText(true);
        hint.setMinHeight(Region.USE_PREF_SIZE);
        VBox told = new VBox(2, heading, hint);
        HBox.setHgrow(told, Priority.ALWAYS);
        done.setMinWidth(Region.USE_PREF_SIZE);
        HBox top = new HBox(16, told, done);
        top.setAlignment(Pos.CENTER_LEFT);
        top.setMinHeight(Region.USE_PREF_SIZE);
        ScrollPane scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setAccessibleText(WORDS.say("intake"));
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(top, scroll);
    }

    void onDone(Runnable listener) {
        done.setOnAction(e -> listener.run());
    }

    /** Puts the keyboard on the first row. */
    void begin() {
        firsts.stream().findFirst().ifPresent(Node::requestFocus);
    }

    /** Shows every thing there is to be noticed, and what was said of it. */
    void show() {
        list.getChildren().clear();
        firsts.clear();
        rows.clear();
        Sights sights = model.sights();
        for (Ask.Noticed ask : sights.intake()) {
            list.getChildren().add(row(ask, sights.choices(ask)));
        }
    }

    /** Marks what is said now, as after an undo. */
    void refresh() {
        for (Row row : rows) {
            Optional<Shown.Seen> now = model.seen(row.ask());
            row.buttons().get(0).setSelected(now.isEmpty());
            for (int k = 0; k < row.choices().size(); k++) {
                row.buttons()
                        .get(k + 1)
                        .setSelected(now.equals(Optional.of(row.choices().get(k).shown())));
            }
        }
    }

    private Region row(Ask.Noticed ask, List<Sights.Choice> choices) {
        Label name = new Label(ask.part());
        name.getStyleClass().add("advice-name");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label place = new Label(note(ask));
        place.getStyleClass().add("advice-soft");
        place.setWrapText(true);
        place.setMinHeight(Region.USE_PREF_SIZE);
        VBox told = new VBox(name, place);
        told.setPrefWidth(210);
        told.setMinWidth(210);
        told.setAlignment(Pos.CENTER_LEFT);
        ToggleGroup group = new ToggleGroup();
        FlowPane row = new FlowPane(6, 6);
        row.setAlignment(Pos.CENTER_LEFT);
        Optional<Shown.Seen> now = model.seen(ask);
        List<ToggleButton> buttons = new ArrayList<>();
        buttons.add(choice(ask, WORDS.say("intake.unknown"), Optional.empty(), group, now.isEmpty()));
        for (Sights.Choice choice : choices) {
            boolean chosen = now.equals(Optional.of(choice.shown()));
            buttons.add(choice(ask, choice.words(), Optional.of(choice.shown()), group, chosen));
        }
        row.getChildren().addAll(buttons);
        rows.add(new Row(ask, choices, buttons));
        HBox.setHgrow(row, Priority.ALWAYS);
        HBox both = new HBox(14, told, row);
        both.setPadding(new Insets(7, 6, 7, 0));
        both.getStyleClass().add("intake-row");
        int index = firsts.size();
        firsts.add(buttons.get(0));
        both.addEventFilter(KeyEvent.KEY_PRESSED, e -> key(e, index, buttons));
        return both;
    }

    private void key(KeyEvent event, int index, List<ToggleButton> buttons) {
        int to = switch (event.getCode()) {
            case DOWN -> index + 1;
            case UP -> index - 1;
            default -> -2;
        };
        if (to >= 0 && to < firsts.size()) {
            firsts.get(to).requestFocus();
            event.consume();
            return;
        }
        String text = event.getText();
        if (text.length() == 1 && Character.isDigit(text.charAt(0))) {
            int number = text.charAt(0) - '0';
            if (number < buttons.size()) {
                buttons.get(number).fire();
                event.consume();
            }
        } else if (event.getCode() == KeyCode.LEFT || event.getCode() == KeyCode.RIGHT) {
            int at = buttons.stream().map(Node::isFocused).toList().indexOf(true);
            int next = Math.max(0, Math.min(buttons.size() - 1, at + (event.getCode() == KeyCode.LEFT ? -1 : 1)));
            buttons.get(next).requestFocus();
            event.consume();
        }
    }

    private ToggleButton choice(
            Ask.Noticed ask, String words, Optional<Shown.Seen> seen, ToggleGroup group, boolean chosen) {
        ToggleButton button = new ToggleButton(words);
        button.getStyleClass().add("intake-choice");
        button.setToggleGroup(group);
        button.setSelected(chosen);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setAccessibleText(ask.part() + ", " + words);
        button.setOnAction(e -> {
            button.setSelected(true);
            model.see(ask, seen);
        });
        button.focusedProperty().addListener((of, was, is) -> {
            if (is) {
                Reveal.whole(button);
            }
        });
        return button;
    }

    private String note(Ask.Noticed ask) {
        boolean commanded = ask.arrangement().heldOn().contains(ask.part());
        boolean atRest = !commanded && model.sights().commanded(ask.part());
        String said = WORDS.say("intake." + ask.aspect() + (commanded ? ".called" : atRest ? ".rest" : ""));
        return model.desk()
                .board()
                .part(ask.part())
                .map(Part::about)
                .map(a -> a.note())
                .filter(n -> !n.isBlank())
                .map(n -> WORDS.say("intake.note", said, n.split(";", -1)[0]))
                .orElse(said);
    }
}
