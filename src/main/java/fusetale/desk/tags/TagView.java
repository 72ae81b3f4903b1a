package fusetale.desk.tags;

import fusetale.desk.help.Explained;
import fusetale.desk.kit.Faces;
import fusetale.desk.kit.Signs;
import fusetale.explore.Words;
import java.util.regex.Pattern;
import javafx.css.PseudoClass;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.scene.text.Text;

/** One tag on the cord. Its nodes are made once; new figures only change their texts, so that it can follow a hand. */
final class TagView extends Region implements Explained {
    /** How large a tag is. */
    enum Size {
        /** Up to seven of them. */
        LARGE(146, 92),
        /** Up to ten of them. */
        MEDIUM(112, 76),
        /** One that did not move and was not read. */
        STUB(54, 26),
        /** One that moved, where more did than fit. */
        WIDE_STUB(112, 26);

        final double width;
        final double height;

        Size(double width, double height) {
            this.width = width;
            this.height = height;
        }

        boolean isStub() {
            return this == STUB || this == WIDE_STUB;
        }
    }

    private static final Words WORDS = Words.of(TagView.class);
    /** What a shortened place must not end with. */
    private static final Pattern DANGLING = Pattern.compile("(?:,| (?:of|the|at|a|in|to|before|behind|after|end))+$");

    /** What says nothing when it is all that is left. */
    private static final Pattern ALONE = Pattern.compile("one|two|both|each|other|behind|before|into|across");

    private static final double CUT = 14;
    private static final double STUB_CUT = 8;
    private static final double SIGN_X = 15;
    private static final double TEXT_X = 28;

    private final Polygon outline = new Polygon();
    private final Polygon shadow = new Polygon();
    private final Circle hole = new Circle(4.2);
    private final Text name = text(Faces.TABLE_FIGURE, 16, "text-ink");
    private final Text place = text(Faces.TABLE, 15, "text-soft");
    private final Rectangle swipe = new Rectangle();
    private final Text reading = text(Faces.HEADING, 25, "text-ink");
    private final Text foot = text(Faces.TABLE, 15, "text-ink");
    private final Text read = text(Faces.TABLE_FIGURE, 15, "text-pencil");
    private final Rectangle dots = new Rectangle();
    private final Node ring = Signs.ring();
    private final Node diamond = Signs.diamond();
    private final Node hollow = Signs.hollowDiamond();
    private final Node footRing = Signs.ring();
    private final Node cross = Signs.cross();
    private Size size = Size.LARGE;
    private TagFigures figures;

    TagView(TagFigures figures) {
        this.figures = figures;
        getStyleClass().add("tag");
        outline.getStyleClass().add("tag-outline");
        shadow.getStyleClass().add("tag-shadow");
        hole.getStyleClass().add("tag-hole");
        swipe.getStyleClass().add("fill-marker");
        dots.getStyleClass().add("tag-dots");
        getChildren()
                .addAll(
                        shadow, outline, hole, name, place, swipe, reading, dots, foot, read, ring, diamond, hollow,
                        footRing, cross);
        getChildren().forEach(n -> n.setManaged(false));
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TEXT);
        setOnMousePressed(e -> requestFocus());
        show(figures, Size.LARGE);
    }

    private static Text text(Faces face, double size, String styleClass) {
        Text text = new Text();
        text.setFont(face.at(size));
        text.getStyleClass().add(styleClass);
        text.setTextOrigin(VPos.BASELINE);
        return text;
    }

    TagFigures figures() {
        return figures;
    }

    Size size() {
        return size;
    }

    @Override
    public String words() {
        String state = size.isStub() ? "" : footText();
        String point = figures.check().function().words() + ", " + WORDS.say("test-point");
        return figures.state() == TagFigures.State.MOVED ? WORDS.say("moved") + ", " + point : state + ", " + point;
    }

    /** Shows other figures, perhaps in another size. */
    void show(TagFigures next, Size nextSize) {
        boolean resized = nextSize != size || outline.getPoints().isEmpty();
        figures = next;
        size = nextSize;
        setAccessibleText(next.spoken());
        for (TagFigures.State state : TagFigures.State.values()) {
            pseudoClassStateChanged(pseudo(state), next.state() == state);
        }
        if (resized) {
            reshape();
        }
        if (size.isStub()) {
            showStub();
        } else {
            showWhole();
        }
    }

    private static PseudoClass pseudo(TagFigures.State state) {
        return PseudoClass.getPseudoClass(
                state.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
    }

    private void reshape() {
        double w = size.width;
        double h = size.height;
        double cut = size.isStub() ? STUB_CUT : CUT;
        outline.getPoints().setAll(0.0, cut, cut, 0.0, w - cut, 0.0, w, cut, w, h, 0.0, h);
        shadow.getPoints().setAll(2.0, cut, cut, 3.0, w - cut, 3.0, w + 1, cut + 3, w + 1, h + 3, 2.0, h + 3);
        hole.setVisible(!size.isStub());
        hole.setCenterX(w / 2);
        hole.setCenterY(8);
        setMinSize(w, h);
        setPrefSize(w, h);
        setMaxSize(w, h);
    }

    private void showStub() {
        boolean told = size == Size.WIDE_STUB;
        name.setText(figures.name());
        set(name, Faces.TABLE.at(15));
        name.setX(told ? 24 : 19);
        name.setY(18.5);
        reading.setVisible(told);
        boolean working = figures.state() == TagFigures.State.WORKING;
        boolean old = working || figures.state() == TagFigures.State.OUT_OF_DATE;
        reading.setText(!told ? "" : working ? said() : figures.shows());
        set(reading, fitting(Faces.TABLE_FIGURE, 15, reading.getText(), size.width - 64));
        reading.setX(size.width - 6 - width(reading));
        reading.setY(18.5);
        place.setVisible(false);
        swipe.setVisible(false);
        // a stub has no foot to say it in
        Text under = told ? reading : name;
        dots.setVisible(old);
        dots.setX(under.getX());
        dots.setY(21);
        dots.setWidth(width(under));
        dots.setHeight(2);
        foot.setVisible(false);
        read.setVisible(false);
        footRing.setVisible(false);
        cross.setVisible(false);
        sign(11, 13);
        // the ring alone would say that it is as healthy
        ring.setVisible(ring.isVisible() && !old);
    }

    private void showWhole() {
        double scale = size == Size.LARGE ? 1 : 0.84;
        double middle = size == Size.LARGE ? 57 : 47;
        double low = size == Size.LARGE ? 82 : 68;
        name.setText(figures.name());
        set(name, fitting(Faces.TABLE_FIGURE, 16, figures.name(), size.width - 24));
        name.setX(10);
        name.setY(size == Size.LARGE ? 29 : 26);
        double room = size.width - 18 - width(name) - 8;
        place.setVisible(room > 24);
        place.setText(cut(figures.place(), place.getFont(), room));
        place.setX(size.width - 10 - width(place));
        place.setY(name.getY());
        reading.setVisible(true);
        reading.setText(said());
        Faces face = figures.state() == TagFigures.State.MOVED ? Faces.SHOUT : Faces.WORDS;
        set(reading, fitting(face, 25 * scale, reading.getText(), size.width - TEXT_X - 14));
        reading.setX(TEXT_X);
        reading.setY(middle);
        boolean moved = figures.state() == TagFigures.State.MOVED;
        swipe.setVisible(moved);
        swipe.setX(TEXT_X - 6);
        swipe.setY(middle - 20 * scale);
        swipe.setWidth(width(reading) + 12);
        swipe.setHeight(25 * scale);
        boolean old = figures.state() == TagFigures.State.OUT_OF_DATE;
        dots.setVisible(old);
        dots.setX(TEXT_X);
        dots.setY(middle + 4);
        dots.setWidth(width(reading));
        dots.setHeight(2);
        sign(SIGN_X, middle - 8 * scale);
        showFoot(low);
    }

    private void showFoot(double y) {
        foot.setVisible(true);
        foot.setText(footText());
        boolean healthyBeside = !figures.healthy().isEmpty()
                && (figures.state() == TagFigures.State.MOVED || figures.state() == TagFigures.State.TOO_CLOSE);
        footRing.setVisible(healthyBeside);
        footRing.relocate(SIGN_X - 6, y - 11);
        boolean wasRead = !figures.read().isEmpty();
        read.setVisible(wasRead);
        cross.setVisible(wasRead);
        read.setText(figures.read());
        set(read, fitting(Faces.TABLE_FIGURE, 15, figures.read(), size.width / 2 - 14));
        read.setX(size.width - 9 - width(read));
        read.setY(y);
        cross.relocate(read.getX() - 17, y - 11);
        double room = (wasRead ? read.getX() - 20 : size.width - 8) - TEXT_X;
        boolean apart = figures.state() == TagFigures.State.TOO_CLOSE && width(foot) > room;
        // "too" alone says nothing; the hollow sign says all of it
        foot.setText(apart ? figures.healthy() : cut(foot.getText(), foot.getFont(), room));
        foot.setX(TEXT_X);
        foot.setY(y);
    }

    /** What stands large on the tag. */
    private String said() {
        return switch (figures.state()) {
            case AS_HEALTHY, MOVED, TOO_CLOSE, OUT_OF_DATE -> figures.shows();
            case OUT_OF_REACH -> WORDS.say("not-reached");
            case WORKING -> WORDS.say("working");
            case UNKNOWN -> "–";
        };
    }

    private String footText() {
        return switch (figures.state()) {
            case AS_HEALTHY -> WORDS.say("as-healthy");
            case MOVED -> figures.healthy();
            case TOO_CLOSE -> figures.healthy() + "  " + WORDS.say("too-close");
            case OUT_OF_REACH -> WORDS.say("cannot-reach");
            case WORKING -> figures.shows().isEmpty() ? "" : WORDS.say("was", figures.shows());
            case OUT_OF_DATE -> WORDS.say("out-of-date");
            case UNKNOWN -> WORDS.say("no-answer");
        };
    }

    private void sign(double x, double y) {
        TagFigures.State state = figures.state();
        boolean supposed = state == TagFigures.State.MOVED;
        boolean close = state == TagFigures.State.TOO_CLOSE;
        diamond.setVisible(supposed);
        hollow.setVisible(close);
        ring.setVisible(!supposed && !close);
        ring.relocate(x - 6, y - 6);
        diamond.relocate(x - 6.5, y - 6.5);
        hollow.relocate(x - 7, y - 7);
    }

    /** A typeface that stays the same must not make its text anew. */
    private static void set(Text text, Font font) {
        if (!font.equals(text.getFont())) {
            text.setFont(font);
        }
    }

    /** The face at a size, or as much smaller as a text needs to fit. */
    private static Font fitting(Faces face, double size, String text, double room) {
        Font font = face.at(size);
        double wide = width(text, font);
        return wide <= room ? font : face.at(Math.max(11, size * room / wide));
    }

    private static String cut(String text, Font font, double room) {
        if (width(text, font) <= room) {
            return text;
        }
        String shorter = text;
        while (shorter.contains(" ") && width(shorter, font) > room) {
            shorter = DANGLING.matcher(shorter.substring(0, shorter.lastIndexOf(' ')))
                    .replaceFirst("");
        }
        return width(shorter, font) <= room && !ALONE.matcher(shorter).matches() ? shorter : "";
    }

    private static double width(Text text) {
        return width(text.getText(), text.getFont());
    }

    private static double width(String text, Font font) {
        if (text.isEmpty()) {
            return 0;
        }
        Text measure = new Text(text);
        measure.setFont(font);
        return measure.getLayoutBounds().getWidth();
    }
}
