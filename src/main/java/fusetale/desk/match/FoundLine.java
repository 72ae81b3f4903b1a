package fusetale.desk.match;

import fusetale.desk.kit.Faces;
import fusetale.desk.state.Found;
import fusetale.explore.Words;
import fusetale.match.Advice;
import fusetale.sentence.SentenceException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

/**
 * The line "I read …": everything found as pieces, the newest as far as there is room, and the field for the next. What is
 * advised stands before the field and goes without saying. A number pad is enough: figures, {@code *} for OL, {@code /} cannot
 * reach it, {@code +} another one.
 */
final class FoundLine extends Region {
    private static final Words WORDS = Words.of(FoundLine.class);
    private static final PseudoClass WITHIN = PseudoClass.getPseudoClass("within");
    private static final double HEIGHT = 54;
    private static final double MARGIN = 20;
    private static final double FIELD = 400;

    private final MatchModel model;
    private final Text lead = new Text(WORDS.say("lead"));
    private final Label prefix = new Label();
    private final TextField field = new Field();
    private final HBox box = new HBox(prefix, field);
    private final Button earlier = new Button();
    private final List<FoundPiece> pieces = new ArrayList<>();
    private int changed = -1;
    private Optional<Found> changing = Optional.empty();
    private boolean swallow;
    private Consumer<Optional<String>> heard = words -> {};
    private Runnable down = () -> {};
    private Runnable all = () -> {};

    /** A field into which a column of a spreadsheet can be pasted. */
    private final class Field extends TextField {
        @Override
        public void paste() {
            String text = Clipboard.getSystemClipboard().getString();
            if (text != null && (text.contains("\n") || text.contains("\t"))) {
                pasted(text);
            } else {
                super.paste();
            }
        }
    }

    FoundLine(MatchModel model) {
        this.model = model;
        getStyleClass().add("found-line");
        lead.setFont(Faces.WORDS.at(24));
        lead.getStyleClass().add("text-soft");
        lead.setTextOrigin(VPos.CENTER);
        lead.setManaged(false);
        prefix.getStyleClass().add("found-prefix");
        prefix.setMinWidth(Region.USE_PREF_SIZE);
        field.getStyleClass().add("found-text");
        field.setFont(Faces.WORDS.at(21));
        HBox.setHgrow(field, Priority.ALWAYS);
        box.getStyleClass().add("found-field");
        box.setAlignment(Pos.CENTER_LEFT);
        box.setManaged(false);
        earlier.getStyleClass().add("found-earlier");
        earlier.setManaged(false);
        earlier.setOnAction(e -> all.run());
        field.textProperty().addListener(c -> hear());
        field.focusedProperty().addListener(c -> {
            box.pseudoClassStateChanged(WITHIN, field.isFocused());
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        field.addEventFilter(KeyEvent.KEY_TYPED, e -> {
            if (swallow) {
                e.consume();
            }
            swallow = false;
        });
        box.setOnMouseClicked(e -> begin());
        getChildren().addAll(lead, earlier, box);
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        model.adviceProperty().addListener(c -> ask());
        ask();
        show();
    }

    /** Told what the typed line means, or what is wrong with it; nothing while none is typed. */
    void onHeard(Consumer<Optional<String>> listener) {
        heard = listener;
    }

    /** Told when the keyboard leaves the line downwards. */
    void onDown(Runnable listener) {
        down = listener;
    }

    /** Told when all that was found is wanted. */
    void onAll(Runnable listener) {
        all = listener;
    }

    /** Puts the keyboard into the field. */
    void begin() {
        field.requestFocus();
        field.end();
    }

    boolean editing() {
        return field.isFocused();
    }

    /** Leaves what is typed. */
    void leave() {
        changed = -1;
        changing = Optional.empty();
        field.clear();
        ask();
    }

    /** What stands in the field. */
    TextField field() {
        return field;
    }

    /** Changes one of the things found. */
    void change(int index) {
        changed = index;
        changing = Optional.of(model.found().get(index));
        ask();
        field.setText(model.desk().foundReader().line(model.found().get(index)));
        begin();
    }

    /** Shows what is found. What is being changed may have moved, or be gone: that is left. */
    void show() {
        if (changed >= 0) {
            leave();
        }
        List<Found> found = model.found();
        int focused = pieces.stream().map(Node::isFocused).toList().indexOf(true);
        getChildren().removeAll(pieces);
        pieces.clear();
        for (int k = 0; k < found.size(); k++) {
            int index = k;
            String words = FoundWords.piece(found.get(k));
            FoundPiece piece = new FoundPiece(words, WORDS.say("piece.spoken", words), true);
            piece.setManaged(false);
            piece.setOnMouseClicked(e -> change(index));
            piece.setOnFired(() -> change(index));
            piece.setOnKeyPressed(e -> pieceKey(e, index));
            pieces.add(piece);
        }
        getChildren().addAll(pieces);
        if (focused >= 0) {
            if (pieces.isEmpty()) {
                begin();
            } else {
                pieces.get(Math.min(focused, pieces.size() - 1)).requestFocus();
            }
        }
        requestLayout();
    }

    private void pieceKey(KeyEvent event, int index) {
        switch (event.getCode()) {
            case ENTER, SPACE -> change(index);
            case DELETE, BACK_SPACE -> model.drop(index);
            case LEFT -> pieces.get(Math.max(0, index - 1)).requestFocus();
            case RIGHT -> {
                if (index + 1 < pieces.size()) {
                    pieces.get(index + 1).requestFocus();
                } else {
                    begin();
                }
            }
            case DOWN -> down.run();
            default -> {
                return;
            }
        }
        event.consume();
    }

    /** Whether what is being changed is not there any more: advice may change before what was found is shown. */
    private boolean gone() {
        return changed >= model.found().size()
                || !Optional.of(model.found().get(changed)).equals(changing);
    }

    private void ask() {
        if (changed >= 0 && gone()) {
            leave();
            return;
        }
        Optional<Advice> advice = model.adviceProperty().get();
        String words = changed >= 0
                ? WORDS.say("instead")
                : advice.map(a -> AdviceWords.prefix(model.desk().board(), a.ask()))
                        .orElse("");
        prefix.setText(words);
        prefix.setVisible(!words.isEmpty());
        prefix.setManaged(!words.isEmpty());
        String prompt = WORDS.say(
                advice.isEmpty()
                        ? "prompt"
                        : advice.get().ask() instanceof fusetale.match.Ask.Noticed ? "prompt.number" : "prompt.value");
        field.setPromptText(prompt);
        field.setAccessibleText(words.isEmpty() ? prompt : words + ": " + prompt);
        requestLayout();
        if (!field.getText().isBlank()) {
            hear();
        }
    }

    private void hear() {
        String typed = field.getText();
        model.typing(!typed.isBlank());
        if (typed.isBlank()) {
            heard.accept(Optional.empty());
            return;
        }
        try {
            heard.accept(Optional.of(WORDS.say(
                    "means", means(changed >= 0 ? model.understoodAs(changed, typed) : model.understood(typed)))));
        } catch (SentenceException unclear) {
            heard.accept(Optional.of(String.valueOf(unclear.getMessage())));
        }
    }

    private String means(Found found) {
        return found.told()
                .map(e -> found.text() + ", "
                        + model.desk().foundReader().benchWords(e.ask().arrangement()))
                .orElseGet(() -> WORDS.say("means.replaced", FoundWords.parts(found)));
    }

    private void key(KeyEvent event) {
        swallow = false;
        boolean empty = field.getText().isEmpty();
        switch (event.getCode()) {
            case ENTER -> enter();
            case ESCAPE -> {
                if (empty && changed < 0) {
                    down.run();
                } else {
                    leave();
                }
            }
            case DOWN -> down.run();
            case MULTIPLY -> {
                field.insertText(field.getCaretPosition(), WORDS.say("over"));
                swallow = true;
            }
            case DIVIDE -> {
                if (!empty) {
                    return;
                }
                model.cannotReach();
                swallow = true;
            }
            case ADD -> {
                if (!empty) {
                    return;
                }
                model.another();
                swallow = true;
            }
            case BACK_SPACE -> {
                if (!empty || model.found().isEmpty()) {
                    return;
                }
                model.drop(model.found().size() - 1);
            }
            case LEFT -> {
                if (!empty || pieces.isEmpty()) {
                    return;
                }
                pieces.get(pieces.size() - 1).requestFocus();
            }
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void enter() {
        String typed = field.getText().strip();
        if (typed.isEmpty()) {
            return;
        }
        if (typed.equalsIgnoreCase(WORDS.say("cannot")) && changed < 0) {
            field.clear();
            model.cannotReach();
            return;
        }
        try {
            if (changed >= 0) {
                model.change(changed, typed);
            } else {
                model.take(typed);
            }
            leave();
        } catch (SentenceException unclear) {
            hear();
        }
    }

    private void pasted(String text) {
        List<String> problems = model.paste(text);
        field.clear();
        if (!problems.isEmpty()) {
            heard.accept(Optional.of(WORDS.say("pasted", String.join(" ", problems))));
        }
    }

    @Override
    protected void layoutChildren() {
        double y = (getHeight() - 44) / 2;
        lead.setX(MARGIN);
        lead.setY(getHeight() / 2);
        double left = MARGIN + lead.getLayoutBounds().getWidth() + 10;
        double right = getWidth() - MARGIN;
        double least = Math.min(FIELD, (right - left) * 0.62);
        double room = right - left - least - 8;
        double used = 0;
        int first = pieces.size();
        while (first > 0 && used + pieces.get(first - 1).prefWidth(-1) <= room) {
            first--;
            used += pieces.get(first).prefWidth(-1);
        }
        earlier.setVisible(first > 0);
        if (first > 0) {
            double wide = 0;
            while (true) {
                earlier.setText(WORDS.say("earlier", first));
                wide = earlier.prefWidth(-1) + 8;
                if (used + wide <= room || first >= pieces.size()) {
                    break;
                }
                used -= pieces.get(first).prefWidth(-1);
                first++;
            }
            earlier.setAccessibleText(WORDS.say("earlier.spoken", first));
            earlier.resizeRelocate(left, (getHeight() - 34) / 2, wide - 8, 34);
            left += wide;
        }
        for (int k = 0; k < pieces.size(); k++) {
            FoundPiece piece = pieces.get(k);
            piece.setVisible(k >= first);
            if (k >= first) {
                piece.resizeRelocate(left, y, piece.prefWidth(-1), 44);
                left += piece.prefWidth(-1);
            }
        }
        box.resizeRelocate(left + 4, y, right - left - 4, 44);
    }
}
