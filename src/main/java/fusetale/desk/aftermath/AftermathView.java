package fusetale.desk.aftermath;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Harm;
import fusetale.desk.aftermath.StoryRow.Moment;
import fusetale.desk.kit.Reveal;
import fusetale.explore.Outcome;
import fusetale.explore.Times;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * What follows if nobody switches off: a time line of everything that happens, the orders it happens in with their shares of
 * machines, and steps through the chosen order. Left and Right step; each step tells what is supposed of the machine from then
 * on, so that the rest of the window can show it. Choosing an order goes back to switch-on.
 */
public final class AftermathView extends BorderPane {
    private static final Words WORDS = Words.of(AftermathView.class);

    /** From this width [px] on the orders stand beside the time line. */
    private static final double WIDE = 1000;

    private static final double ORDERS_WIDTH = 370;
    /** Room beside the steps for the button that goes back [px]. */
    private static final double WAY_BACK = 190;

    private final Label setting = new Label();
    private final VBox rows = new VBox(12);
    private final VBox orders = new VBox(8);
    private final Button back = new Button(WORDS.say("before"));
    private final Button on = new Button(WORDS.say("next"));
    private final Label where = new Label();
    private final HBox steps = new HBox(12, back, on, where);

    private final List<StoryLine> stories = new ArrayList<>();

    private final List<ScrollPane> scrolls = new ArrayList<>();
    private @Nullable Boolean beside;
    private @Nullable AftermathModel model;
    private @Nullable TimeLine line;
    private @Nullable StoryRow story;
    private int after;
    private Consumer<Moment> onStep = moment -> {};

    /** A view without an aftermath. */
    public AftermathView() {
        getStyleClass().add("aftermath");
        getStylesheets()
                .add(Objects.requireNonNull(AftermathView.class.getResource("/fusetale/desk/aftermath/aftermath.css"))
                        .toExternalForm());
        setPadding(new Insets(12, 20, 12, 20));
        setting.getStyleClass().add("aftermath-setting");
        setting.setWrapText(true);
        setting.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(setting, Priority.ALWAYS);
        HBox head = new HBox(20, setting);
        head.setAlignment(Pos.CENTER_LEFT);
        for (Harm.Gravity gravity : List.of(Harm.Gravity.RELIEF, Harm.Gravity.WARNING, Harm.Gravity.DAMAGE)) {
            head.getChildren().add(legend(gravity));
        }
        // above what scrolls: where the window is low, the steps stay in sight
        setTop(new VBox(steps, head));
        rows.setPadding(new Insets(4, 4, 8, 4));
        orders.setPadding(new Insets(8, 4, 8, 4));
        widthProperty().addListener(changed -> arrange());
        steps.setAlignment(Pos.CENTER_LEFT);
        back.setMinWidth(Region.USE_PREF_SIZE);
        on.setMinWidth(Region.USE_PREF_SIZE);
        on.getStyleClass().add("first");
        back.setOnAction(e -> step(after - 1));
        on.setOnAction(e -> step(after + 1));
        back.setAccessibleHelp(WORDS.say("step.keys"));
        on.setAccessibleHelp(WORDS.say("step.keys"));
        where.setWrapText(true);
        where.setAccessibleRole(AccessibleRole.TEXT);
        where.getStyleClass().add("aftermath-where");
        steps.setPadding(new Insets(0, WAY_BACK, 8, 0));
        // before the scroll pane takes arrows for itself
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        setOutcome(null);
    }

    private static Label legend(Harm.Gravity gravity) {
        Region sample = new Region();
        sample.getStyleClass().addAll("time-bar", "time-" + gravity.name().toLowerCase(Locale.ROOT));
        if (gravity == Harm.Gravity.DAMAGE) {
            sample.getStyleClass().add("hatch");
        }
        sample.setMinSize(32, 14);
        sample.setPrefSize(32, 14);
        sample.setMaxSize(32, 14);
        Label label = new Label(TimeRow.said(gravity), sample);
        label.setGraphicTextGap(8);
        label.getStyleClass().add("aftermath-legend");
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    /** Shows the aftermath of an outcome, at switch-on of its commonest story; null, or one without aftermath, shows none. */
    public void setOutcome(@Nullable Outcome outcome) {
        Aftermath aftermath = outcome == null ? null : outcome.aftermath();
        setModel(outcome == null || aftermath == null ? null : AftermathModel.of(outcome, aftermath));
    }

    /** Shows an aftermath; null shows none. Tells nobody. */
    public void setModel(@Nullable AftermathModel next) {
        model = next;
        line = null;
        story = null;
        after = 0;
        rows.getChildren().clear();
        orders.getChildren().clear();
        stories.clear();
        setting.setText(next == null ? "" : next.setting());
        if (next == null) {
            rows.getChildren().add(plain(WORDS.say("none")));
        } else if (next.rows().isEmpty()) {
            rows.getChildren()
                    .add(plain(WORDS.say("nothing", Times.of(next.settings().horizonSeconds()))));
        } else {
            TimeLine shown = new TimeLine(next);
            line = shown;
            rows.getChildren().add(shown);
            addStories(next);
        }
        beside = null;
        arrange();
        place();
    }

    /** Orders beside the time line where there is room, else below it. */
    private void arrange() {
        boolean wide = getWidth() >= WIDE && !stories.isEmpty();
        if (beside != null && beside == wide) {
            return;
        }
        beside = wide;
        setCenter(null);
        for (ScrollPane each : scrolls) {
            each.setContent(null);
        }
        scrolls.clear();
        if (wide) {
            ScrollPane left = scroll(rows);
            ScrollPane right = scroll(orders);
            right.setMinWidth(ORDERS_WIDTH);
            right.setPrefWidth(ORDERS_WIDTH);
            HBox.setHgrow(left, Priority.ALWAYS);
            setCenter(new HBox(24, left, right));
        } else {
            setCenter(scroll(new VBox(rows, orders)));
        }
    }

    private ScrollPane scroll(Region content) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scrolls.add(scroll);
        return scroll;
    }

    private static Label plain(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        return label;
    }

    private void addStories(AftermathModel shown) {
        Label head = new Label(WORDS.say("stories"));
        head.getStyleClass().add("aftermath-title");
        orders.getChildren().add(head);
        for (StoryRow row : shown.stories()) {
            StoryLine each = new StoryLine(row);
            each.setOnMousePressed(e -> {
                each.requestFocus();
                choose(row);
            });
            each.setOnFired(() -> choose(row));
            stories.add(each);
        }
        orders.getChildren().addAll(stories);
        story = shown.stories().isEmpty() ? null : shown.stories().get(0);
    }

    /** Told where one stands after each step, and when another story is chosen. */
    public void setOnStep(Consumer<Moment> listener) {
        onStep = listener;
    }

    /** What is shown; null for nothing. */
    public @Nullable AftermathModel model() {
        return model;
    }

    /** Where one stands in the chosen story; null where there is none. */
    public @Nullable Moment moment() {
        StoryRow chosen = story;
        return chosen == null ? null : chosen.at(after);
    }

    /** One step on, if there is one. */
    public void stepOn() {
        step(after + 1);
    }

    /** One step back, if there is one. */
    public void stepBack() {
        step(after - 1);
    }

    private void choose(StoryRow row) {
        story = row;
        after = 0;
        place();
        tell();
    }

    private void step(int to) {
        StoryRow chosen = story;
        if (chosen != null && to >= 0 && to <= chosen.steps().size() && to != after) {
            after = to;
            place();
            tell();
        }
    }

    private void tell() {
        Moment moment = moment();
        if (moment != null) {
            onStep.accept(moment);
        }
    }

    private void place() {
        StoryRow chosen = story;
        TimeLine shown = line;
        stories.forEach(each -> each.chosen(each.row().equals(chosen)));
        boolean some = chosen != null && !chosen.steps().isEmpty();
        steps.setVisible(some);
        steps.setManaged(some);
        if (chosen == null || !some) {
            return;
        }
        boolean hadBack = back.isFocused();
        boolean hadOn = on.isFocused();
        back.setDisable(after == 0);
        on.setDisable(after == chosen.steps().size());
        // the keyboard goes to the other button rather than nowhere
        if (hadBack && back.isDisabled()) {
            on.requestFocus();
        } else if (hadOn && on.isDisabled()) {
            back.requestFocus();
        }
        Moment moment = chosen.at(after);
        where.setText(WORDS.say("where", chosen.share(), moment.words()));
        setAccessibleText(where.getText());
        notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
        back.setAccessibleText(WORDS.say("before") + ". " + moment.words());
        on.setAccessibleText(WORDS.say("next") + ". " + moment.words());
        where.notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
        if (shown != null) {
            Region row =
                    shown.now(after == 0 ? null : chosen.steps().get(after - 1).what());
            if (row != null) {
                Reveal.whole(row);
            }
        }
    }

    private void pressed(KeyEvent event) {
        switch (event.getCode()) {
            case LEFT -> stepBack();
            case RIGHT -> stepOn();
            case UP -> walk(-1);
            case DOWN -> walk(1);
            case ENTER, SPACE -> {
                if (stories.stream().noneMatch(StoryLine::isFocused)) {
                    return;
                }
                stories.stream().filter(StoryLine::isFocused).findFirst().ifPresent(each -> choose(each.row()));
            }
            default -> {
                return;
            }
        }
        event.consume();
    }

    /** Takes the keyboard from one row of the time line, or one story, to the next. */
    private void walk(int by) {
        TimeLine shown = line;
        if (shown == null) {
            return;
        }
        List<Node> stops = new ArrayList<>(shown.rows());
        stops.addAll(stories);
        if (isFocused() && !stops.isEmpty()) {
            stops.get(0).requestFocus();
            return;
        }
        for (int k = 0; k < stops.size(); k++) {
            if (stops.get(k).isFocused()) {
                Node next = stops.get(Math.max(0, Math.min(stops.size() - 1, k + by)));
                next.requestFocus();
                Reveal.whole(next);
                return;
            }
        }
    }
}
