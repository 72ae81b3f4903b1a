package fusetale.circuit;

import fusetale.quantity.Spelling;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Looks up what a drawing names: that everything stands somewhere, nothing twice, no two things in one place. */
final class DrawnNames {
    private final Draft draft;
    private final Findings findings;
    private final Set<String> parts = new LinkedHashSet<>();
    private final Set<String> others = new LinkedHashSet<>();

    DrawnNames(Draft draft, Findings findings) {
        this.draft = draft;
        this.findings = findings;
        draft.parts().forEach(p -> parts.add(p.name()));
        others.add(Mains.NAME);
        draft.points().forEach(p -> others.add(p.name()));
        for (Declared<Connector> each : draft.connectors()) {
            Connector connector = each.value();
            if (connector != null) {
                connector.pins().forEach(pin -> others.add(each.name() + "." + pin.label()));
            }
        }
    }

    /** Reports what does not fit. */
    void check() {
        Set<String> placed = places();
        sections();
        if (draft.drawing().isEmpty()) {
            return; // the missing key was reported
        }
        draft.parts().stream()
                .filter(p -> !placed.contains(p.name()))
                .forEach(p -> findings.error(
                        p.place(),
                        p.name(),
                        "this part has no place on the drawing",
                        "drawing: {" + p.name() + ": {square: [column, row]}}",
                        ""));
    }

    private Set<String> places() {
        Map<Square, String> taken = new HashMap<>();
        Set<String> placed = new LinkedHashSet<>();
        for (Declared<Stand> each : draft.drawing()) {
            String key = "drawing " + each.name();
            if (!parts.contains(each.name()) && !others.contains(each.name())) {
                List<String> known = new ArrayList<>(parts);
                known.addAll(others);
                findings.error(
                        each.place(),
                        key,
                        each.name().indexOf('.') < 0 ? "no part has this name" : "no connector has this pin",
                        "",
                        Spelling.nearestIfAny(each.name(), known));
            }
            if (!placed.add(each.name())) {
                findings.error(
                        each.place(),
                        key,
                        "this " + (parts.contains(each.name()) ? "part" : "name") + " is placed a second time");
            }
            Stand stand = each.value();
            String other = stand == null ? null : taken.putIfAbsent(stand.square(), each.name());
            if (stand != null && other != null) {
                Square square = stand.square();
                findings.error(
                        each.place(),
                        key,
                        "square [" + square.column() + ", " + square.row() + "] is already taken by " + other);
            }
        }
        return placed;
    }

    private void sections() {
        Map<String, Place> headings = new HashMap<>();
        List<SectionArea> before = new ArrayList<>();
        for (Declared<SectionArea> each : draft.sections()) {
            Place earlier = headings.putIfAbsent(each.name(), each.place());
            if (earlier != null) {
                findings.error(
                        each.place(), "sections", "a section '" + each.name() + "' stands already at " + earlier);
            }
            SectionArea section = each.value();
            if (section == null) {
                continue;
            }
            before.stream()
                    .filter(section::meets)
                    .forEach(other -> findings.error(
                            each.place(),
                            "sections",
                            "the section '" + each.name() + "' overlaps '" + other.heading() + "'"));
            before.add(section);
        }
    }
}
