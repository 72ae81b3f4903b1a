package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.contact;
import static fusetale.fault.FailureMode.LOOSE;
import static fusetale.fault.FailureMode.MISSING;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;
import static fusetale.fault.FailureMode.WRONG_RATING;

import fusetale.circuit.Circuit;
import fusetale.circuit.Lamp;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.List;

/** Lamps in their sockets, one or several alike side by side. Rate of a filament from the handbook, the rest judgement. */
final class LampFailures implements Failures<Lamp> {
    /** Place of one lamp among several. */
    static final String ONE = "one";

    @Override
    public String kind() {
        return "lamp";
    }

    @Override
    public List<FaultForm> forms(Lamp e) {
        double amps = e.amps().si();
        FormList list = new FormList(e.name(), kind());
        if (e.count() > 1) {
            list.at(ONE, "one lamp", OPEN, null, FailureRate.LAMP.judged(e.count()));
            list.whole(OPEN, OPENED, FailureRate.JOINT.judged(1)).told("row");
        } else {
            list.whole(OPEN, OPENED, FailureRate.LAMP.judged(1));
            list.whole(MISSING, null, FailureRate.HANDS.judged(1));
        }
        return list.whole(SHORT, SHORTED, FailureRate.HANDS.judged(1))
                .whole(LOOSE, contact(20), FailureRate.CONNECTOR_PIN.judged(1))
                .whole(
                        WRONG_RATING,
                        new AmountRange(Unit.AMPERE, 2 * amps, amps / 100, 100 * amps),
                        FailureRate.HANDS.judged(1))
                .said("holds a wrong bulb", "holds a {} bulb")
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return a.place().equals(b.place()) && a.mode() != LOOSE && b.mode() != LOOSE;
    }

    @Override
    public Circuit apply(Failing<Lamp> f) {
        Lamp e = f.now();
        return switch (f.fault().mode()) {
            case OPEN ->
                f.fault().place().equals(ONE)
                        ? f.replacedBy(with(e, e.amps(), e.count() - 1))
                        : f.inSeries(e, "one", f.amountSi());
            case MISSING -> f.inSeries(e, "one", Failing.OPEN_OHMS);
            case LOOSE -> f.inSeries(e, "one", f.amountSi());
            case SHORT -> f.across(e.one(), e.two());
            case WRONG_RATING -> f.replacedBy(with(e, f.exactly(Unit.AMPERE), e.count()));
            default -> throw f.unlisted();
        };
    }

    private static Lamp with(Lamp e, Toleranced amps, int count) {
        return new Lamp(e.name(), e.one(), e.two(), e.volts(), amps, count, e.about());
    }
}
