package fusetale.desk.aftermath;

import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Pressable;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** One story to choose: its share of machines, and what happens in which order, as many lines as that takes. */
final class StoryLine extends Pressable {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final double LEAST_HEIGHT = 44;
    private static final double LEAST_WORDS = 160;
    private static final double SHARE_WIDTH = 180;
    private static final double SHARE_HEIGHT = 22;
    private static final double NARROW = 560;
    private static final Insets INSIDE = new Insets(8, 14, 8, 14);

    private final StoryRow row;
    private final Text share = new Text();
    private final Text words = new Text();
    private final Text measure = new Text();
    private boolean selected;

    StoryLine(StoryRow row) {
        this.row = row;
        getStyleClass().add("story");
        setAccessibleRole(AccessibleRole.RADIO_BUTTON);
        setAccessibleText(row.spoken());
        share.setText(row.share());
        share.setFont(Faces.TABLE_FIGURE.at(16));
        words.setText(row.words());
        words.setFont(Faces.WORDS.at(16));
        measure.setFont(words.getFont());
        measure.setText(words.getText());
        for (Text text : new Text[] {share, words}) {
            text.setTextOrigin(VPos.TOP);
            text.getStyleClass().add("text-ink");
            text.setManaged(false);
            text.setMouseTransparent(true);
            getChildren().add(text);
        }
    }

    StoryRow row() {
        return row;
    }

    void chosen(boolean is) {
        selected = is;
        notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTED);
        pseudoClassStateChanged(CHOSEN, is);
        // one stop for the tabulator, arrows from there
        setFocusTraversable(is);
    }

    @Override
    public @Nullable Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.SELECTED
                ? (Object) selected
                : super.queryAccessibleAttribute(attribute, parameters);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        double above = narrow(width) ? SHARE_HEIGHT : 0;
        return Math.max(LEAST_HEIGHT, above + wordsHeight(width) + INSIDE.getTop() + INSIDE.getBottom());
    }

    /** Whether the share stands above the words instead of beside them. */
    private static boolean narrow(double width) {
        return width < NARROW;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    /** Height [px] of the words at a width of the whole; asked for widths that are never shown, too. */
    private double wordsHeight(double width) {
        measure.setWrappingWidth(wordsWidth(width));
        return measure.getLayoutBounds().getHeight();
    }

    private static double wordsWidth(double width) {
        return Math.max(LEAST_WORDS, width - INSIDE.getLeft() - INSIDE.getRight() - (narrow(width) ? 0 : SHARE_WIDTH));
    }

    @Override
    protected void layoutChildren() {
        boolean narrow = narrow(getWidth());
        double above = narrow ? SHARE_HEIGHT : 0;
        double top = (getHeight() - above - wordsHeight(getWidth())) / 2;
        share.setX(INSIDE.getLeft());
        share.setY(top);
        words.setWrappingWidth(wordsWidth(getWidth()));
        words.setX(INSIDE.getLeft() + (narrow ? 0 : SHARE_WIDTH));
        words.setY(top + above);
    }
}
