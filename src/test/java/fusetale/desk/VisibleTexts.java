package fusetale.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** What is to be read in a tree of nodes, and whether it can be read whole. */
final class VisibleTexts {
    /** Pixels that texts may share: bounds of a line are taller than its letters. */
    private static final double SHARED = 4;

    private VisibleTexts() {}

    /** Every node with the keyboard in reach. */
    static List<Node> focusable(Parent root) {
        return all(root).stream().filter(Node::isFocusTraversable).toList();
    }

    /** Labels and buttons that show less than their text. */
    static List<String> cut(Parent root) {
        List<String> cut = new ArrayList<>();
        for (Node node : all(root)) {
            if (node instanceof Labeled labeled
                    && !labeled.getText().isEmpty()
                    && own(labeled) instanceof Text shown
                    && !shown.getText().replace("\n", " ").equals(labeled.getText())) {
                cut.add(labeled.getText() + " -> " + shown.getText());
            }
        }
        return cut;
    }

    /** The text of a label, and not that of what it shows beside it. */
    private static @Nullable Node own(Labeled labeled) {
        return labeled.getChildrenUnmodifiable().stream()
                .filter(Text.class::isInstance)
                .findFirst()
                .orElse(null);
    }

    /** Pairs of texts that lie upon each other. */
    static List<String> overlapping(Parent root) {
        List<Text> texts = texts(root);
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = i + 1; j < texts.size(); j++) {
                Bounds one = seen(texts.get(i));
                Bounds other = seen(texts.get(j));
                double across = Math.min(one.getMaxX(), other.getMaxX()) - Math.max(one.getMinX(), other.getMinX());
                double down = Math.min(one.getMaxY(), other.getMaxY()) - Math.max(one.getMinY(), other.getMinY());
                if (across > 1 && down > SHARED) {
                    pairs.add(texts.get(i).getText() + " / " + texts.get(j).getText());
                }
            }
        }
        return pairs;
    }

    /** Texts that reach beyond the sides of a view. */
    static List<String> outside(Parent root) {
        Bounds view = seen(root);
        return texts(root).stream()
                .filter(t -> seen(t).getMinX() < view.getMinX() - 1 || seen(t).getMaxX() > view.getMaxX() + 1)
                .map(Text::getText)
                .toList();
    }

    /** Every colour that is painted with, of lines, areas and grounds, gradients left out. */
    static Set<Color> colours(Parent root) {
        Set<Color> colours = new LinkedHashSet<>();
        for (Node node : all(root)) {
            if (node instanceof Shape shape) {
                add(shape.getFill(), colours);
                add(shape.getStroke(), colours);
            } else if (node instanceof Region region) {
                if (region.getBackground() != null) {
                    region.getBackground().getFills().forEach(f -> add(f.getFill(), colours));
                }
                if (region.getBorder() != null) {
                    region.getBorder().getStrokes().forEach(s -> {
                        add(s.getTopStroke(), colours);
                        add(s.getLeftStroke(), colours);
                    });
                }
            }
        }
        return colours;
    }

    private static void add(@Nullable Paint paint, Set<Color> colours) {
        if (paint instanceof Color color && color.getOpacity() > 0) {
            colours.add(color);
        }
    }

    private static List<Text> texts(Parent root) {
        List<Text> texts = new ArrayList<>();
        for (Node node : all(root)) {
            if (node instanceof Text text && !text.getText().isBlank()) {
                texts.add(text);
            }
        }
        return texts;
    }

    /** Where a node is seen: what a scroll pane around it leaves of it. */
    private static Bounds seen(Node node) {
        Bounds seen = node.localToScene(node.getLayoutBounds());
        for (Node around = node.getParent(); around != null; around = around.getParent()) {
            if (around instanceof ScrollPane scroll) {
                Bounds window = scroll.localToScene(scroll.getLayoutBounds());
                double top = Math.max(seen.getMinY(), window.getMinY());
                double bottom = Math.min(seen.getMaxY(), window.getMaxY());
                seen = new BoundingBox(seen.getMinX(), top, seen.getWidth(), Math.max(0, bottom - top));
            }
        }
        return seen;
    }

    /** All nodes shown, parts of scroll bars left out. */
    private static List<Node> all(Node root) {
        List<Node> nodes = new ArrayList<>();
        if (root.isVisible()) {
            nodes.add(root);
            if (root instanceof Parent parent) {
                parent.getChildrenUnmodifiable().forEach(child -> nodes.addAll(all(child)));
            }
        }
        return nodes;
    }
}
