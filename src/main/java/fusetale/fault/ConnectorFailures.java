package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.contact;
import static fusetale.fault.FailureMode.BURNT;
import static fusetale.fault.FailureMode.CRACKED_JOINT;
import static fusetale.fault.FailureMode.LOOSE;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.REVERSED;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Connector.Contact;
import fusetale.circuit.Net;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Connectors, pin by pin. Reversed: the plug sits the other way round, its first wire on the last pin. Shares: FMD-91,
 * "connector": open .61, poor or intermittent .23, short .16 (from memory), with burnt and cracked set apart by judgement.
 */
final class ConnectorFailures implements Failures<Connector> {
    @Override
    public List<FaultForm> forms(Connector j) {
        FailureRate rate = FailureRate.CONNECTOR_PIN;
        FormList list = new FormList(j.name());
        for (Contact pin : j.pins()) {
            String words = "pin " + pin.label();
            list.at(pin.label(), words, OPEN, OPENED, rate.share(0.30))
                    .at(pin.label(), words, BURNT, contact(2), rate.share(0.30))
                    .at(pin.label(), words, LOOSE, contact(10), rate.share(0.25))
                    .at(pin.label(), words, CRACKED_JOINT, contact(1000), FailureRate.JOINT.share(0.5));
        }
        return list.whole(REVERSED, null, FailureRate.HANDS.share(0.2)).list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return a.place().equals(b.place());
    }

    @Override
    public Circuit apply(Failing<Connector> f) {
        Connector changed = f.fault().mode() == REVERSED ? turned(f.now()) : worse(f);
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
