package fusetale.desk.bars;

import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Signs;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** What stands over the chart and does not scroll: marks of the scale, and heads of the columns of figures with their signs. */
final class ColumnHeads extends Region {
    private static final Words WORDS = Words.of(ColumnHeads.class);
    private static final double HEIGHT = 22;
    private static final double GAP = 8;
    private static final double BAND_WIDTH = 26;
    private static final List<String> KEYS = List.of("healthy", "supposed", "range");

    /** Half of a sign's width, the sign being drawn around its middle. */
    private static final List<Double> SIGN_HALVES = List.of(6.0, 7.0, BAND_WIDTH / 2);

    private final List<Text> columns = new ArrayList<>();
    private final List<Node> signs = new ArrayList<>();
    private final Map<Double, Text> marks = new LinkedHashMap<>();
    private @Nullable ShareChart chart;

    ColumnHeads() {
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        KEYS.forEach(key -> columns.add(text(WORDS.say(key))));
        Rectangle band = new Rectangle(-BAND_WIDTH / 2, -7, BAND_WIDTH, 14);
        band.getStyleClass().add("bar-range");
        signs.addAll(List.of(Signs.ring(), Signs.diamond(), band));
        signs.forEach(sign -> sign.setManaged(false));
    }

    private static Text text(String words) {
        Text text = new Text(words);
        text.setFont(Faces.TABLE.at(14));
        text.setTextOrigin(VPos.CENTER);
        text.getStyleClass().add("text-soft");
        text.setManaged(false);
        return text;
    }

    /** Widths of the heads with their signs [px]: healthy, supposed, what healthy machines show. */
    static List<Double> widths() {
        List<Double> widths = new ArrayList<>();
        for (int k = 0; k < KEYS.size(); k++) {
            widths.add(width(text(WORDS.say(KEYS.get(k)))) + GAP + 2 * SIGN_HALVES.get(k));
        }
        return widths;
    }

    private static double width(Text text) {
        return text.getLayoutBounds().getWidth();
    }

    /** Stands over another chart; null over none. */
    void follow(@Nullable ShareChart next) {
        chart = next;
        marks.clear();
        getChildren().clear();
        if (next != null) {
            next.scale().marks().forEach((at, words) -> marks.put(at, text(words)));
            getChildren().addAll(columns);
            getChildren().addAll(signs);
            getChildren().addAll(marks.values());
            next.getXAxis().widthProperty().addListener(changed -> requestLayout());
        }
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        ShareChart shown = chart;
        if (shown == null) {
            return;
        }
        double left = sceneToLocal(shown.getXAxis().localToScene(0, 0)).getX();
        double y = HEIGHT / 2;
        BarLine.Columns at = shown.columns();
        double[] rights = {at.built(), at.supposed(), at.range()};
        for (int k = 0; k < rights.length; k++) {
            Text head = columns.get(k);
            head.setX(left + rights[k] - width(head));
            head.setY(y);
            signs.get(k).setLayoutX(head.getX() - GAP - SIGN_HALVES.get(k));
            signs.get(k).setLayoutY(y);
        }
        for (Map.Entry<Double, Text> mark : marks.entrySet()) {
            Text text = mark.getValue();
            text.setX(left + shown.x(mark.getKey()) - width(text) / 2);
            text.setY(y);
        }
        hideCrowded();
    }

    /** Of marks that touch, the one nearer to the middle of the scale goes: the lanes at the ends need their names. */
    private void hideCrowded() {
        List<Text> all = new ArrayList<>(marks.values());
        all.forEach(text -> text.setVisible(true));
        for (int k = 0; k + 1 < all.size(); k++) {
            Text one = all.get(k);
            Text next = all.get(k + 1);
            if (one.getX() + width(one) + GAP / 2 > next.getX()) {
                (2 * k + 1 < all.size() ? next : one).setVisible(false);
            }
        }
    }
}
