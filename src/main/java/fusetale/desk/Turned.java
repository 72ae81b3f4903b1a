package fusetale.desk;

import fusetale.desk.aftermath.AftermathView;
import fusetale.desk.aftermath.StoryRow;
import fusetale.desk.bars.BarsView;
import fusetale.desk.kit.Faces;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.Shown;
import fusetale.desk.waves.WaveModel;
import fusetale.desk.waves.WaveView;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/**
 * What is turned to in place of the board, or below it: large waveforms, all test points, what follows. The first two follow the
 * answers; a story is of one sentence and goes with it.
 */
final class Turned {
    private static final Words WORDS = Words.of(Turned.class);

    private final Window window;
    private final DeskModel model;
    private @Nullable Region page;
    private Runnable follow = () -> {};

    Turned(Window window) {
        this.window = window;
        this.model = window.model();
        model.shownProperty().addListener(changed -> follow.run());
        model.otherPowerProperty().addListener(changed -> follow.run());
        model.historyProperty().addListener((property, before, now) -> {
            BenchState was = before.present();
            if (page instanceof AftermathView && !was.sameQuestion(now.present())) {
                back();
            }
        });
    }

    /** Whether something other than the board is shown. */
    boolean away() {
        return page != null;
    }

    private Optional<Outcome> outcome() {
        return model.shownProperty().get().map(Shown::outcome);
    }

    /** Turns to the large waveforms, at one of the small ones or the first. */
    void waves(@Nullable WaveModel chosen) {
        outcome().filter(o -> !o.traces().isEmpty()).ifPresent(o -> {
            WaveView view = new WaveView();
            List<WaveModel> models = WaveModel.of(o);
            view.setModels(models);
            // the small one was made for itself; here it is the one of its name among the choices
            models.stream()
                    .filter(m -> chosen != null && m.title().equals(chosen.title()))
                    .findFirst()
                    .ifPresent(view::show);
            turn(WORDS.say("page.waves"), view);
            follow = () -> follow(view);
            view.focusCursor();
        });
    }

    private void follow(WaveView view) {
        List<WaveModel> models = outcome().map(WaveModel::of).orElse(List.of());
        if (models.isEmpty()) {
            // with the power off nothing waves
            back();
        } else {
            view.setModels(models);
        }
    }

    /** Turns to the chart of all test points. */
    void bars() {
        BarsView view = new BarsView();
        view.setOutcomes(model.outcomes());
        view.show(model.state().sentence().setting().function());
        view.setOnChosen(check -> {
            back();
            window.goTo(check);
        });
        turn(WORDS.say("page.bars"), view);
        follow = () -> view.setOutcomes(model.outcomes());
    }

    /** Shows below the board what follows. */
    void aftermath() {
        Optional<Outcome> played = outcome().filter(o -> o.aftermath() != null);
        if (played.isEmpty()) {
            window.notice(WORDS.say("aftermath.none"));
            return;
        }
        AftermathView view = new AftermathView();
        view.setOutcome(played.get());
        view.setOnStep(this::step);
        follow = () -> {};
        page = view;
        window.below(view, WORDS.say("page.back"), this::back);
        view.requestFocus();
    }

    /** Shows the board as it is after an event. */
    private void step(StoryRow.Moment moment) {
        model.lookForward(
                moment.after() == 0
                        ? Optional.empty()
                        : Optional.of(new DeskModel.Forward(moment.supposition(), moment.words())));
    }

    /** Turns the page in the middle of the window; Esc turns back. */
    private void turn(String heading, Region view) {
        Button back = new Button(WORDS.say("page.back"));
        back.setOnAction(e -> back());
        Label head = new Label(heading);
        head.setFont(Faces.HEADING.at(20));
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox row = new HBox(12, head, space, back);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPadding(new Insets(4, 0, 6, 0));
        BorderPane turned = new BorderPane(view);
        turned.setTop(row);
        turned.setPadding(new Insets(4, 20, 10, 20));
        window.show(turned);
        page = turned;
        back.requestFocus();
    }

    /** Turns back to the board, as it is at present. */
    void back() {
        page = null;
        follow = () -> {};
        model.lookForward(Optional.empty());
        window.showBoard();
    }
}
