package fusetale.desk.waves;

import fusetale.desk.kit.Faces;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.geometry.VPos;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

/**
 * Up to three small waveforms side by side on one time axis. Values may be set at each movement of a pointer. Enter, Space or
 * a press chooses one; Left and Right walk them.
 */
public final class WaveRow extends Region {
    /** How many are shown. */
    public static final int MOST = 3;

    private static final Words WORDS = Words.of(WaveRow.class);
    private static final double GAP = 12;

    private final List<WaveSmall> smalls = List.of(new WaveSmall(), new WaveSmall(), new WaveSmall());
    private final Text nothing = new Text(WORDS.say("nothing"));

    private List<WaveModel> models = List.of();
    private Consumer<WaveModel> onChosen = model -> {};

    /** A row without waveforms. */
    public WaveRow() {
        getStyleClass().add("wave-row");
        getStylesheets()
                .add(Objects.requireNonNull(WaveRow.class.getResource("/fusetale/desk/waves/waves.css"))
                        .toExternalForm());
        nothing.setFont(Faces.WORDS.at(16));
        nothing.getStyleClass().add("text-soft");
        nothing.setTextOrigin(VPos.CENTER);
        nothing.setManaged(false);
        for (WaveSmall small : smalls) {
            small.setManaged(false);
            small.show(null);
            small.setOnMousePressed(e -> {
                small.requestFocus();
                choose(small);
            });
            small.setOnFired(() -> choose(small));
        }
        getChildren().add(nothing);
        getChildren().addAll(smalls);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    /** Shows the traces of an outcome. */
    public void setOutcome(Outcome outcome) {
        setModels(WaveModel.of(outcome));
    }

    /** Shows the first three of some traces. */
    public void setModels(List<WaveModel> next) {
        models = List.copyOf(next);
        for (int k = 0; k < MOST; k++) {
            smalls.get(k).show(k < models.size() ? models.get(k) : null);
        }
        nothing.setVisible(models.isEmpty());
        requestLayout();
    }

    /** All traces, those not shown too. */
    public List<WaveModel> models() {
        return models;
    }

    /** Told which trace is to be seen large. */
    public void setOnChosen(Consumer<WaveModel> listener) {
        onChosen = listener;
    }

    private void choose(WaveSmall small) {
        WaveModel model = small.model();
        if (model != null) {
            onChosen.accept(model);
        }
    }

    private void pressed(KeyEvent event) {
        for (int k = 0; k < MOST; k++) {
            if (smalls.get(k).isFocused()) {
                KeyCode code = event.getCode();
                if (code == KeyCode.ENTER || code == KeyCode.SPACE) {
                    choose(smalls.get(k));
                    event.consume();
                } else if (code == KeyCode.LEFT || code == KeyCode.RIGHT) {
                    int next = k + (code == KeyCode.LEFT ? -1 : 1);
                    if (next >= 0 && next < Math.min(MOST, models.size())) {
                        smalls.get(next).requestFocus();
                    }
                    event.consume();
                }
                return;
            }
        }
    }

    @Override
    protected double computePrefHeight(double width) {
        return 164;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 640;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 480;
    }

    @Override
    protected double computeMinHeight(double width) {
        return 110;
    }

    @Override
    protected void layoutChildren() {
        int shown = Math.max(2, Math.min(MOST, models.size()));
        double width = (getWidth() - (shown - 1) * GAP) / shown;
        for (int k = 0; k < MOST; k++) {
            smalls.get(k).resizeRelocate(k * (width + GAP), 0, width, getHeight());
            smalls.get(k).layout();
        }
        nothing.setX(GAP);
        nothing.setY(getHeight() / 2);
    }
}
