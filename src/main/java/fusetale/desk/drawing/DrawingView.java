package fusetale.desk.drawing;

import fusetale.report.drawing.Box;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.DrawnPart;
import fusetale.report.drawing.DrawnPoint;
import fusetale.report.drawing.Marks;
import fusetale.report.drawing.Section;
import fusetale.report.drawing.Stroke;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.transform.Scale;
import javafx.scene.transform.Translate;

/**
 * The drawing of a board: parts that can have the keyboard, wires, test points, and marks over them. It can be zoomed, panned,
 * fitted and searched.
 */
public final class DrawingView extends Region {
    private static final double STEP = 1.25;
    private static final double PAN = 80;
    private static final double READABLE = 0.6;
    /** Below this labels are too small to read, and headings larger than drawn: they would touch. */
    private static final double FAR = READABLE;

    private static final double MOST_FIT = 1.25;

    private final Group sheet = new Group();
    private final Group sectionLayer = new Group();
    private final Group swipes = new Group();
    /** What the highlighter lays under captions: seen with them. */
    private final Group grounds = new Group();

    private final Group ink = new Group();
    private final Group marks = new Group();
    private final Group captions = new Group();
    private final Group covers = new Group();
    private final Scale scale = new Scale(1, 1, 0, 0);
    private final Translate translate = new Translate();
    private final Map<String, PartNode> parts = new LinkedHashMap<>();
    private final Map<String, SectionNode> sections = new LinkedHashMap<>();
    private final Map<String, DrawnPoint> points = new HashMap<>();
    private Viewport viewport = new Viewport(1, 0, 0);
    private Box whole = new Box(0, 0, 1, 1);
    private Optional<Box> shown = Optional.empty();
    private boolean placed;
    private boolean byHand;
    private Consumer<String> chosen = part -> {};
    private Consumer<String> upward = part -> {};
    private Runnable moved = () -> {};
    private Runnable looked = () -> {};
    private double dragX;
    private double dragY;

    /** An empty sheet. */
    public DrawingView() {
        getStyleClass().add("drawing");
        getStylesheets().add(DrawingView.class.getResource("drawing.css").toExternalForm());
        swipes.setMouseTransparent(true);
        grounds.setMouseTransparent(true);
        marks.setMouseTransparent(true);
        captions.setMouseTransparent(true);
        sheet.getChildren().addAll(swipes, grounds, ink, marks, captions, covers, sectionLayer);
        sheet.getTransforms().addAll(translate, scale);
        getChildren().add(sheet);
        Rectangle clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        addEventHandler(ScrollEvent.SCROLL, this::scrolled);
        addEventHandler(MouseEvent.MOUSE_PRESSED, e -> {
            dragX = e.getX();
            dragY = e.getY();
        });
        addEventHandler(MouseEvent.MOUSE_DRAGGED, e -> {
            take(viewport.moved(e.getX() - dragX, e.getY() - dragY));
            dragX = e.getX();
            dragY = e.getY();
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        widthProperty().addListener((of, before, now) -> resized(now.doubleValue() - before.doubleValue(), 0));
        heightProperty().addListener((of, before, now) -> resized(0, now.doubleValue() - before.doubleValue()));
    }

    /** Told which part was pressed. */
    public void onChosen(Consumer<String> listener) {
        chosen = listener;
    }

    /** Told from which part one goes back up to the tags. */
    public void onUpward(Consumer<String> listener) {
        upward = listener;
    }

    /** Told when the sheet moves under the tags. */
    public void onMoved(Runnable listener) {
        moved = listener;
    }

    /** Told when another section is looked at. */
    public void onLooked(Runnable listener) {
        looked = listener;
    }

    /**
     * Shows a board.
     *
     * @param plan its drawing
     * @param spoken what a screen reader says of a part
     */
    public void show(DrawingPlan plan, Function<DrawnPart, String> spoken) {
        parts.clear();
        sections.clear();
        points.clear();
        sectionLayer.getChildren().clear();
        ink.getChildren().clear();
        marks.getChildren().clear();
        captions.getChildren().clear();
        swipes.getChildren().clear();
        grounds.getChildren().clear();
        covers.getChildren().clear();
        whole = new Box(0, 0, plan.width(), plan.height());
        Map<String, Section> sectionOf = new HashMap<>();
        for (Section section : plan.sections()) {
            section.parts().forEach(p -> sectionOf.put(p, section));
            SectionNode node = new SectionNode(section, () -> look(Optional.of(section.bounds())), this::fold);
            sections.put(section.heading(), node);
            sectionLayer.getChildren().add(node);
        }
        plan.nets().forEach(n -> {
            Node net = Nodes.net(n);
            net.setMouseTransparent(true);
            ink.getChildren().add(net);
        });
        plan.symbols().forEach(p -> {
            PartNode node = new PartNode(p, spoken.apply(p), () -> chosen.accept(p.name()));
            node.focusedProperty().addListener((property, before, now) -> {
                if (now) {
                    reveal(p.extent());
                }
            });
            parts.put(p.name(), node);
            ink.getChildren().add(node);
        });
        plan.points().forEach(p -> {
            points.put(p.name(), p);
            Node node = Nodes.point(p);
            node.setMouseTransparent(true);
            ink.getChildren().add(node);
        });
        shown = Optional.empty();
        placed = false;
        byHand = false;
        requestLayout();
    }

    /** Whether nothing is drawn yet. */
    public boolean empty() {
        return parts.isEmpty();
    }

    /** Says something else of every part. */
    public void say(Function<DrawnPart, String> spoken) {
        parts.values().forEach(p -> p.say(spoken.apply(p.part())));
    }

    /** Marks what is supposed and what follows: swipes behind the ink, strokes and figures over it. */
    public void mark(Marks what) {
        Map<Boolean, List<Stroke>> filled = what.swipes().stream().collect(Collectors.partitioningBy(Stroke::filled));
        swipes.getChildren().setAll(Nodes.strokes(filled.getOrDefault(false, List.of())));
        grounds.getChildren().setAll(Nodes.strokes(filled.getOrDefault(true, List.of())));
        marks.getChildren().setAll(Nodes.strokes(what.strokes()));
        captions.getChildren().setAll(what.labels().stream().map(Nodes::label).toList());
    }

    /** Folds a section, or unfolds it: its parts are covered and lose the keyboard. */
    private void fold(SectionNode node) {
        boolean folded = covers.getChildren().remove(node.cover());
        if (!folded) {
            covers.getChildren().add(node.cover());
        }
        for (String part : node.section().parts()) {
            PartNode inside = parts.get(part);
            if (inside != null) {
                inside.setFocusTraversable(folded);
                if (!folded && inside.isFocused()) {
                    node.requestFocus();
                }
            }
        }
    }

    /** Whether a section is folded. */
    public boolean folded(String heading) {
        SectionNode node = sections.get(heading);
        return node != null && covers.getChildren().contains(node.cover());
    }

    /** Folds the section of a heading, or unfolds it. */
    public void fold(String heading) {
        SectionNode node = sections.get(heading);
        if (node != null) {
            fold(node);
        }
    }

    /** Fits the whole sheet. */
    public void fit() {
        look(Optional.empty());
    }

    /** Shows the section of a part where the part is not seen, or too small to read. */
    public void lookAtPart(String part) {
        PartNode node = parts.get(part);
        if (node == null || getWidth() == 0) {
            return;
        }
        Box box = node.part().extent();
        boolean seen = viewport.x(box.x()) >= 0
                && viewport.x(box.right()) <= getWidth()
                && viewport.y(box.y()) >= 0
                && viewport.y(box.bottom()) <= getHeight();
        if (!seen || viewport.scale() < READABLE) {
            sectionOf(part).ifPresentOrElse(this::lookAtSection, () -> reveal(box));
        }
    }

    /** The section that is shown; empty for the whole sheet or a piece of it. */
    public Optional<String> shownSection() {
        return shown.flatMap(box -> sections.values().stream()
                .map(SectionNode::section)
                .filter(s -> s.bounds().equals(box))
                .map(Section::heading)
                .findFirst());
    }

    /** Shows one section, or the whole sheet. */
    public void look(Optional<Box> box) {
        shown = box;
        byHand = false;
        go(looking());
        looked.run();
    }

    /** Headings of the sections, in the order of the sheet. */
    public List<String> sections() {
        return List.copyOf(sections.keySet());
    }

    /** Shows the section of a heading. */
    public void lookAtSection(String heading) {
        SectionNode node = sections.get(heading);
        if (node != null) {
            look(Optional.of(node.section().bounds()));
        }
    }

    /** The heading of the section a part stands in. */
    public Optional<String> sectionOf(String part) {
        return sections.values().stream()
                .map(SectionNode::section)
                .filter(s -> s.parts().contains(part))
                .map(Section::heading)
                .findFirst();
    }

    /** Larger or smaller around the middle. */
    public void zoom(boolean in) {
        take(viewport.zoomed(in ? STEP : 1 / STEP, getWidth() / 2, getHeight() / 2));
    }

    /** Puts the keyboard on a part, and shows it, unfolding its section; gives whether there is one. */
    public boolean focus(String part) {
        PartNode node = parts.get(part);
        if (node != null) {
            sectionOf(part).filter(this::folded).ifPresent(this::fold);
            node.requestFocus();
            reveal(node.part().extent());
        }
        return node != null;
    }

    /** Puts the keyboard on the part nearest to a test point that is not folded away. */
    public void focusNearest(String point) {
        DrawnPoint at = points.get(point);
        if (at == null) {
            return;
        }
        parts.values().stream()
                .filter(Node::isFocusTraversable)
                .min(Comparator.comparingDouble(p -> Math.hypot(
                        p.part().bounds().middleX() - at.red().x(),
                        p.part().bounds().middleY() - at.red().y())))
                .ifPresent(p -> focus(p.part().name()));
    }

    /** How far a part is from a test point on the sheet [px]; infinite where either is not there. */
    public double distance(String part, String point) {
        PartNode node = parts.get(part);
        DrawnPoint at = points.get(point);
        return node == null || at == null
                ? Double.POSITIVE_INFINITY
                : Math.hypot(
                        node.part().bounds().middleX() - at.red().x(),
                        node.part().bounds().middleY() - at.red().y());
    }

    /** The part that has the keyboard. */
    public Optional<String> focused() {
        return parts.values().stream()
                .filter(Node::isFocused)
                .map(p -> p.part().name())
                .findFirst();
    }

    /** Where a test point is in the view; empty where it is not on the sheet. */
    public Optional<Point2D> point(String name) {
        return Optional.ofNullable(points.get(name))
                .map(p ->
                        new Point2D(viewport.x(p.red().x()), viewport.y(p.red().y())));
    }

    /** Where a test point is on the sheet, for the order of tags. */
    public double sheetX(String name) {
        DrawnPoint point = points.get(name);
        return point == null ? 0 : point.red().x();
    }

    /** Radius of a point's ring in the view [px]. */
    public double pointRadius() {
        return DrawnPoint.RADIUS * viewport.scale();
    }

    private Viewport fitting(Box box) {
        return Viewport.showing(box, getWidth(), getHeight(), MOST_FIT);
    }

    /** The whole sheet however small, a piece of it so that it can be read. */
    private Viewport looking() {
        return shown.map(box -> Viewport.reading(box, whole, getWidth(), getHeight(), READABLE, MOST_FIT))
                .orElseGet(() -> fitting(whole));
    }

    private void reveal(Box box) {
        if (getWidth() > 0) {
            take(viewport.revealing(box, getWidth(), getHeight()));
        }
    }

    private void go(Viewport next) {
        viewport = next;
        scale.setX(next.scale());
        scale.setY(next.scale());
        translate.setX(next.left());
        translate.setY(next.top());
        boolean far = next.scale() < FAR;
        captions.setVisible(!far);
        grounds.setVisible(!far);
        pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("far"), far);
        sections.values().forEach(s -> s.showAt(next.scale()));
        moved.run();
    }

    /** Of a sheet too large to be read as a whole: its first section with a test point that can be. */
    private Optional<Box> begin() {
        List<Box> pointed = sections.values().stream()
                .map(s -> s.section().bounds())
                .filter(b -> points.values().stream()
                        .anyMatch(p -> b.holds(p.red().x(), p.red().y())))
                .toList();
        return pointed.stream()
                .filter(b -> fitting(b).scale() >= READABLE)
                .findFirst()
                .or(() -> pointed.stream().findFirst());
    }

    /** The section looked at, or the whole sheet, fits anew when the paper changes its size; what a hand has moved keeps its middle. */
    private void resized(double wider, double higher) {
        if (placed && getWidth() > 0 && getHeight() > 0) {
            go(byHand ? viewport.moved(wider / 2, higher / 2) : looking());
        }
    }

    /** Somebody moves the sheet: it stays so until a section or the whole is looked at. */
    private void take(Viewport next) {
        byHand |= !next.equals(viewport);
        go(next);
    }

    @Override
    protected void layoutChildren() {
        if (!placed && getWidth() > 0) {
            placed = true;
            if (shown.isEmpty() && fitting(whole).scale() < READABLE) {
                shown = begin();
            }
            go(looking());
            looked.run();
        } else {
            moved.run();
        }
    }

    private void scrolled(ScrollEvent event) {
        if (event.isInertia()) {
            return;
        }
        if (event.isControlDown()) {
            take(viewport.zoomed(event.getDeltaY() > 0 ? STEP : 1 / STEP, event.getX(), event.getY()));
        } else {
            take(viewport.moved(event.getDeltaX(), event.getDeltaY()));
        }
        event.consume();
    }

    private void key(KeyEvent event) {
        Optional<PartNode> at = parts.values().stream().filter(Node::isFocused).findFirst();
        KeyCode code = event.getCode();
        if (event.isShiftDown() && code.isArrowKey()) {
            take(viewport.moved(
                    code == KeyCode.LEFT ? PAN : code == KeyCode.RIGHT ? -PAN : 0,
                    code == KeyCode.UP ? PAN : code == KeyCode.DOWN ? -PAN : 0));
            event.consume();
        } else if (code.isArrowKey() && at.isPresent()) {
            Optional<PartNode> next = next(at.get(), code);
            if (next.isPresent()) {
                next.get().requestFocus();
            } else if (code == KeyCode.UP) {
                upward.accept(at.get().part().name());
            }
            event.consume();
        } else if ((code == KeyCode.ENTER || code == KeyCode.SPACE) && at.isPresent()) {
            chosen.accept(at.get().part().name());
            event.consume();
        }
    }

    /** The nearest part in a direction that is not folded away; what lies aside counts twice. */
    private Optional<PartNode> next(PartNode from, KeyCode code) {
        Box here = from.part().bounds();
        return parts.values().stream()
                .filter(p -> p != from
                        && p.isFocusTraversable()
                        && ahead(here, p.part().bounds(), code) > 4)
                .min(Comparator.comparingDouble(p -> {
                    double along = ahead(here, p.part().bounds(), code);
                    double aside = code == KeyCode.LEFT || code == KeyCode.RIGHT
                            ? p.part().bounds().middleY() - here.middleY()
                            : p.part().bounds().middleX() - here.middleX();
                    return along + 2 * Math.abs(aside);
                }));
    }

    private static double ahead(Box here, Box there, KeyCode code) {
        return switch (code) {
            case LEFT -> here.middleX() - there.middleX();
            case RIGHT -> there.middleX() - here.middleX();
            case UP -> here.middleY() - there.middleY();
            default -> there.middleY() - here.middleY();
        };
    }
}
