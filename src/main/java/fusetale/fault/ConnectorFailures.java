package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.contact;
import static fusetale.fault.FailureMode.BURNT;
import static fusetale.fault.FailureMode.CRACKED_JOINT;
import static fusetale.fault.FailureMode.LOOSE;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.REVERSED;
import static fusetale.fault.FailureMode.SWAPPED;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Connector.Contact;
import fusetale.circuit.Net;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Connectors, pin by pin. Reversed: the plug sits the other way round, its first wire on the last pin. Swapped: the wires of
 * two pins side by side sit in each other's place in the housing; several swaps are made in the order said. Shares: FMD-91,
 * "connector": open .61, poor or intermittent .23, short .16 (from memory), with burnt and cracked set apart by judgement.
 */
final class ConnectorFailures implements Failures<Connector> {
    @Override
    public String kind() {
        return "connector";
    }

    @Override
    public List<FaultForm> forms(Connector j) {
        FailureRate rate = FailureRate.CONNECTOR_PIN;
        FormList list = new FormList(j.name(), kind());
        for (int k = 0; k < j.pins().size(); k++) {
            Contact pin = j.pins().get(k);
            String words = "pin " + pin.label();
            list.at(pin.label(), words, OPEN, OPENED, rate.share(0.30))
                    .at(pin.label(), words, BURNT, contact(2), rate.share(0.30))
                    .at(pin.label(), words, LOOSE, contact(10), rate.share(0.25))
                    .at(pin.label(), words, CRACKED_JOINT, contact(1000), FailureRate.JOINT.judged(0.5));
            if (k + 1 < j.pins().size() && differ(pin, j.pins().get(k + 1))) {
                String said = "is swapped with pin " + j.pins().get(k + 1).label();
                list.at(pin.label(), words, SWAPPED, null, FailureRate.HANDS.judged(0.1))
                        .said(said, said);
            }
        }
        return list.whole(REVERSED, null, FailureRate.HANDS.judged(0.2)).list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return a.place().equals(b.place()) && a.mode() != SWAPPED && b.mode() != SWAPPED;
    }

    /** Whether it changes anything when two wires trade places: doubled pins carry the same. */
    private static boolean differ(Contact one, Contact other) {
        return !one.board().equals(other.board()) && !one.harness().equals(other.harness());
    }

    @Override
    public Circuit apply(Failing<Connector> f) {
        Connector changed = switch (f.fault().mode()) {
            case REVERSED -> turned(f.now());
            case SWAPPED -> swapped(f.now(), f.fault().place());
            default -> worse(f);
        };
        List<Connector> all = new ArrayList<>();
        f.circuit().connectors().forEach(j -> all.add(j.name().equals(changed.name()) ? changed : j));
        return f.circuit().withConnectors(all);
    }

    private static Connector turned(Connector j) {
        List<Contact> pins = new ArrayList<>();
        for (int k = 0; k < j.pins().size(); k++) {
            Contact pin = j.pins().get(k);
            Net opposite = j.pins().get(j.pins().size() - 1 - k).harness();
            pins.add(new Contact(pin.label(), pin.board(), opposite, pin.ohms()));
        }
        return new Connector(j.name(), pins, j.ratedAmps());
    }

    private static Connector swapped(Connector j, String label) {
        List<Contact> pins = new ArrayList<>(j.pins());
        for (int k = 0; k + 1 < pins.size(); k++) {
            Contact one = pins.get(k);
            Contact next = pins.get(k + 1);
            if (one.label().equals(label)) {
                pins.set(k, new Contact(one.label(), one.board(), next.harness(), one.ohms()));
                pins.set(k + 1, new Contact(next.label(), next.board(), one.harness(), next.ohms()));
                break;
            }
        }
        return new Connector(j.name(), pins, j.ratedAmps());
    }

    private static Connector worse(Failing<Connector> f) {
        List<Contact> pins = new ArrayList<>();
        for (Contact pin : f.now().pins()) {
            boolean hit = pin.label().equals(f.fault().place())
                    && !Failing.apart(pin.ohms().si());
            pins.add(hit ? new Contact(pin.label(), pin.board(), pin.harness(), f.exactly(Unit.OHM)) : pin);
        }
        return new Connector(f.now().name(), pins, f.now().ratedAmps());
    }
}
