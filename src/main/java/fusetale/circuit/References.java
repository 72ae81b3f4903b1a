package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Spelling;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Looks up the names by which one place of a file speaks of another, as far as nets do not come into it. */
final class References {
    private final Draft draft;
    private final Findings findings;
    private final Map<String, Declared<Part>> parts = new LinkedHashMap<>();
    private boolean unique = true;

    References(Draft draft, Findings findings) {
        this.draft = draft;
        this.findings = findings;
        draft.parts().forEach(p -> parts.putIfAbsent(p.name(), p));
    }

    /** Whether no name stands for two things; known after {@link #check}. */
    boolean namesAreUnique() {
        return unique;
    }

    /** Reports names that are used twice and names that mean nothing. */
    void check() {
        uniqueNames();
        new DrawnNames(draft, findings).check();
        draft.settings().forEach(each -> {
            SettingDraft setting = each.value();
            if (setting != null) {
                setting(setting);
            }
        });
        stages();
        draft.parts().forEach(this::commands);
    }

    private void stages() {
        Map<String, Place> put = new HashMap<>();
        List<String> connectors = draft.connectors().stream().map(c -> c.name()).toList();
        for (Declared<StageDraft> each : draft.stages()) {
            StageDraft stage = each.value();
            if (stage == null) {
                continue;
            }
            for (Located.Text fuse : stage.fusesIn()) {
                part(fuse.text(), fuse.place(), stage.name() + " fuses in", "fuse", part -> part instanceof Fuse);
                once(put, fuse, stage.name() + " fuses in");
            }
            for (Located.Text connector : stage.pluggedIn()) {
                String key = stage.name() + " plugged in";
                if (!connectors.contains(connector.text())) {
                    unknown(connector.place(), key, connector.text(), "connector", connectors);
                }
                once(put, connector, key);
            }
        }
    }

    private void once(Map<String, Place> put, Located.Text name, String key) {
        Place earlier = put.putIfAbsent(name.text(), name.place());
        if (earlier != null) {
            findings.error(name.place(), key, name.text() + " is put in already at " + earlier);
        }
    }

    private void uniqueNames() {
        Map<String, Place> seen = new HashMap<>();
        List<Declared<?>> all = new ArrayList<>();
        all.addAll(draft.parts());
        all.addAll(draft.points());
        all.addAll(draft.connectors());
        for (Declared<?> each : all) {
            Place earlier = seen.putIfAbsent(each.name(), each.place());
            if (earlier != null) {
                unique = false;
                findings.error(each.place(), each.name(), "this name is already taken at " + earlier);
            }
        }
        Stream.concat(draft.parts().stream(), draft.connectors().stream())
                .filter(each -> each.name().equals(Mains.NAME))
                .forEach(each -> {
                    unique = false;
                    findings.error(each.place(), each.name(), "this name means the mains themselves; choose another");
                });
    }

    private void setting(SettingDraft setting) {
        parts(setting, SettingDraft.PULLED, "fuse", part -> part instanceof Fuse);
        parts(setting, SettingDraft.HELD_ON, "coil, lamp or logic output", References::fitsHeldOn);
        setting.names(SettingDraft.HELD_ON)
                .forEach(name -> driven(name.text(), name.place(), setting.name() + " held on"));
        for (Declared<Quantity> each : setting.pulsed()) {
            String key = setting.name() + " pulsed";
            part(each.name(), each.place(), key, "coil, lamp or logic output", References::fitsHeldOn);
            driven(each.name(), each.place(), key);
        }
        List<String> connectors = draft.connectors().stream().map(c -> c.name()).toList();
        for (Located.Text name : setting.names(SettingDraft.UNPLUGGED)) {
            if (!connectors.contains(name.text())) {
                unknown(name.place(), setting.name() + " unplugged", name.text(), "connector", connectors);
            }
        }
        for (Declared<Boolean> each : setting.switches()) {
            part(each.name(), each.place(), setting.name() + " switches", "switch", part -> part instanceof Switch);
        }
        for (Declared<?> each : setting.charged()) {
            part(each.name(), each.place(), setting.name() + " charged", "capacitor", References::holdsCharge);
        }
    }

    /** Holding on means an output that leaves its level at rest: somebody has to command the coil or lamp. */
    private void driven(String name, Place place, String key) {
        Declared<Part> declared = parts.get(name);
        Part part = declared == null ? null : declared.value();
        if (part == null || part instanceof LogicOutput || !fitsHeldOn(part)) {
            return;
        }
        List<String> commanded = new ArrayList<>();
        for (Declared<Part> each : parts.values()) {
            if (each.value() instanceof LogicOutput output && output.commands() != null) {
                commanded.add(output.commands());
            }
        }
        if (!commanded.contains(name)) {
            findings.error(place, key, "no logic output commands '" + name + "'", joined(commanded), "");
        }
    }

    private static boolean holdsCharge(Part part) {
        return part instanceof Electrolytic || part instanceof Capacitor;
    }

    private static boolean fitsHeldOn(Part part) {
        return part instanceof Coil || part instanceof DualCoil || part instanceof Lamp || part instanceof LogicOutput;
    }

    private void parts(SettingDraft setting, Key<List<Located.Text>> key, String kind, Predicate<Part> fits) {
        for (Located.Text name : setting.names(key)) {
            part(name.text(), name.place(), setting.name() + " " + key.name(), kind, fits);
        }
    }

    private void part(String name, Place place, String key, String kind, Predicate<Part> fits) {
        Declared<Part> declared = parts.get(name);
        Part part = declared == null ? null : declared.value();
        if (declared == null) {
            unknown(place, key, name, kind, fitting(fits));
        } else if (part != null && !fits.test(part)) {
            findings.error(place, key, "'" + name + "' is not a " + kind, joined(fitting(fits)), "");
        }
    }

    private List<String> fitting(Predicate<Part> fits) {
        return parts.values().stream()
                .filter(p -> {
                    @Nullable Part part = p.value();
                    return part != null && fits.test(part);
                })
                .map(p -> p.name())
                .toList();
    }

    private void unknown(Place place, String key, String name, String kind, List<String> known) {
        findings.error(
                place,
                key,
                "there is no " + kind + " '" + name + "'",
                joined(known),
                Spelling.nearestIfAny(name, known));
    }

    /** Some names, for messages; a long list says how it goes on. */
    static String joined(List<String> names) {
        int most = 12;
        if (names.isEmpty()) {
            return "none in this circuit";
        }
        String first = String.join(", ", names.subList(0, Math.min(most, names.size())));
        return names.size() <= most ? first : first + " and " + (names.size() - most) + " more";
    }

    private void commands(Declared<Part> declared) {
        if (declared.value() instanceof LogicOutput output) {
            String commanded = output.commands();
            if (commanded != null) {
                part(
                        commanded,
                        declared.place(),
                        declared.name() + " commands",
                        "coil or lamp",
                        part -> part instanceof Coil || part instanceof DualCoil || part instanceof Lamp);
            }
        }
    }
}
