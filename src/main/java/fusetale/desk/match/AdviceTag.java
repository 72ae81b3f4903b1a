package fusetale.desk.match;

import fusetale.circuit.Circuit;
import fusetale.desk.state.Sights;
import fusetale.explore.Words;
import fusetale.match.Advice;
import fusetale.match.Ask;
import fusetale.match.NextReadings;
import fusetale.match.Repair;
import java.util.List;
import java.util.Optional;
import javafx.geometry.HPos;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;

/** The tag at the right: what to measure next, how, and what each outcome would mean. */
final class AdviceTag extends StackPane {
    private static final Words WORDS = Words.of(AdviceTag.class);
    private static final double CUT = 26;
    private static final double PAD = 22;

    private final MatchModel model;
    private final VBox words = new VBox(7);
    private final ScrollPane scroll = new ScrollPane(words);
    private final Button take = new Button(WORDS.say("take"));
    private final Button another = new Button(WORDS.say("another"));
    private final Button cannot = new Button(WORDS.say("cannot-reach"));
    private final FlowPane buttons = new FlowPane(6, 8, take, another, cannot);
    private final VBox all = new VBox(10, scroll, buttons);
    private final Circle hole = new Circle(7);
    private Runnable taken = () -> {};

    AdviceTag(MatchModel model) {
        this.model = model;
        getStyleClass().add("advice-tag");
        hole.getStyleClass().add("advice-hole");
        StackPane.setAlignment(hole, Pos.TOP_CENTER);
        StackPane.setMargin(hole, new Insets(11, 0, 0, 0));
        take.getStyleClass().add("first");
        take.setOnAction(e -> taken.run());
        another.setOnAction(e -> model.another());
        cannot.setOnAction(e -> model.cannotReach());
        List.of(take, another, cannot).forEach(b -> b.setMinWidth(Region.USE_PREF_SIZE));
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setAccessibleText(WORDS.say("next"));
        words.setPadding(new Insets(0, 4, 0, 0));
        VBox.setVgrow(scroll, Priority.ALWAYS);
        buttons.setMinHeight(Region.USE_PREF_SIZE);
        all.setPadding(new Insets(30, PAD, 18, PAD));
        buttons.getStyleClass().add("advice-buttons");
        getChildren().addAll(all, hole);
        setScaleShape(false);
        setCenterShape(false);
        widthProperty().addListener(c -> cutCorners());
        heightProperty().addListener(c -> cutCorners());
        model.adviceProperty().addListener(c -> show());
        model.standingProperty().addListener(c -> show());
        model.workProperty().addListener(c -> show());
        show();
    }

    /** Told when the reading is to be taken. */
    void onTaken(Runnable listener) {
        taken = listener;
    }

    /** Puts the keyboard on its first button. */
    void begin() {
        (take.isVisible() ? take : another).requestFocus();
    }

    private void cutCorners() {
        double w = getWidth();
        double h = getHeight();
        setShape(new Polygon(CUT, 0, w - CUT, 0, w, CUT, w, h, 0, h, 0, CUT));
    }

    private void show() {
        words.getChildren().clear();
        Optional<Advice> advice = model.adviceProperty().get();
        Circuit board = model.desk().board();
        Label heading = cell(WORDS.say("next"), "advice-heading");
        FlowPane top = new FlowPane(12, 2, heading);
        top.setRowValignment(VPos.BASELINE);
        words.getChildren().add(top);
        List.of(take, another, cannot).forEach(b -> {
            b.setVisible(advice.isPresent());
            b.setManaged(advice.isPresent());
        });
        if (advice.isEmpty()) {
            without(board);
            return;
        }
        top.getChildren().add(cell(AdviceWords.effort(advice.get()), "advice-soft"));
        label(AdviceWords.title(board, advice.get().ask()), "advice-title");
        if (!advice.get().deeds().isEmpty()) {
            label(AdviceWords.deeds(advice.get()), "advice-deeds");
        }
        if (advice.get().ask() instanceof Ask.Metered metered) {
            words.getChildren().add(leads(metered));
        }
        advice.get().cautions().forEach(c -> label(c, "advice-caution"));
        rule();
        if (advice.get().ask() instanceof Ask.Noticed noticed
                && !model.sights().choices(noticed).isEmpty()) {
            choices(noticed);
            rule();
        }
        if (!advice.get().meanings().isEmpty()) {
            words.getChildren().add(meanings(advice.get()));
        }
        inOneGo(advice.get());
    }

    /** What may be done with the bench as it is set then anyway. */
    private void inOneGo(Advice first) {
        List<Advice> more = model.inOneGo();
        if (more.isEmpty()) {
            return;
        }
        rule();
        label(AdviceWords.meanwhile(model.desk().foundReader(), first, more), "advice-next");
        more.stream()
                .flatMap(a -> a.cautions().stream())
                .distinct()
                .filter(c -> !first.cautions().contains(c))
                .forEach(c -> label(c, "advice-caution"));
    }

    /** Nothing is advised: being worked out, or nothing more to learn. */
    private void without(Circuit board) {
        Optional<NextReadings> next =
                model.standingProperty().get().map(Standing::next).filter(n -> model.fresh());
        if (next.isEmpty()) {
            label(WORDS.say(model.workProperty().get().stopped() ? "stopped" : "wait"), "advice-deeds");
            return;
        }
        label(WORDS.say("enough"), "advice-title");
        label(WORDS.say("enough." + next.get().verdict()), "advice-deeds");
        Advice confirm = next.get().confirm();
        if (confirm != null) {
            rule();
            label(WORDS.say("confirm"), "advice-soft");
            label(AdviceWords.title(board, confirm.ask()), "advice-confirm");
            if (!confirm.deeds().isEmpty()) {
                label(AdviceWords.deeds(confirm), "advice-deeds");
            }
            if (confirm.ask() instanceof Ask.Metered metered) {
                words.getChildren().add(leads(metered));
            }
            confirm.cautions().forEach(c -> label(c, "advice-caution"));
            if (!confirm.meanings().isEmpty()) {
                words.getChildren().add(meanings(confirm));
            }
        }
    }

    private void label(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        words.getChildren().add(label);
    }

    private void rule() {
        Region rule = new Region();
        rule.getStyleClass().add("advice-rule");
        rule.setMinHeight(9);
        words.getChildren().add(rule);
    }

    private static Region leads(Ask.Metered metered) {
        Circle red = new Circle(7);
        red.getStyleClass().add("lead-red");
        Circle dot = new Circle(2.5);
        dot.getStyleClass().add("lead-dot");
        Circle black = new Circle(8);
        black.getStyleClass().add("lead-black");
        HBox one =
                lead(new StackPane(red, dot), WORDS.say("red"), metered.check().from());
        HBox two = lead(black, WORDS.say("black"), metered.check().to());
        FlowPane row = new FlowPane(26, 4, one, two);
        row.setPadding(new Insets(2, 0, 2, 0));
        return row;
    }

    private static HBox lead(javafx.scene.Node sign, String which, String point) {
        Label name = new Label(which);
        name.getStyleClass().add("advice-soft");
        Label at = new Label(point);
        at.getStyleClass().add("advice-name");
        HBox lead = new HBox(9, sign, name, at);
        lead.setAlignment(Pos.CENTER_LEFT);
        lead.setMinWidth(Region.USE_PREF_SIZE);
        return lead;
    }

    /** What may be seen, with the number that says it on a number pad. */
    private void choices(Ask.Noticed noticed) {
        FlowPane row = new FlowPane(8, 8);
        int number = 1;
        for (Sights.Choice choice : model.sights().choices(noticed)) {
            Button button = new Button(WORDS.say("choice", number, choice.words()));
            button.getStyleClass().add("advice-choice");
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setOnAction(e -> model.see(noticed, Optional.of(choice.shown())));
            row.getChildren().add(button);
            number++;
        }
        words.getChildren().add(row);
    }

    private boolean done(Repair repair) {
        return model.standingProperty().get().map(s -> s.done(repair)).orElse(false);
    }

    private Region meanings(Advice advice) {
        GridPane grid = new GridPane();
        grid.setHgap(14);
        grid.setVgap(6);
        ColumnConstraints shows = new ColumnConstraints();
        shows.setMinWidth(112);
        shows.setMaxWidth(150);
        ColumnConstraints then = new ColumnConstraints();
        then.setHgrow(Priority.ALWAYS);
        ColumnConstraints share = new ColumnConstraints();
        share.setMinWidth(Region.USE_PREF_SIZE);
        share.setHalignment(HPos.RIGHT);
        grid.getColumnConstraints().addAll(shows, then, share);
        grid.add(cell(WORDS.say("if"), "advice-soft"), 0, 0);
        grid.add(cell(WORDS.say("then"), "advice-soft"), 1, 0);
        grid.add(cell(WORDS.say("of-hundred"), "advice-soft"), 2, 0);
        int row = 1;
        for (Advice.Meaning meaning : advice.meanings()) {
            Label reads = cell(meaning.shows(), "advice-reads");
            Label follows = cell(AdviceWords.then(meaning, this::done), "advice-then");
            Label of = cell(AdviceWords.share(meaning), "advice-share");
            of.setMinWidth(Region.USE_PREF_SIZE);
            for (Label each : List.of(reads, follows, of)) {
                GridPane.setValignment(each, VPos.TOP);
            }
            grid.addRow(row, reads, follows, of);
            row++;
        }
        return grid;
    }

    private static Label cell(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
