package fusetale.fault;

import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.WEAK;

import fusetale.circuit.Circuit;
import fusetale.circuit.Transistor;
import fusetale.circuit.TransistorModel;
import java.util.List;

/** Bipolar transistors. */
final class TransistorFailures implements Failures<Transistor> {
    @Override
    public String kind() {
        return "transistor";
    }

    @Override
    public List<FaultForm> forms(Transistor q) {
        return ThreePins.forms(kind(), q.name(), q.model().ratings());
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return ThreePins.clash(a, b);
    }

    @Override
    public Circuit apply(Failing<Transistor> f) {
        Transistor q = f.now();
        if (f.fault().mode() == WEAK) {
            TransistorModel weak = q.model().withGainTimes(f.amountSi());
            return f.replacedBy(new Transistor(q.name(), q.collector(), q.base(), q.emitter(), weak, q.about()));
        }
        return f.fault().mode() == OPEN ? ThreePins.open(f) : ThreePins.across(f);
    }
}
