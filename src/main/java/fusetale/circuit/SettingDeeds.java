package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Spelling;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Looks whether what an arrangement says can be done on its circuit, one deed beside the other: {@code bench} does it, and
 * has nobody to tell where it cannot.
 */
final class SettingDeeds {
    private final Circuit circuit;
    private final Findings findings;

    SettingDeeds(Circuit circuit, Findings findings) {
        this.circuit = circuit;
        this.findings = findings;
    }

    /** Reports what cannot be done. */
    void check(SettingDraft setting) {
        Set<String> lifted = new HashSet<>();
        for (Located.Text pin : setting.names(SettingDraft.LIFTED)) {
            String key = setting.name() + " lifted";
            lifted(pin, key);
            if (!lifted.add(pin.text())) {
                findings.error(pin.place(), key, "'" + pin.text() + "' stands here twice; leave one out");
            }
        }
        for (List<Located.Text> clip : setting.clips()) {
            clip(clip.get(0), clip.get(1), setting, lifted);
        }
        powered(setting);
    }

    private void lifted(Located.Text pin, String key) {
        int dot = pin.text().indexOf('.');
        String owner = dot < 0 ? pin.text() : pin.text().substring(0, dot);
        List<String> all = Stream.concat(
                        circuit.parts().stream().flatMap(p -> p.pins().stream().map(q -> p.name() + "." + q.name())),
                        circuit.connectors().stream()
                                .flatMap(c -> c.pins().stream().map(q -> c.name() + "." + q.label())))
                .toList();
        if (!all.contains(pin.text())) {
            List<String> ofOwner =
                    all.stream().filter(p -> p.startsWith(owner + ".")).toList();
            findings.error(
                    pin.place(),
                    key,
                    "there is no pin '" + pin.text() + "'",
                    ofOwner.isEmpty() ? "PART.pin, as BR201.ac1, or CONNECTOR.pin" : References.joined(ofOwner),
                    Spelling.nearestIfAny(pin.text(), ofOwner.isEmpty() ? all : ofOwner));
        }
    }

    /** A clip on a lifted pin holds the pin, not the net it was on. */
    private void clip(Located.Text from, Located.Text to, SettingDraft setting, Set<String> lifted) {
        String key = setting.name() + " clips";
        Optional<Net> one = end(from, key);
        Optional<Net> two = end(to, key);
        boolean onPin = isPartsPin(from, lifted) || isPartsPin(to, lifted);
        if (one.isPresent() && one.equals(two) && (!onPin || from.text().equals(to.text()))) {
            findings.error(
                    from.place(),
                    key,
                    "a clip lead from '" + from.text() + "' to '" + to.text() + "' joins net " + one.get()
                            + " with itself; clip it to another net, or leave it out");
        }
    }

    /** A connector's pin that is lifted stays on its net; the contact is what parts. */
    private boolean isPartsPin(Located.Text end, Set<String> lifted) {
        int dot = end.text().indexOf('.');
        return dot > 0
                && lifted.contains(end.text())
                && circuit.part(end.text().substring(0, dot)).isPresent();
    }

    private Optional<Net> end(Located.Text end, String key) {
        Optional<Net> net = circuit.find(end.text());
        if (net.isEmpty()) {
            List<String> known =
                    new ArrayList<>(circuit.nets().stream().map(Net::name).toList());
            circuit.points().forEach(p -> known.add(p.name()));
            findings.error(
                    end.place(),
                    key,
                    "there is no point '" + end.text() + "'",
                    "a test point, a net, PART.pin or CONNECTOR.pin",
                    Spelling.nearestIfAny(end.text(), known));
        }
        return net;
    }

    /** What needs the power on, or off. */
    private void powered(SettingDraft setting) {
        if (setting.powerOn() && !setting.charged().isEmpty()) {
            findings.error(
                    setting.charged().get(0).place(),
                    setting.name() + " charged",
                    "capacitors charge by themselves with the power on; say power: off, or leave this out");
        }
        List<String> held = setting.names(SettingDraft.HELD_ON).stream()
                .map(Located.Text::text)
                .toList();
        for (Declared<Quantity> pulse : setting.pulsed()) {
            String key = setting.name() + " pulsed";
            if (!setting.powerOn()) {
                findings.error(
                        pulse.place(),
                        key,
                        "nothing drives '" + pulse.name() + "' with the power off; say power: on, or leave this out");
            }
            if (held.contains(pulse.name())) {
                findings.error(
                        pulse.place(),
                        key,
                        "'" + pulse.name() + "' is held on, and what is on already cannot be pulsed; leave one out");
            }
        }
    }
}
