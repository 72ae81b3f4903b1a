package fusetale.desk.card;

import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Reveal;
import fusetale.explore.Words;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A part's card. Each way to fail is a row to press; the one that has the keyboard tells more below. */
public final class CardView extends BorderPane {
    private static final Words WORDS = Words.of(CardView.class);
    private static final double WIDTH = 430;
    /** Head, two ways to fail and what is told of one of them. */
    private static final double LEAST_HEIGHT = 390;

    private final VBox rows = new VBox();
    private final Label happened = paragraph();
    private final Label confirm = paragraph();
    private Runnable closed = () -> {};

    /**
     * Shows a card.
     *
     * @param card what it says
     * @param extra what stands between head and rows, such as an amount to drag; may be an empty region
     * @param taken told which way was pressed
     */
    public CardView(PartCard card, Node extra, Consumer<PartCard.Way> taken) {
        getStyleClass().add("card");
        getStylesheets().add(CardView.class.getResource("card.css").toExternalForm());
        setPrefWidth(WIDTH);
        setMaxWidth(WIDTH);
        setMinHeight(LEAST_HEIGHT);
        Label name = new Label(WORDS.say("title", card.name()));
        name.setFont(Faces.SHOUT.at(20));
        Label kind = new Label(card.kind());
        kind.getStyleClass().add("label-soft");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Button close = new Button(WORDS.say("close"));
        close.setOnAction(e -> closed.run());
        HBox head = new HBox(10, name, kind, space, close);
        head.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        head.setPadding(new Insets(14, 16, 8, 16));
        setTop(head);
        Label about = paragraph();
        about.setText(card.about());
        Label here = paragraph();
        here.setText(card.here());
        here.getStyleClass().add("label-soft");
        here.setManaged(!card.here().isEmpty());
        Label fails = new Label(WORDS.say("fails"));
        fails.setFont(Faces.HEADING.at(17));
        VBox tells = new VBox(8, about, here, extra, fails);
        tells.setPadding(new Insets(0, 16, 6, 16));
        for (PartCard.Way way : card.ways()) {
            rows.getChildren().add(row(way, taken));
        }
        ScrollPane scroll = new ScrollPane(new VBox(tells, rows));
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        setCenter(scroll);
        VBox below = new VBox(4, happened, confirm);
        below.getStyleClass().add("card-below");
        below.setMinHeight(128);
        setBottom(below);
        setAccessibleRole(AccessibleRole.DIALOG);
        setAccessibleText(WORDS.say("card.spoken", card.name(), card.kind(), card.about(), card.here()));
        addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                closed.run();
                e.consume();
            } else if (e.getCode() == KeyCode.DOWN || e.getCode() == KeyCode.UP) {
                walk(e.getCode() == KeyCode.DOWN ? 1 : -1);
                e.consume();
            }
        });
        if (!card.ways().isEmpty()) {
            tell(card.ways().get(0));
        }
    }

    /** Told when it is to go away. */
    public void onClosed(Runnable listener) {
        closed = listener;
    }

    /** Puts the keyboard on the first way. */
    public void begin() {
        if (!rows.getChildren().isEmpty()) {
            // laid out at once: what has the keyboard is to be seen, and a low card has to be scrolled for that
            getParent().layout();
            focus(rows.getChildren().get(0));
        }
    }

    private static void focus(Node row) {
        row.requestFocus();
        Reveal.whole(row);
    }

    private Node row(PartCard.Way way, Consumer<PartCard.Way> taken) {
        Button button = new Button(way.words());
        button.getStyleClass().add("card-row");
        if (way.supposed()) {
            button.getStyleClass().add("supposed");
        }
        button.setMaxWidth(Double.MAX_VALUE);
        button.setAccessibleText(WORDS.say(way.supposed() ? "way.spoken.supposed" : "way.spoken", way.words()));
        button.setOnAction(e -> taken.accept(way));
        button.focusedProperty().addListener((property, before, now) -> {
            if (now) {
                tell(way);
            }
        });
        button.setOnMouseEntered(e -> tell(way));
        return button;
    }

    private void tell(PartCard.Way way) {
        happened.setText(way.happened());
        confirm.setText(WORDS.say("confirm", way.confirm()));
    }

    private void walk(int by) {
        int at = -1;
        for (int k = 0; k < rows.getChildren().size(); k++) {
            if (rows.getChildren().get(k).isFocused()) {
                at = k;
            }
        }
        int next = Math.max(0, Math.min(rows.getChildren().size() - 1, at + by));
        if (next >= 0 && !rows.getChildren().isEmpty()) {
            focus(rows.getChildren().get(next));
        }
    }

    private static Label paragraph() {
        Label label = new Label();
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.setFont(Faces.WORDS.at(16));
        return label;
    }
}
