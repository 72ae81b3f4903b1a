package fusetale.fault;

import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.WEAK;

import fusetale.circuit.Circuit;
import fusetale.circuit.Darlington;
import fusetale.circuit.DarlingtonModel;
import java.util.List;

/** Darlington transistors. A weak one has lost its gain evenly between its two transistors: each × √left. */
final class DarlingtonFailures implements Failures<Darlington> {
    @Override
    public String kind() {
        return "darlington";
    }

    @Override
    public List<FaultForm> forms(Darlington q) {
        return ThreePins.forms(kind(), q.name(), q.model().ratings());
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return ThreePins.clash(a, b);
    }

    @Override
    public Circuit apply(Failing<Darlington> f) {
        Darlington q = f.now();
        if (f.fault().mode() == WEAK) {
            return f.replacedBy(new Darlington(
                    q.name(), q.collector(), q.base(), q.emitter(), weak(q.model(), f.amountSi()), q.about()));
        }
        return f.fault().mode() == OPEN ? ThreePins.open(f) : ThreePins.across(f);
    }

    private static DarlingtonModel weak(DarlingtonModel m, double left) {
        double each = Math.sqrt(left);
        return new DarlingtonModel(
                m.name(),
                m.first().withGainTimes(each),
                m.second().withGainTimes(each),
                m.firstShuntOhms(),
                m.secondShuntOhms(),
                m.across(),
                m.ratings());
    }
}
