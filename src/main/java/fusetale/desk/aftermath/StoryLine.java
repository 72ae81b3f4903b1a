package fusetale.desk.aftermath;

import fusetale.desk.kit.Faces;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.text.Text;

/** One story to choose: its share of machines, and what happens in which order, as many lines as that takes. */
final class StoryLine extends Region {
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final double LEAST_HEIGHT = 44;
    private static final double LEAST_WORDS = 160;
    private static final double SHARE_WIDTH = 180;
    private static final Insets INSIDE = new Insets(8, 14, 8, 14);

    private final StoryRow row;
    private final Text share = new Text();
    private final Text words = new Text();
    private final Text measure = new Text();

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
        pseudoClassStateChanged(CHOSEN, is);
        // one stop for the tabulator, arrows from there
        setFocusTraversable(is);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        return Math.max(LEAST_HEIGHT, wordsHeight(width) + INSIDE.getTop() + INSIDE.getBottom());
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
        return Math.max(LEAST_WORDS, width - INSIDE.getLeft() - INSIDE.getRight() - SHARE_WIDTH);
    }

    @Override
    protected void layoutChildren() {
        double top = (getHeight() - wordsHeight(getWidth())) / 2;
        words.setWrappingWidth(wordsWidth(getWidth()));
        words.setX(INSIDE.getLeft() + SHARE_WIDTH);
        words.setY(top);
        share.setX(INSIDE.getLeft());
        share.setY(top);
    }
}
