package fusetale.report.drawing;

import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A drawing in words, a line a part, for whoever cannot see it. */
public final class DrawingText {
    private static final Words WORDS = Words.of(DrawingText.class);

    /** More neighbours than this are told as the name of their net. */
    private static final int MOST_NEIGHBOURS = 3;

    private final DrawingPlan plan;
    private final Marks marks;
    private final Map<String, List<String>> partsOn = new LinkedHashMap<>();
    private final Map<String, Boolean> grounds = new LinkedHashMap<>();

    /** Of a drawing with its marks. */
    public DrawingText(DrawingPlan plan, Marks marks) {
        this.plan = plan;
        this.marks = marks;
        plan.symbols()
                .forEach(p -> p.ports().values().forEach(port -> {
                    List<String> on = partsOn.computeIfAbsent(port.net(), n -> new ArrayList<>());
                    if (!on.contains(p.name())) {
                        on.add(p.name());
                    }
                }));
        plan.nets()
                .forEach(n -> grounds.put(
                        n.net(), !n.flags().isEmpty() && n.flags().stream().allMatch(Flag::ground)));
    }

    /** Every part and pin of a connector that is marked, then all the others, section by section. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        plan.symbols().filter(p -> marks.said().containsKey(p.name())).forEach(p -> lines.add(describe(p)));
        List<String> told = new ArrayList<>(marks.said().keySet());
        for (Section section : plan.sections()) {
            lines.add(WORDS.say("text.section", section.heading()));
            plan.symbols()
                    .filter(p -> section.parts().contains(p.name()) && !told.contains(p.name()))
                    .forEach(p -> {
                        told.add(p.name());
                        lines.add(describe(p));
                    });
        }
        plan.symbols().filter(p -> !told.contains(p.name())).forEach(p -> lines.add(describe(p)));
        return lines;
    }

    /** {@code F1, fuse, 6 A slow, between J1.1 and BR1: 25 A fitted, drawing says 6 A}. */
    public String describe(DrawnPart part) {
        StringBuilder text = new StringBuilder(part.name() + ", " + part.kind());
        if (!part.value().isEmpty()) {
            text.append(", ").append(part.value());
        }
        List<Map.Entry<String, Port>> ports = List.copyOf(part.ports().entrySet());
        if (ports.size() == 2) {
            text.append(", ")
                    .append(WORDS.say("text.between", neighbours(part, ports.get(0)), neighbours(part, ports.get(1))));
        } else {
            ports.forEach(p -> text.append("; ").append(WORDS.say("text.pin", p.getKey(), neighbours(part, p))));
        }
        List<String> said = marks.said().getOrDefault(part.name(), List.of());
        return said.isEmpty() ? text.toString() : text + ": " + String.join(", ", said);
    }

    private String neighbours(DrawnPart part, Map.Entry<String, Port> port) {
        String net = port.getValue().net();
        if (grounds.getOrDefault(net, false)) {
            return WORDS.say("text.ground", net);
        }
        List<String> others = partsOn.getOrDefault(net, List.of()).stream()
                .filter(n -> !n.equals(part.name()))
                .toList();
        return others.isEmpty() || others.size() > MOST_NEIGHBOURS ? net : String.join(", ", others);
    }
}
