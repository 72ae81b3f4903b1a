package fusetale.desk.waves;

import fusetale.desk.kit.Reveal;
import fusetale.desk.kit.Signs;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * One or two waveforms large, below each other on one time axis, with a cursor: Left and Right move it (with Shift ten times as
 * far), Home and End take it to the ends, a pointer takes it along. The figures at the cursor stand over each chart and are
 * what a screen reader says.
 */
public final class WaveView extends BorderPane {
    private static final Words WORDS = Words.of(WaveView.class);

    private static final int MOST = 2;
    private static final double FIGURE_WIDTH = 66;
    private static final int STEPS = 200;
    private static final int LARGE_STEP = 10;

    private final VBox choice = new VBox(8);
    private final VBox charts = new Charts();
    private final Label time = new Label();
    private final Map<WaveModel, ToggleButton> buttons = new LinkedHashMap<>();
    private final List<WaveModel> shown = new ArrayList<>();
    private final List<Shown> views = new ArrayList<>();
    private double cursorSeconds;

    /** One chart with the figures over it. */
    private record Shown(CursorChart chart, Label built, Label supposed) {}

    /** A view without waveforms. */
    public WaveView() {
        getStyleClass().add("wave-large");
        getStylesheets()
                .add(Objects.requireNonNull(WaveView.class.getResource("/fusetale/desk/waves/waves.css"))
                        .toExternalForm());
        setPadding(new Insets(16, 20, 16, 20));
        Label heading = new Label(WORDS.say("choose"));
        heading.getStyleClass().add("label-soft");
        heading.setWrapText(true);
        heading.setMinHeight(Region.USE_PREF_SIZE);
        ScrollPane scroll = new ScrollPane(choice);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        choice.setPadding(new Insets(3));
        // before the scroll pane takes arrows for itself
        choice.addEventFilter(KeyEvent.KEY_PRESSED, this::walk);
        VBox left = new VBox(8, heading, scroll);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        left.setPrefWidth(210);
        left.setMinWidth(210);
        setLeft(left);
        charts.getStyleClass().add("wave-field");
        charts.setAccessibleRole(AccessibleRole.SLIDER);
        charts.setAccessibleHelp(WORDS.say("cursor.keys"));
        charts.setFocusTraversable(true);
        charts.setPadding(new Insets(0, 8, 0, 8));
        charts.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        charts.addEventHandler(MouseEvent.MOUSE_PRESSED, e -> {
            charts.requestFocus();
            follow(e);
        });
        charts.addEventHandler(MouseEvent.MOUSE_MOVED, this::follow);
        charts.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::follow);
        time.getStyleClass().add("wave-time");
        setCenter(charts);
        BorderPane.setMargin(charts, new Insets(0, 0, 0, 16));
    }

    /** Offers some traces; those that were shown before are shown again where they are among them, else the first. */
    public void setModels(List<WaveModel> models) {
        List<String> before = shown.stream().map(WaveModel::title).toList();
        buttons.clear();
        shown.clear();
        for (WaveModel model : models) {
            ToggleButton button = new ToggleButton(model.title());
            button.getStyleClass().add("wave-choice");
            button.setMaxWidth(Double.MAX_VALUE);
            button.setAccessibleText(model.spoken());
            button.setOnAction(e -> toggle(model));
            buttons.put(model, button);
        }
        choice.getChildren().setAll(buttons.values());
        if (models.isEmpty()) {
            rebuild();
            return;
        }
        List<WaveModel> again = before.stream()
                .flatMap(t -> models.stream().filter(m -> m.title().equals(t)).limit(1))
                .toList();
        show(again.isEmpty() ? models.get(0) : again.get(0));
        again.forEach(this::showBeside);
    }

    /** Shows one of the traces offered, alone. */
    public void show(WaveModel model) {
        shown.clear();
        shown.add(model);
        cursorSeconds = Math.min(cursorSeconds, model.seconds());
        rebuild();
    }

    /** Shows a second trace below the first. */
    public void showBeside(WaveModel model) {
        if (!shown.contains(model)) {
            if (shown.size() == MOST) {
                shown.remove(0);
            }
            shown.add(model);
            rebuild();
        }
    }

    /** The traces shown, from top to bottom. */
    public List<WaveModel> shown() {
        return List.copyOf(shown);
    }

    /** Where the cursor stands [s]. */
    public double cursor() {
        return cursorSeconds;
    }

    /** Puts the cursor at a time [s], within the axis. */
    public void setCursor(double seconds) {
        cursorSeconds = Math.max(0, Math.min(end(), seconds));
        read();
    }

    /** The traces shown as comma-separated text, {@link WaveModel#csv}. */
    public String toCsv() {
        return WaveModel.csv(shown);
    }

    /** Gives the keyboard to the cursor. */
    public void focusCursor() {
        charts.requestFocus();
    }

    private void toggle(WaveModel model) {
        if (!shown.contains(model)) {
            showBeside(model);
        } else if (shown.size() > 1) {
            shown.remove(model);
            rebuild();
        } else {
            // the last one stays
            press();
        }
    }

    private void rebuild() {
        press();
        charts.getChildren().clear();
        views.clear();
        for (WaveModel model : shown) {
            CursorChart chart = new CursorChart(model);
            Label built = new Label();
            Label supposed = new Label();
            built.getStyleClass().addAll("wave-readout");
            supposed.getStyleClass().addAll("wave-readout", "label-marker");
            built.setMinWidth(FIGURE_WIDTH);
            supposed.setMinWidth(FIGURE_WIDTH);
            Label title = new Label(model.title());
            title.getStyleClass().add("wave-heading");
            HBox head = new HBox(10, title, gap());
            head.setAlignment(Pos.CENTER_LEFT);
            if (views.isEmpty()) {
                head.getChildren().add(time);
            }
            head.getChildren().addAll(sign(true), built, sign(false), supposed);
            views.add(new Shown(chart, built, supposed));
            VBox.setVgrow(chart, Priority.ALWAYS);
            chart.setMinHeight(120);
            charts.getChildren().addAll(head, chart);
        }
        read();
    }

    /** The buttons of what is shown are the ones that are in. */
    private void press() {
        buttons.forEach((model, button) -> button.setSelected(shown.contains(model)));
    }

    private static Region gap() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        return gap;
    }

    private static Label sign(boolean healthy) {
        Label label = new Label(WORDS.say(healthy ? "healthy" : "supposed"));
        label.setGraphic(healthy ? Signs.ring() : Signs.diamond());
        label.getStyleClass().add("wave-time");
        label.setGraphicTextGap(8);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    /** Writes what stands at the cursor over each chart, and says it. */
    private void read() {
        @Nullable String spoken = null;
        for (Shown view : views) {
            WaveModel model = view.chart().model();
            view.chart().cursor(cursorSeconds);
            view.built().setText(model.builtSaid(cursorSeconds));
            view.supposed().setText(model.supposedSaid(cursorSeconds));
            String said = WORDS.say(
                    "cursor.spoken",
                    model.title(),
                    WaveModel.time(cursorSeconds),
                    model.builtSaid(cursorSeconds),
                    model.supposedSaid(cursorSeconds));
            spoken = spoken == null ? said : spoken + "; " + said;
        }
        time.setText(WORDS.say("cursor", WaveModel.time(cursorSeconds)));
        charts.setAccessibleText(spoken == null ? WORDS.say("nothing") : spoken);
        charts.notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
        charts.notifyAccessibleAttributeChanged(AccessibleAttribute.VALUE);
    }

    /** Up and Down walk the traces to choose from. */
    private void walk(KeyEvent event) {
        int by = event.getCode() == KeyCode.DOWN ? 1 : event.getCode() == KeyCode.UP ? -1 : 0;
        List<ToggleButton> all = List.copyOf(buttons.values());
        for (int k = 0; k < all.size() && by != 0; k++) {
            if (all.get(k).isFocused()) {
                ToggleButton next = all.get(Math.max(0, Math.min(all.size() - 1, k + by)));
                next.requestFocus();
                Reveal.whole(next);
                event.consume();
                return;
            }
        }
    }

    /** The charts, whose cursor a screen reader moves as a slider's thumb. */
    private final class Charts extends VBox {
        Charts() {
            super(8);
        }

        @Override
        public @Nullable Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
            return switch (attribute) {
                case VALUE -> cursorSeconds;
                case MIN_VALUE -> 0.0;
                case MAX_VALUE -> end();
                default -> super.queryAccessibleAttribute(attribute, parameters);
            };
        }

        @Override
        public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
            switch (action) {
                case INCREMENT -> step(1);
                case DECREMENT -> step(-1);
                case BLOCK_INCREMENT -> step(LARGE_STEP);
                case BLOCK_DECREMENT -> step(-LARGE_STEP);
                default -> super.executeAccessibleAction(action, parameters);
            }
        }
    }

    private void step(int steps) {
        setCursor(cursorSeconds + steps * end() / STEPS);
    }

    /** Where the axis ends [s]. */
    private double end() {
        return shown.isEmpty() ? 0 : shown.get(0).seconds();
    }

    private void follow(MouseEvent event) {
        if (!views.isEmpty()) {
            setCursor(views.get(0).chart().timeAt(event.getSceneX(), event.getSceneY()));
        }
    }

    private void pressed(KeyEvent event) {
        if (shown.isEmpty()) {
            return;
        }
        int steps = event.isShiftDown() ? LARGE_STEP : 1;
        switch (event.getCode()) {
            case LEFT -> step(-steps);
            case RIGHT -> step(steps);
            case HOME -> setCursor(0);
            case END -> setCursor(end());
            default -> {
                return;
            }
        }
        event.consume();
    }
}
