package fusetale.desk.line;

import fusetale.desk.kit.Faces;
import fusetale.desk.state.DeskModel;
import fusetale.explore.Words;
import fusetale.sentence.Completion;
import fusetale.sentence.Piece;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Understood;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import javafx.animation.PauseTransition;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/**
 * The sentence, each piece of which can be pressed, and the line that is typed into it. What would be understood stands under the
 * line before Enter.
 */
public final class SentenceView extends StackPane {
    private static final Words WORDS = Words.of(SentenceView.class);
    private static final double FULL = 25;
    private static final double SMALL = 19;
    private static final double KEY_STEP = 1 / 60.0;
    private static final double DRAG_PIXELS = 480;
    /** A hand that presses moves less than this [px]. */
    private static final double STILL = 3;

    private static final Duration WHEEL_REST = Duration.millis(350);

    private static final Pattern STOP = Pattern.compile("[.,;:]");

    private final LineModel model;
    private final FlowPane flow = new FlowPane();
    private final TextField field = new TextField();
    private final ListView<Completion> list = new ListView<>();
    private final Label meaning = new Label();
    private final VBox suggestions = new VBox(meaning, list);
    private Consumer<Piece> chosen = piece -> {};
    private double dragFrom = Double.NaN;
    private @Nullable Piece dragged;
    /** Whether the hand has drawn since it took the piece: then letting go is no press, wherever it does. */
    private boolean draws;

    private double dragPosition;
    private @Nullable Piece wheeled;
    private List<PieceView> views = List.of();
    private List<String> shownShape = List.of();
    private Font shownFont = PieceView.font(FULL);
    private double wheelPosition;
    private final PauseTransition wheelRests = new PauseTransition(WHEEL_REST);

    /** Shows the sentence of a desk. */
    public SentenceView(DeskModel desk) {
        this.model = new LineModel(desk);
        getStyleClass().add("sentence");
        getStylesheets().add(SentenceView.class.getResource("line.css").toExternalForm());
        flow.setAlignment(Pos.CENTER_LEFT);
        flow.setAccessibleRole(AccessibleRole.TEXT);
        setAlignment(Pos.CENTER_LEFT);
        field.setVisible(false);
        field.setPromptText(WORDS.say("prompt"));
        field.setAccessibleText(WORDS.say("prompt"));
        field.setFont(Faces.WORDS.at(22));
        field.textProperty().addListener(changed -> read());
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::typed);
        suggestions.getStyleClass().add("suggestions");
        suggestions
                .getStylesheets()
                .add(SentenceView.class.getResource("line.css").toExternalForm());
        suggestions.setVisible(false);
        suggestions.setManaged(false);
        meaning.getStyleClass().add("meaning");
        meaning.setWrapText(true);
        list.setCellFactory(view -> new CompletionCell());
        list.setFocusTraversable(false);
        list.setAccessibleText(WORDS.say("list"));
        list.setOnMouseClicked(e -> takeSelected());
        getChildren().addAll(flow, field);
        wheelRests.setOnFinished(e -> wheelRested());
        desk.sentenceProperty().addListener(changed -> show());
        widthProperty().addListener(changed -> show());
        show();
    }

    /** Told which piece was pressed. */
    public void onChosen(Consumer<Piece> listener) {
        chosen = listener;
    }

    /** What hangs below the line while it is typed into; the window lays it over what is below. */
    public Region suggestions() {
        return suggestions;
    }

    /** Whether the line is being typed into. */
    public boolean editing() {
        return field.isVisible();
    }

    /** The piece that a node shows; empty where it is none. */
    public Optional<Piece> pieceOf(Node node) {
        return node instanceof PieceView view ? Optional.of(view.piece()) : Optional.empty();
    }

    /** Opens the line. */
    public void edit(String begun) {
        flow.setVisible(false);
        field.setVisible(true);
        field.setText(begun);
        field.requestFocus();
        field.positionCaret(begun.length());
        suggestions.setVisible(true);
        read();
    }

    /** Leaves the line as it was. */
    public void leave() {
        field.setVisible(false);
        flow.setVisible(true);
        suggestions.setVisible(false);
        flow.requestFocus();
        if (!flow.getChildren().isEmpty()) {
            firstPiece();
        }
    }

    /** Puts the keyboard on the first piece. */
    public void begin() {
        firstPiece();
    }

    private void firstPiece() {
        views.stream().findFirst().ifPresent(Node::requestFocus);
    }

    private void show() {
        List<Piece> pieces = model.pieces();
        Font font = PieceView.font(size(pieces));
        Font words = Faces.WORDS.at(font.getSize());
        List<PieceView> old = views;
        List<Piece> pressable =
                pieces.stream().filter(p -> p.kind() != Piece.Kind.WORDS).toList();
        flow.setAccessibleText(model.spoken());
        List<String> shape = pieces.stream()
                .map(p -> p.kind() == Piece.Kind.WORDS ? p.text() : p.kind().name())
                .toList();
        // a hand that holds a piece keeps it, and what stays as it is is not painted again
        if (shape.equals(shownShape) && (dragging() || font.equals(shownFont))) {
            for (int k = 0; k < old.size(); k++) {
                if (!old.get(k).piece().equals(pressable.get(k))) {
                    old.get(k).show(pressable.get(k), shownFont);
                }
            }
            return;
        }
        shownShape = shape;
        shownFont = font;
        int focused = -1;
        for (int k = 0; k < old.size(); k++) {
            focused = old.get(k).isFocused() ? k : focused;
        }
        List<Node> nodes = new ArrayList<>();
        List<PieceView> made = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.kind() == Piece.Kind.WORDS) {
                words(piece.text(), words, nodes);
            } else {
                PieceView view = piece(piece, font);
                FlowPane.setMargin(view, new Insets(0, 0, 0, 2));
                nodes.add(view);
                made.add(view);
            }
        }
        flow.getChildren().setAll(nodes);
        views = List.copyOf(made);
        if (focused >= 0 && focused < pressable.size()) {
            views.get(focused).requestFocus();
        }
    }

    /** The largest size at which the sentence is one line; a very long one takes two. */
    private double size(List<Piece> pieces) {
        double room = Math.max(400, getWidth());
        for (double size = FULL; size > SMALL; size -= 2) {
            Text all = new Text(String.join("", pieces.stream().map(Piece::text).toList()));
            all.setFont(PieceView.font(size));
            if (all.getLayoutBounds().getWidth() + 12 * pieces.size() < room) {
                return size;
            }
        }
        return SMALL;
    }

    private boolean dragging() {
        return !Double.isNaN(dragFrom) || wheeled != null;
    }

    /** Words between the pieces, each by itself, so that a long sentence breaks between any two; a stop stays with what it follows. */
    private static void words(String text, Font font, List<Node> nodes) {
        double blank = font.getSize() * 0.26;
        boolean first = true;
        for (String word : text.strip().split(" ", -1)) {
            Text shown = new Text(word);
            shown.setFont(font);
            shown.getStyleClass().add("text-soft");
            double before = first && text.startsWith(" ") ? blank : 0;
            first = false;
            if (STOP.matcher(word).matches() && before == 0 && !nodes.isEmpty()) {
                Node followed = nodes.remove(nodes.size() - 1);
                HBox both = new HBox(followed, shown);
                both.setAlignment(Pos.CENTER_LEFT);
                double had = FlowPane.getMargin(followed).getLeft();
                FlowPane.setMargin(both, new Insets(0, blank, 0, had));
                nodes.add(both);
            } else {
                FlowPane.setMargin(shown, new Insets(0, blank, 0, before));
                nodes.add(shown);
            }
        }
        if (!text.endsWith(" ")) {
            Node last = nodes.get(nodes.size() - 1);
            FlowPane.setMargin(
                    last, new Insets(0, 0, 0, FlowPane.getMargin(last).getLeft()));
        }
    }

    private PieceView piece(Piece piece, Font font) {
        PieceView view = new PieceView(piece, font);
        view.setAccessibleHelp(WORDS.say(model.scale(piece).isPresent() ? "piece.amount" : "piece.help"));
        view.setOnKeyPressed(e -> key(view, e));
        view.setOnFired(() -> chosen.accept(view.piece()));
        view.setOnScroll(e -> scrolled(view.piece(), e));
        view.setOnMousePressed(e -> {
            view.requestFocus();
            dragFrom = e.getSceneX();
            draws = false;
            dragged = view.piece();
            dragPosition = model.position(view.piece());
        });
        view.setOnMouseDragged(e -> {
            Piece begun = dragged;
            draws |= Math.abs(e.getSceneX() - dragFrom) > STILL;
            if (begun != null && model.scale(begun).isPresent() && draws) {
                model.drag(begun, dragPosition + (e.getSceneX() - dragFrom) / DRAG_PIXELS);
            }
        });
        view.setOnMouseReleased(e -> {
            Piece begun = dragged;
            double moved = e.getSceneX() - dragFrom;
            boolean drew = draws;
            dragFrom = Double.NaN;
            dragged = null;
            draws = false;
            if (begun != null && model.scale(begun).isPresent() && drew) {
                if (Math.abs(moved) > STILL) {
                    model.drop(begun, dragPosition + moved / DRAG_PIXELS);
                } else {
                    model.dropBack();
                }
            } else {
                chosen.accept(view.piece());
            }
        });
        return view;
    }

    /** A turn of the wheel moves an amount a step; it is kept, as one change, when the wheel rests. */
    private void scrolled(Piece piece, ScrollEvent event) {
        if (model.scale(piece).isEmpty() || event.getDeltaY() == 0) {
            return;
        }
        event.consume();
        Piece turned = wheeled;
        if (turned == null) {
            turned = piece;
            wheelPosition = model.position(piece);
        }
        wheeled = turned;
        wheelPosition = Math.max(0, Math.min(1, wheelPosition + Math.signum(event.getDeltaY()) * KEY_STEP));
        model.drag(turned, wheelPosition);
        wheelRests.playFromStart();
    }

    private void wheelRested() {
        Piece turned = wheeled;
        wheeled = null;
        if (turned != null) {
            model.drop(turned, wheelPosition);
        }
    }

    private void key(PieceView view, KeyEvent event) {
        Piece piece = view.piece();
        switch (event.getCode()) {
            case ENTER, SPACE -> chosen.accept(piece);
            case DELETE, BACK_SPACE -> model.putBack(piece);
            case PLUS, ADD, UP -> step(piece, KEY_STEP);
            case MINUS, SUBTRACT, DOWN -> step(piece, -KEY_STEP);
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void step(Piece piece, double by) {
        model.drop(piece, model.position(piece) + by);
    }

    private void read() {
        if (!editing()) {
            return;
        }
        String line = field.getText();
        list.getItems().setAll(model.completions(line));
        list.setPrefHeight(Math.min(7, list.getItems().size()) * 44 + 4);
        list.setVisible(!list.getItems().isEmpty());
        list.setManaged(!list.getItems().isEmpty());
        Understood understood = model.understood(line);
        if (line.isBlank()) {
            meaning.setText(WORDS.say("hint"));
        } else if (understood instanceof Understood.Means means) {
            meaning.setText(WORDS.say("means", means.words()));
        } else if (understood instanceof Understood.Unclear unclear) {
            meaning.setText(unclear.problem());
        }
        suggestions.requestLayout();
    }

    private void typed(KeyEvent event) {
        int at = list.getSelectionModel().getSelectedIndex();
        switch (event.getCode()) {
            case ESCAPE -> leave();
            case ENTER -> enter();
            case DOWN ->
                list.getSelectionModel().select(Math.min(at + 1, list.getItems().size() - 1));
            case UP -> {
                if (at <= 0) {
                    list.getSelectionModel().clearSelection();
                } else {
                    list.getSelectionModel().select(at - 1);
                }
            }
            case TAB -> complete();
            case BACK_SPACE -> {
                if (!field.getText().isEmpty()) {
                    return;
                }
                model.putBackLast();
            }
            default -> {
                return;
            }
        }
        event.consume();
    }

    /** Puts the selected completion, or the first, into the line. */
    private void complete() {
        Completion selected = list.getSelectionModel().getSelectedItem();
        Completion taken =
                selected == null && !list.getItems().isEmpty() ? list.getItems().get(0) : selected;
        if (taken != null) {
            field.setText(taken.line());
            field.positionCaret(taken.line().length());
        }
    }

    private void enter() {
        Completion selected = list.getSelectionModel().getSelectedItem();
        String line = selected == null ? field.getText() : selected.line();
        if (line.isBlank()) {
            leave();
            return;
        }
        try {
            model.take(line);
            leave();
        } catch (SentenceException unclear) {
            if (selected != null) {
                field.setText(selected.line());
                field.positionCaret(selected.line().length());
            }
            read();
        }
    }

    private void takeSelected() {
        if (list.getSelectionModel().getSelectedItem() != null) {
            enter();
        }
    }

    /** One way to go on. */
    private static final class CompletionCell extends ListCell<Completion> {
        /** The line, and what it says where that is more than the line itself. */
        private static String said(Completion item) {
            return item.words().equalsIgnoreCase(item.line().strip())
                            || item.words().isBlank()
                    ? item.line()
                    : item.line() + "    " + item.words();
        }

        @Override
        protected void updateItem(Completion item, boolean empty) {
            super.updateItem(item, empty);
            setText(empty || item == null ? "" : said(item));
            setAccessibleText(empty || item == null ? "" : item.words());
        }
    }
}
