package fusetale.desk.match;

import fusetale.bench.Observation.Aspect;
import fusetale.circuit.Part;
import fusetale.desk.kit.Reveal;
import fusetale.desk.state.Sights;
import fusetale.explore.Words;
import fusetale.match.Ask;
import fusetale.match.Shown;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

/**
 * What is seen without a meter, one row a thing, grouped by when it is seen; "don't know" unless somebody says otherwise. A group
 * can be said to do as it should at once.
 */
final class IntakeView extends VBox {
    private static final Words WORDS = Words.of(IntakeView.class);

    private final MatchModel model;
    private final VBox list = new VBox();
    private final List<Node> firsts = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final Map<Button, List<Ask.Noticed>> groups = new LinkedHashMap<>();
    private final Button done = new Button(WORDS.say("intake.done"));
    private final Button open = new Button(WORDS.say("intake.open"));

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
        open.setMinWidth(Region.USE_PREF_SIZE);
        HBox top = new HBox(10, told, open, done);
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

    /** Told when a file of readings is to be opened instead. */
    void onOpened(Runnable listener) {
        open.setOnAction(e -> listener.run());
    }

    void onDone(Runnable listener) {
        done.setOnAction(e -> listener.run());
    }

    /** Puts the keyboard on the first row. */
    void begin() {
        rows.stream().findFirst().ifPresent(r -> r.buttons().get(0).requestFocus());
    }

    /** Shows every thing there is to be noticed, and what was said of it. */
    void show() {
        list.getChildren().clear();
        firsts.clear();
        rows.clear();
        groups.clear();
        Sights sights = model.sights();
        Map<Sights.Occasion, List<Ask.Noticed>> all = new EnumMap<>(Sights.Occasion.class);
        sights.intake()
                .forEach(ask -> all.computeIfAbsent(sights.occasion(ask), o -> new ArrayList<>())
                        .add(ask));
        all.forEach((occasion, asks) -> {
            list.getChildren().add(heading(occasion, asks));
            asks.forEach(ask -> list.getChildren().add(row(ask, sights.choices(ask))));
        });
        refresh();
    }

    private Region heading(Sights.Occasion occasion, List<Ask.Noticed> asks) {
        Label name = new Label(WORDS.say("intake.group." + occasion));
        name.getStyleClass().add("intake-group");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label when = new Label(WORDS.say("intake.when." + occasion));
        when.getStyleClass().add("advice-soft");
        when.setWrapText(true);
        when.setMinHeight(Region.USE_PREF_SIZE);
        VBox told = new VBox(name, when);
        HBox.setHgrow(told, Priority.ALWAYS);
        HBox row = new HBox(12, told);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPadding(new Insets(10, 6, 6, 0));
        row.getStyleClass().add("intake-head");
        if (asks.stream().anyMatch(a -> model.sights().sound(a).isPresent())) {
            Button all = new Button();
            all.setMinWidth(Region.USE_PREF_SIZE);
            all.getStyleClass().add("intake-all");
            all.setOnAction(e -> model.seeSound(asks));
            reveal(all);
            int index = firsts.size();
            firsts.add(all);
            row.addEventFilter(KeyEvent.KEY_PRESSED, e -> walk(e, index));
            groups.put(all, asks);
            row.getChildren().add(all);
        }
        return row;
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
        groups.forEach((button, asks) -> {
            List<Ask.Noticed> plain = asks.stream()
                    .filter(a -> model.sights().sound(a).isPresent())
                    .toList();
            long said = plain.stream().filter(a -> model.seen(a).isPresent()).count();
            String words = WORDS.say(said == 0 ? "intake.all" : "intake.rest");
            button.setText(words);
            button.setAccessibleText(WORDS.say("intake.group." + model.sights().occasion(asks.get(0))) + ": " + words);
            // hidden it would take the keyboard along
            button.setDisable(said == plain.size());
        });
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
        both.setPadding(new Insets(5, 6, 5, 0));
        both.getStyleClass().add("intake-row");
        int index = firsts.size();
        firsts.add(buttons.get(0));
        both.addEventFilter(KeyEvent.KEY_PRESSED, e -> key(e, index, buttons));
        return both;
    }

    /** Up and down, over the buttons of groups too. */
    private boolean walk(KeyEvent event, int index) {
        int by = switch (event.getCode()) {
            case DOWN -> 1;
            case UP -> -1;
            default -> 0;
        };
        int to = index + by;
        while (by != 0 && to >= 0 && to < firsts.size() && firsts.get(to).isDisabled()) {
            to += by;
        }
        if (by == 0 || to < 0 || to >= firsts.size()) {
            return false;
        }
        firsts.get(to).requestFocus();
        event.consume();
        return true;
    }

    private void key(KeyEvent event, int index, List<ToggleButton> buttons) {
        if (walk(event, index)) {
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
        reveal(button);
        return button;
    }

    private static void reveal(Node button) {
        button.focusedProperty().addListener((of, was, is) -> {
            if (is) {
                Reveal.whole(button);
            }
        });
    }

    private String note(Ask.Noticed ask) {
        String said = WORDS.say("intake." + ask.aspect());
        if (ask.aspect() == Aspect.RATING) {
            // where the fuse sits stands with the fuse
            return said;
        }
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
