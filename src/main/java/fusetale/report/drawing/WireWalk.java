package fusetale.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

/** Walks along the wires of one net. Where a net goes on by its flags, it walks from a place to a flag, and on from another. */
final class WireWalk {
    private final Set<Spot> spots = new LinkedHashSet<>();
    private final List<Segment> pieces = new ArrayList<>();
    private final Set<Spot> flags = new LinkedHashSet<>();
    private final DrawnNet net;

    WireWalk(DrawnNet net) {
        this.net = net;
        net.flags().forEach(f -> flags.add(new Spot(f.x(), f.y())));
    }

    /** The wires from one place to the other as strokes of the highlighter. */
    List<Stroke> between(Spot from, Spot to) {
        if (from.equals(to)) {
            return List.of();
        }
        split(from, to);
        List<Spot> way = way(from, Set.of(to));
        if (!way.isEmpty()) {
            return List.of(stroke(way));
        }
        List<Stroke> strokes = new ArrayList<>();
        for (Spot end : List.of(from, to)) {
            List<Spot> toFlag = way(end, flags);
            if (toFlag.size() > 1) {
                strokes.add(stroke(toFlag));
            }
        }
        return strokes;
    }

    /** Cuts the wires where something lies on them. */
    private void split(Spot from, Spot to) {
        spots.add(from);
        spots.add(to);
        spots.addAll(flags);
        spots.addAll(net.joints());
        net.wires().forEach(w -> {
            spots.add(new Spot(w.x1(), w.y1()));
            spots.add(new Spot(w.x2(), w.y2()));
        });
        for (Segment wire : net.wires()) {
            List<Spot> on = spots.stream()
                    .filter(s -> wire.holds(s.x(), s.y()))
                    .sorted(Comparator.comparingDouble(Spot::x).thenComparingDouble(Spot::y))
                    .toList();
            for (int i = 1; i < on.size(); i++) {
                pieces.add(new Segment(
                        on.get(i - 1).x(),
                        on.get(i - 1).y(),
                        on.get(i).x(),
                        on.get(i).y()));
            }
        }
    }

    /** The shortest way to any of some places; empty where there is none. */
    private List<Spot> way(Spot from, Set<Spot> goals) {
        Map<Spot, Double> lengths = new HashMap<>(Map.of(from, 0.0));
        Map<Spot, Spot> before = new HashMap<>();
        Set<Spot> done = new HashSet<>();
        PriorityQueue<Spot> queue = new PriorityQueue<>(
                Comparator.comparingDouble((Spot s) -> lengths.getOrDefault(s, Double.POSITIVE_INFINITY))
                        .thenComparingDouble(Spot::x)
                        .thenComparingDouble(Spot::y));
        queue.add(from);
        while (!queue.isEmpty()) {
            Spot spot = queue.poll();
            if (!done.add(spot)) {
                continue;
            }
            if (goals.contains(spot)) {
                return back(spot, before);
            }
            for (Segment piece : pieces) {
                Spot one = new Spot(piece.x1(), piece.y1());
                Spot two = new Spot(piece.x2(), piece.y2());
                Spot next = one.equals(spot) ? two : one;
                boolean touches = one.equals(spot) || two.equals(spot);
                double length = lengths.getOrDefault(spot, 0.0) + piece.length();
                if (touches && length < lengths.getOrDefault(next, Double.POSITIVE_INFINITY)) {
                    lengths.put(next, length);
                    before.put(next, spot);
                    queue.remove(next);
                    queue.add(next);
                }
            }
        }
        return List.of();
    }

    private static List<Spot> back(Spot end, Map<Spot, Spot> before) {
        List<Spot> way = new ArrayList<>(List.of(end));
        Spot at = before.get(end);
        while (at != null) {
            way.add(0, at);
            at = before.get(at);
        }
        return way;
    }

    private static Stroke stroke(List<Spot> way) {
        List<Outline.Step> steps = new ArrayList<>();
        steps.add(new Outline.Move(way.get(0).x(), way.get(0).y()));
        way.stream().skip(1).forEach(s -> steps.add(new Outline.Line(s.x(), s.y())));
        return new Stroke(new Outline(steps), Weight.SWIPE, Tone.MARKER_FILL);
    }
}
