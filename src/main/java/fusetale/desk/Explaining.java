package fusetale.desk;

import fusetale.circuit.Circuit;
import fusetale.desk.help.Explained;
import fusetale.desk.help.Glossary;
import fusetale.desk.help.OnThisBoard;
import fusetale.desk.help.WordView;
import fusetale.desk.line.LineModel;
import fusetale.explore.Words;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.UnfitSupposition;
import fusetale.sentence.Piece;
import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.MouseEvent;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** What {@code ?} says of the word that the pointer is on or that has the keyboard, whichever came last. */
final class Explaining {
    private static final Words WORDS = Words.of(Explaining.class);

    private static final int MOST = 3;

    private final Window window;
    private @Nullable Node pointed;

    Explaining(Window window) {
        this.window = window;
        window.addEventFilter(
                MouseEvent.MOUSE_MOVED, e -> pointed = e.getPickResult().getIntersectedNode());
        window.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> {
            boolean within = e.getTarget() instanceof Node node && within(node);
            if (showing() && !within) {
                window.overlay().close();
            }
        });
        // taken from the scene when the window goes, or the scene would keep every repair that was ever open
        InvalidationListener forgets = changed -> pointed = null;
        window.sceneProperty().addListener((of, before, now) -> {
            if (before != null) {
                before.focusOwnerProperty().removeListener(forgets);
            }
            if (now != null) {
                now.focusOwnerProperty().addListener(forgets);
            }
        });
    }

    private boolean showing() {
        return window.overlay().showing().filter(WordView.class::isInstance).isPresent();
    }

    private static boolean within(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at instanceof WordView) {
                return true;
            }
        }
        return false;
    }

    /** Explains the word; gives whether there was one. Where one is explained already, that goes and the page of all words is wanted. */
    boolean explain() {
        if (showing()) {
            window.overlay().close();
            return false;
        }
        Node pointedAt = pointed;
        return (pointedAt != null && explain(pointedAt))
                || explain(window.getScene().getFocusOwner());
    }

    private boolean explain(@Nullable Node node) {
        for (Node at = node; at != null && at != window; at = at.getParent()) {
            List<Glossary.Entry> entries = entries(at);
            if (!entries.isEmpty()) {
                Bounds place = at.localToScene(at.getLayoutBounds());
                WordView view = new WordView(entries.stream().limit(MOST).toList());
                window.overlay().openAt(view, place, window.consequence());
                view.requestFocus();
                return true;
            }
        }
        return false;
    }

    private List<Glossary.Entry> entries(Node node) {
        Circuit board = window.model().board();
        Optional<Piece> piece = window.sentence().pieceOf(node);
        Optional<Fault> fault = piece.flatMap(new LineModel(window.model())::fault);
        if (fault.isPresent()) {
            return told(board, fault.get(), piece.get().text().strip());
        }
        Glossary glossary = Glossary.all(OnThisBoard.of(board));
        if (node instanceof Explained explained) {
            return glossary.in(explained.words());
        }
        if (node instanceof Text text) {
            return glossary.in(text.getText());
        }
        return node instanceof Labeled labeled && labeled.getText() != null
                ? glossary.in(labeled.getText())
                : List.of();
    }

    /** What happened inside the part, and how the trade makes sure. */
    private static List<Glossary.Entry> told(Circuit board, Fault fault, String words) {
        try {
            var telling = Catalogue.form(board, fault).telling();
            return List.of(new Glossary.Entry(
                    List.of(words), telling.happened(), WORDS.say("confirm", telling.confirmation())));
        } catch (UnfitSupposition e) {
            throw new IllegalStateException("the sentence supposes what this board cannot have", e);
        }
    }
}
