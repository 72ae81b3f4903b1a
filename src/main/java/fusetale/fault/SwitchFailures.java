package fusetale.fault;

import static fusetale.fault.AmountRange.contact;
import static fusetale.fault.FailureMode.BURNT;
import static fusetale.fault.FailureMode.STUCK_OFF;
import static fusetale.fault.FailureMode.STUCK_ON;

import fusetale.circuit.Circuit;
import fusetale.circuit.Switch;
import fusetale.quantity.Quantity;
import java.util.List;

/** Switches. Shares: FMD-91, row "switch, toggle": open .65, sticking .19, short .16 (from memory). */
final class SwitchFailures implements Failures<Switch> {
    @Override
    public String kind() {
        return "switch";
    }

    @Override
    public List<FaultForm> forms(Switch s) {
        FailureRate rate = FailureRate.CONTACT;
        return new FormList(s.name(), kind())
                .whole(STUCK_ON, null, rate.share(0.16))
                .whole(STUCK_OFF, null, rate.share(0.65))
                .whole(BURNT, contact(5), rate.share(0.19))
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return a.mode() != BURNT && b.mode() != BURNT;
    }

    @Override
    public Circuit apply(Failing<Switch> f) {
        Switch s = f.now();
        return switch (f.fault().mode()) {
            case STUCK_ON -> f.replacedBy(with(s, true, s.contactOhms()));
            case STUCK_OFF -> f.replacedBy(with(s, false, s.contactOhms()));
            case BURNT -> f.replacedBy(with(s, s.closed(), f.ohms()));
            default -> throw f.unlisted();
        };
    }

    private static Switch with(Switch s, boolean closed, Quantity contactOhms) {
        return new Switch(s.name(), s.one(), s.two(), closed, contactOhms, s.about());
    }
}
