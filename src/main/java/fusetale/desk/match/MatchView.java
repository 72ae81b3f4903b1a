package fusetale.desk.match;

import fusetale.desk.consequence.Consequence;
import fusetale.desk.consequence.ConsequenceLine;
import fusetale.desk.state.BenchState;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The place "What did I read?": the line of what was found, what that means, what fits, and what to measure next. */
public final class MatchView extends VBox {
    private static final Words WORDS = Words.of(MatchView.class);
    private static final double MARGIN = 20;

    private final MatchModel model;
    private final FoundLine line;
    private final Region progress = new Region();
    private final ConsequenceLine consequence = new ConsequenceLine();
    private final FitGrid grid = new FitGrid();
    private final IntakeView intake;
    private final AdviceTag tag;
    private final MatchBody body;
    private boolean seeing;
    private Optional<String> heard = Optional.empty();
    private String notice = "";
    private Consumer<Supposition> supposed = s -> {};
    private Runnable changed = () -> {};
    private Runnable opened = () -> {};

    /** Shows a model. */
    public MatchView(MatchModel model) {
        this.model = model;
        this.line = new FoundLine(model);
        this.intake = new IntakeView(model);
        this.tag = new AdviceTag(model);
        this.seeing = model.found().isEmpty();
        this.body = new MatchBody(seeing ? intake : grid, tag);
        getStyleClass().add("match");
        getStylesheets()
                .add(Objects.requireNonNull(MatchView.class.getResource("match.css"))
                        .toExternalForm());
        ScrollPane scroll = new ScrollPane(body);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setAccessibleText(WORDS.say("place"));
        VBox.setVgrow(scroll, Priority.ALWAYS);
        progress.getStyleClass().add("progress");
        progress.setMinHeight(3);
        progress.setMaxHeight(3);
        HBox bar = new HBox(progress);
        bar.setMinHeight(3);
        bar.setMaxHeight(3);
        VBox told = new VBox(consequence);
        told.setPadding(new Insets(2, MARGIN, 8, MARGIN));
        told.setMinHeight(Region.USE_PREF_SIZE);
        getChildren().addAll(line, bar, told, scroll);
        line.onHeard(words -> {
            heard = words;
            tell();
        });
        line.onDown(this::down);
        grid.onLeft(line::begin);
        grid.onTaken(this::suppose);
        intake.onDone(() -> see(false));
        intake.onOpened(() -> opened.run());
        tag.onTaken(line::begin);
        model.standingProperty().addListener(c -> showStanding());
        model.workProperty().addListener(c -> showWork());
        model.newsProperty().addListener(c -> tell());
        model.adviceProperty().addListener(c -> tell());
        model.desk().historyProperty().addListener((of, before, now) -> found(before.present(), now.present()));
        intake.show();
        showStanding();
        showWork();
    }

    /** Told when a row is taken into the other place. */
    public void onSupposed(Consumer<Supposition> listener) {
        supposed = listener;
    }

    /** Told when what the status says may have changed. */
    public void onChanged(Runnable listener) {
        changed = listener;
    }

    /** Told when all that was found is wanted; what is chosen there is changed with {@link #change}. */
    public void onAll(Runnable listener) {
        line.onAll(listener);
    }

    /** Told when a file of readings is to be opened. */
    public void onOpened(Runnable listener) {
        opened = listener;
    }

    /** What was found, each in a few words. */
    public List<String> pieces() {
        return model.found().stream().map(FoundWords::piece).toList();
    }

    /** Puts one of the things found into the line to be changed. */
    public void change(int index) {
        line.change(index);
    }

    /** Puts the keyboard into the line. */
    public void begin() {
        line.begin();
    }

    /** Puts the keyboard on the tag. */
    public void next() {
        tag.begin();
    }

    /** What lies under the line; an overlay opens below it. */
    public Region below() {
        return consequence;
    }

    /** Opens what is seen without a meter, or closes it. */
    public void seen() {
        if (seeing) {
            see(false);
            begin();
        } else {
            see();
        }
    }

    /** Whether the keyboard is on what is seen without a meter, where figures choose. */
    public boolean answering() {
        return seeing && intake.isFocusWithin();
    }

    /** Opens what is seen without a meter. */
    public void see() {
        see(true);
        intake.begin();
    }

    /** Leaves what is being typed or answered, then stops the work. */
    public void stop() {
        if (seeing && !model.found().isEmpty()) {
            see(false);
            begin();
        } else {
            model.stop();
        }
    }

    private void see(boolean on) {
        seeing = on;
        if (on) {
            intake.show();
        }
        body.left(on ? intake : grid);
    }

    private void down() {
        if (seeing) {
            intake.begin();
        } else {
            grid.begin();
        }
    }

    private void suppose(Supposition supposition) {
        model.suppose(supposition);
        supposed.accept(supposition);
    }

    private void found(BenchState before, BenchState now) {
        if (!before.found().equals(now.found()) || !before.board().equals(now.board())) {
            notice = "";
            line.show();
            // what fits was worked out of what was found before
            showStanding();
            if (now.found().isEmpty() && !seeing) {
                see(true);
            } else if (seeing) {
                boolean read = now.found().stream().anyMatch(f -> f.measured() != null);
                boolean more = now.found().size() > before.found().size();
                if (read && more) {
                    see(false);
                } else {
                    intake.refresh();
                }
            }
        }
        tell();
        changed.run();
    }

    private void showStanding() {
        model.standingProperty().get().ifPresent(s -> {
            boolean fresh = model.fresh();
            if (fresh) {
                grid.show(FitRows.of(s.board(), model.desk().foundReader(), model.found(), s.ranking(), false));
            } else {
                grid.show(grid.rows().asOld());
            }
        });
        tell();
        changed.run();
    }

    private void showWork() {
        MatchModel.Work work = model.workProperty().get();
        progress.setVisible(work.busy() && work.of() > 0);
        progress.setPrefWidth(work.of() > 0 ? getWidth() * work.done() / work.of() : 0);
        tell();
        changed.run();
    }

    /** The line below: a danger always; otherwise what is being typed comes first, then what is to be noticed. */
    private void tell() {
        Consequence said = MatchLine.of(model);
        if (heard.isPresent()) {
            String typed = heard.get();
            consequence.show(new Consequence(
                    said.danger(),
                    said.danger() ? List.of(typed, said.sentences().get(0)) : List.of(typed),
                    false));
        } else {
            consequence.show(notice.isEmpty() ? said : said.after(notice));
        }
    }

    /** Says something in the line below, until something else is found; empty for nothing any more. */
    public void notice(String text) {
        notice = text;
        tell();
    }
}
