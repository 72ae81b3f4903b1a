package fusetale.circuit;

import fusetale.circuit.MachineForms.PointDraft;
import fusetale.quantity.Spelling;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Looks at a circuit as a web of nets: what hangs in the air, what is joined to nothing, which points do not exist. */
final class Structure {
    private final Circuit circuit;
    private final Draft draft;
    private final Place groundPlace;
    private final Findings findings;
    private final Map<String, Place> places = new HashMap<>();
    private final Map<Net, List<String>> pinsOf = new TreeMap<>();

    /**
     * Prepares the web.
     *
     * @param circuit what to look at
     * @param draft the same with its places in the files
     * @param groundPlace where the file names its ground
     * @param findings where problems go. Modified.
     */
    Structure(Circuit circuit, Draft draft, Place groundPlace, Findings findings) {
        this.circuit = circuit;
        this.draft = draft;
        this.groundPlace = groundPlace;
        this.findings = findings;
        draft.parts().forEach(p -> places.putIfAbsent(p.name(), p.place()));
        draft.connectors().forEach(c -> places.putIfAbsent(c.name(), c.place()));
        for (Part part : circuit.parts()) {
            part.pins().forEach(pin -> touch(pin.net(), part.name() + "." + pin.name()));
        }
        for (Connector connector : circuit.connectors()) {
            for (Connector.Contact contact : connector.pins()) {
                touch(contact.board(), connector.name() + "." + contact.label() + " board");
                touch(contact.harness(), connector.name() + "." + contact.label() + " harness");
            }
        }
    }

    private void touch(Net net, String pin) {
        pinsOf.computeIfAbsent(net, n -> new ArrayList<>()).add(pin);
    }

    /** Reports what is wrong with the web. */
    void check() {
        if (!pinsOf.containsKey(circuit.ground())) {
            findings.error(
                    groundPlace,
                    "ground",
                    "no part touches the net '" + circuit.ground() + "'",
                    "",
                    Spelling.nearestIfAny(circuit.ground().name(), names(pinsOf.keySet())));
            return;
        }
        capitals();
        lonelyPins();
        shortedParts();
        floatingSections();
        points();
        startUpChecks();
        SettingDeeds deeds = new SettingDeeds(circuit, findings);
        draft.settings().forEach(each -> {
            SettingDraft setting = each.value();
            if (setting != null) {
                deeds.check(setting);
            }
        });
    }

    /** GND and gnd are one rail to whoever wrote them, and to whoever types them; as two, the second hangs on nothing. */
    private void capitals() {
        Map<String, Net> seen = new HashMap<>();
        pinsOf.forEach((net, pins) -> {
            Net earlier = seen.putIfAbsent(net.name().toLowerCase(Locale.ROOT), net);
            if (earlier != null) {
                List<String> others = pinsOf.getOrDefault(earlier, List.of());
                boolean rarer = pins.size() <= others.size();
                twoNets(rarer ? net : earlier, rarer ? pins : others, rarer ? earlier : net, rarer ? others : pins);
            }
        });
    }

    private void twoNets(Net rare, List<String> atRare, Net usual, List<String> atUsual) {
        String owner = owner(atRare.get(0));
        String other = owner(atUsual.get(0));
        findings.error(
                placeOf(owner),
                owner,
                "net " + rare + " at " + References.joined(atRare) + " and net " + usual + " at " + other + " ("
                        + placeOf(other) + ") differ in capitals only; write both alike, or rename one");
    }

    private static String owner(String pin) {
        return pin.substring(0, pin.indexOf('.'));
    }

    private void lonelyPins() {
        Set<Net> spoken = new LinkedHashSet<>(List.of(circuit.ground(), Mains.LINE, Mains.NEUTRAL));
        pinsOf.forEach((net, pins) -> {
            if (pins.size() == 1 && !spoken.contains(net)) {
                String pin = pins.get(0);
                String owner = owner(pin);
                List<String> others = names(pinsOf.keySet());
                others.remove(net.name());
                String nearest = Spelling.nearestIfAny(net.name(), others);
                findings.warning(
                        placeOf(owner),
                        owner,
                        "net " + net + " touches one pin only, " + pin
                                + (nearest.isEmpty() || !Spelling.oneSlip(net.name(), nearest)
                                        ? ""
                                        : "; there is also a net " + nearest));
            }
        });
    }

    private void shortedParts() {
        for (Part part : circuit.parts()) {
            List<Pin> pins = part.pins();
            long nets = pins.stream().map(Pin::net).distinct().count();
            if (nets == 1 && pins.size() > 1) {
                findings.warning(
                        placeOf(part.name()),
                        part.name(),
                        "all its pins sit on net " + pins.get(0).net() + ", so it does nothing");
            }
        }
        for (Connector connector : circuit.connectors()) {
            for (Connector.Contact contact : connector.pins()) {
                if (contact.board().equals(contact.harness())) {
                    findings.warning(
                            placeOf(connector.name()),
                            connector.name() + " pin " + contact.label(),
                            "net " + contact.board() + " stands on both sides, so unplugging parts nothing");
                }
            }
        }
    }

    private Place placeOf(String owner) {
        return places.getOrDefault(owner, groundPlace);
    }

    private static List<String> names(Collection<Net> nets) {
        return new ArrayList<>(nets.stream().map(Net::name).toList());
    }

    /** Groups of pins that a part joins inside; a transformer's windings are joined by its field only. */
    static List<List<Net>> joinedInside(Part part) {
        if (part instanceof Transformer transformer) {
            return transformer.windings().stream()
                    .map(Transformer.Winding::nets)
                    .toList();
        }
        return List.of(part.pins().stream().map(Pin::net).toList());
    }

    private Web web() {
        Web web = new Web();
        web.join(circuit.ground(), Mains.NEUTRAL);
        web.join(circuit.ground(), Mains.LINE);
        circuit.parts().forEach(part -> joinedInside(part).forEach(web::joinAll));
        circuit.connectors().forEach(c -> c.pins().forEach(pin -> web.join(pin.board(), pin.harness())));
        return web;
    }

    private void floatingSections() {
        Web web = web();
        Map<Net, Set<String>> owners = new LinkedHashMap<>();
        Map<Net, Set<String>> nets = new LinkedHashMap<>();
        for (Part part : circuit.parts()) {
            for (Pin pin : part.pins()) {
                Net root = web.root(pin.net());
                if (!root.equals(web.root(circuit.ground()))) {
                    owners.computeIfAbsent(root, r -> new LinkedHashSet<>()).add(part.name());
                    nets.computeIfAbsent(root, r -> new LinkedHashSet<>())
                            .add(pin.net().name());
                }
            }
        }
        owners.forEach((root, names) -> floating(List.copyOf(names), List.copyOf(nets.getOrDefault(root, Set.of()))));
    }

    private void floating(List<String> owners, List<String> nets) {
        String first = owners.get(0);
        boolean primary = circuit.parts().stream()
                .filter(Transformer.class::isInstance)
                .map(Transformer.class::cast)
                .anyMatch(t -> nets.contains(t.primary().nets().get(0).name()));
        findings.error(
                placeOf(first),
                first,
                "nothing joins this section to ground '" + circuit.ground() + "': net" + (nets.size() == 1 ? " " : "s ")
                        + References.joined(nets) + " at " + References.joined(owners),
                primary
                        ? "the nets line and neutral, where the mains comes in"
                        : "a part, or a wire, from one of these nets to the rest",
                "");
    }

    private void points() {
        for (Declared<PointDraft> each : draft.points()) {
            PointDraft point = each.value();
            if (point != null) {
                existing(point.at(), point.atPlace(), point.name() + " at");
                Net against = point.against();
                if (against != null) {
                    existing(against, point.againstPlace(), point.name() + " against");
                }
            }
            if (circuit.nets().contains(new Net(each.name()))) {
                findings.error(
                        each.place(), each.name(), "a test point and a net have the same name; rename one of them");
            }
        }
    }

    private void existing(Net net, Place place, String key) {
        if (!circuit.nets().contains(net)) {
            findings.error(
                    place,
                    key,
                    "there is no net '" + net + "'",
                    "",
                    Spelling.nearestIfAny(net.name(), names(circuit.nets())));
        }
    }

    private void startUpChecks() {
        for (Part part : circuit.parts()) {
            if (part instanceof Controller controller) {
                controller
                        .checks()
                        .forEach(c -> existing(c.net(), placeOf(part.name()), part.name() + " checks " + c.label()));
            }
        }
    }

    /** Nets joined to sets (union by root, R. E. Tarjan, "Efficiency of a good but not linear set union algorithm", 1975). */
    private static final class Web {
        private final Map<Net, Net> parent = new HashMap<>();

        Net root(Net net) {
            Net at = net;
            while (parent.containsKey(at)) {
                at = parent.getOrDefault(at, at);
            }
            return at;
        }

        void join(Net one, Net two) {
            Net a = root(one);
            Net b = root(two);
            if (!a.equals(b)) {
                parent.put(b, a);
            }
        }

        void joinAll(List<Net> nets) {
            nets.forEach(n -> join(nets.get(0), n));
        }
    }
}
