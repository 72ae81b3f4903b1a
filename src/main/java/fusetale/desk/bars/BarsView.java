package fusetale.desk.bars;

import fusetale.bench.Check;
import fusetale.circuit.MeterFunction;
import fusetale.desk.kit.Reveal;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/**
 * All test points in one function of the meter: what healthy machines show as a band, the healthy reading as a ring, the
 * supposed one as a diamond, as shares of the healthy reading, figures beside. Up, Down, Home and End walk the points; Enter,
 * Space or a press chooses one.
 */
public final class BarsView extends BorderPane {
    private static final Words WORDS = Words.of(BarsView.class);

    /** Least height [px] of a row. */
    private static final double ROW = 26;

    /** Most height [px] of a row, where there are few. */
    private static final double MOST_ROW = 40;

    /** Height [px] the chart needs besides its rows. */
    private static final double AXIS = 12;

    private final HBox functions = new HBox(8);
    private final Label title = new Label();
    private final ColumnHeads heads = new ColumnHeads();
    private final StackPane holder = new StackPane();
    private final Map<MeterFunction, ToggleButton> buttons = new EnumMap<>(MeterFunction.class);

    private BarRows rows = BarRows.NONE;
    private @Nullable MeterFunction function;
    private @Nullable ShareChart chart;
    private Consumer<Check> onChosen = check -> {};

    /** A view without readings. */
    public BarsView() {
        getStyleClass().add("bars");
        getStylesheets()
                .add(Objects.requireNonNull(BarsView.class.getResource("/fusetale/desk/bars/bars.css"))
                        .toExternalForm());
        setPadding(new Insets(16, 20, 12, 20));
        title.getStyleClass().add("bars-title");
        title.setMinWidth(Region.USE_PREF_SIZE);
        FlowPane head = new FlowPane(16, 8, title, functions);
        head.setRowValignment(VPos.CENTER);
        setTop(new VBox(10, head, heads));
        holder.setAlignment(Pos.TOP_LEFT);
        ScrollPane scroll = new ScrollPane(holder);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        setCenter(scroll);
        holder.widthProperty().addListener(changed -> rebuild());
        // before the scroll pane takes arrows for itself
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    }

    /** Shows the readings of the outcomes of one supposition. */
    public void setOutcomes(List<Outcome> outcomes) {
        setRows(BarRows.of(outcomes));
    }

    /** Shows other rows, in the function shown before where it was read again, else in the first one. */
    public void setRows(BarRows next) {
        rows = next;
        buttons.clear();
        for (MeterFunction each : next.functions()) {
            ToggleButton button = new ToggleButton(each.words());
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setAccessibleText(WORDS.say("title") + " " + each.words());
            button.setOnAction(e -> show(each));
            buttons.put(each, button);
        }
        functions.getChildren().setAll(buttons.values());
        MeterFunction wanted = function;
        if (wanted == null || !next.functions().contains(wanted)) {
            wanted = next.functions().isEmpty() ? null : next.functions().get(0);
        }
        show(wanted);
    }

    /** Shows one function; null shows none. */
    public void show(@Nullable MeterFunction wanted) {
        function = wanted;
        buttons.forEach((each, button) -> button.setSelected(each == wanted));
        title.setText(WORDS.say(wanted == null ? "nothing" : "title"));
        rebuild();
    }

    /** The function shown; null where nothing was read. */
    public @Nullable MeterFunction function() {
        return function;
    }

    /** Told which check is chosen, each time one is. */
    public void setOnChosen(Consumer<Check> listener) {
        onChosen = listener;
    }

    private void rebuild() {
        MeterFunction shown = function;
        int focused = focused();
        if (shown == null) {
            chart = null;
            holder.getChildren().clear();
            heads.follow(null);
            return;
        }
        ShareChart next = ShareChart.of(rows.of(shown), holder.getWidth());
        next.setMinHeight(ROW * rows.of(shown).size() + AXIS);
        next.setMaxHeight(MOST_ROW * rows.of(shown).size() + AXIS);
        for (BarLine line : next.lines()) {
            line.setOnMousePressed(e -> {
                line.requestFocus();
                onChosen.accept(line.row().reading().check());
            });
            line.setOnFired(() -> onChosen.accept(line.row().reading().check()));
            line.setFocusTraversable(line == next.lines().get(0));
        }
        chart = next;
        holder.getChildren().setAll(next);
        heads.follow(next);
        if (focused >= 0 && focused < next.lines().size()) {
            next.lines().get(focused).requestFocus();
        }
    }

    private void focus(BarLine line) {
        line.requestFocus();
        Reveal.whole(line);
    }

    private int focused() {
        ShareChart shown = chart;
        if (shown != null) {
            for (int k = 0; k < shown.lines().size(); k++) {
                if (shown.lines().get(k).isFocused()) {
                    return k;
                }
            }
        }
        return -1;
    }

    private void pressed(KeyEvent event) {
        ShareChart shown = chart;
        int at = focused();
        if (shown == null || at < 0) {
            return;
        }
        int last = shown.lines().size() - 1;
        switch (event.getCode()) {
            case DOWN -> focus(shown.lines().get(Math.min(last, at + 1)));
            case UP -> focus(shown.lines().get(Math.max(0, at - 1)));
            case HOME -> focus(shown.lines().get(0));
            case END -> focus(shown.lines().get(last));
            case ENTER, SPACE ->
                onChosen.accept(shown.lines().get(at).row().reading().check());
            default -> {
                return;
            }
        }
        event.consume();
    }
}
