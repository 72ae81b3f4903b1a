package fusetale.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds room for a text beside a symbol of a finished drawing. */
final class Clearing {
    private static final double REACH = 150;
    private static final double STEP = 4;

    /** Room between a text and everything else [px]. */
    private static final double AIR = 3;

    private final Box sheet;
    private final List<Box> sections = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();

    Clearing(DrawingPlan plan) {
        sheet = new Box(0, 0, plan.width(), plan.height()).grown(-AIR);
        plan.symbols().forEach(p -> {
            taken.addAll(p.solids());
            p.labels().forEach(l -> taken.add(l.bounds()));
        });
        for (DrawnNet net : plan.nets()) {
            net.wires().forEach(w -> taken.add(w.bounds()));
            net.flags().forEach(f -> taken.add(f.bounds()));
        }
        for (DrawnPoint point : plan.points()) {
            taken.add(DrawnPoint.ring(point.red()));
            Spot black = point.black();
            if (black != null) {
                taken.add(DrawnPoint.ring(black));
            }
        }
        plan.sections().forEach(s -> {
            sections.add(s.bounds());
            taken.add(s.headed());
            taken.addAll(s.frame());
        });
    }

    /** Something more to keep off. */
    void keepOff(Box box) {
        taken.add(box);
    }

    /**
     * The free place nearest to a box, in the section that the box is in as long as there is one; empty where there is none within
     * reach.
     *
     * @param beside what the text belongs to
     */
    Optional<Box> nearest(Box beside, double width, double height) {
        return sections.stream()
                .filter(s -> s.holds(beside.middleX(), beside.middleY()))
                .findFirst()
                .flatMap(s -> nearest(beside, width, height, s))
                .or(() -> nearest(beside, width, height, sheet));
    }

    private Optional<Box> nearest(Box beside, double width, double height, Box within) {
        Box window = beside.grown(REACH + Math.max(width, height));
        List<Box> around = taken.stream().filter(window::meets).toList();
        Box best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double y = beside.y() - REACH - height; y <= beside.bottom() + REACH; y += STEP) {
            for (double x = beside.x() - REACH - width; x <= beside.right() + REACH; x += STEP) {
                Box box = new Box(x, y, width, height);
                double far = distance(beside, box);
                if (far < least && far < REACH && within.holds(box)) {
                    Box wide = box.grown(AIR);
                    if (around.stream().noneMatch(wide::meets)) {
                        least = far;
                        best = box;
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Apart from each other, with a small weight on standing level or in one line with it. */
    private static double distance(Box one, Box two) {
        double dx = Math.max(0, Math.max(two.x() - one.right(), one.x() - two.right()));
        double dy = Math.max(0, Math.max(two.y() - one.bottom(), one.y() - two.bottom()));
        double aside = Math.abs(one.middleX() - two.middleX()) + Math.abs(one.middleY() - two.middleY());
        return Math.hypot(dx, dy) + 0.12 * aside;
    }
}
