package fusetale.desk.kit;

import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;

/**
 * The product's signs as small nodes around their own middle: ring healthy, solid diamond supposed, hollow diamond too close to
 * tell, cross what you read, hatch above rating. Their colours come from the style sheet.
 */
public final class Signs {
    private static final double RING_RADIUS = 5;
    private static final double DIAMOND_RADIUS = 6.5;
    private static final double CROSS_RADIUS = 5;

    private Signs() {}

    /** A ring: healthy. */
    public static Node ring() {
        Circle circle = new Circle(RING_RADIUS);
        circle.getStyleClass().add("sign-ring");
        return circle;
    }

    /** A solid diamond: supposed. */
    public static Node diamond() {
        return diamond(DIAMOND_RADIUS, "sign-diamond");
    }

    /** A hollow diamond: supposed, but too close to tell. */
    public static Node hollowDiamond() {
        return diamond(DIAMOND_RADIUS - 0.5, "sign-hollow-diamond");
    }

    /** A cross: what you read. */
    public static Node cross() {
        Line one = new Line(-CROSS_RADIUS, -CROSS_RADIUS, CROSS_RADIUS, CROSS_RADIUS);
        Line two = new Line(-CROSS_RADIUS, CROSS_RADIUS, CROSS_RADIUS, -CROSS_RADIUS);
        one.getStyleClass().add("sign-cross");
        two.getStyleClass().add("sign-cross");
        return new Group(one, two);
    }

    /** A box of slanting stripes: above its rating, danger. */
    public static Region hatch(double width, double height) {
        Region box = new Region();
        box.getStyleClass().add("hatch");
        box.setMinSize(width, height);
        box.setPrefSize(width, height);
        box.setMaxSize(width, height);
        return box;
    }

    private static Node diamond(double radius, String styleClass) {
        Polygon shape = new Polygon(0, -radius, radius, 0, 0, radius, -radius, 0);
        shape.getStyleClass().add(styleClass);
        return shape;
    }
}
