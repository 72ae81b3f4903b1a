package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.REVERSED;
import static fusetale.fault.FailureMode.SHORT;

import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.Diode;
import fusetale.circuit.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * Four legs in one package. A faulty leg turns the bridge into four diodes named {@code BR201.leg1} and so on, so that its
 * three neighbours keep their names. Shares of modes as for a rectifier diode, each leg a diode of its own.
 */
final class BridgeFailures implements Failures<Bridge> {
    /** Place of a bridge fitted a quarter turn round: its pins sit on the corners of a square. */
    static final String QUARTER = "quarter";

    private static final int LEGS = 4;

    /** Between which pins each leg lies, from anode to cathode. */
    private static final List<String> PINS = List.of("ac1 to plus", "ac2 to plus", "minus to ac1", "minus to ac2");

    private final DiodeFailures legs = new DiodeFailures();

    @Override
    public String kind() {
        return "bridge";
    }

    @Override
    public List<FaultForm> forms(Bridge b) {
        FailureRate rate = FailureRate.RECTIFIER;
        FormList list = new FormList(b.name(), kind());
        for (int n = 1; n <= LEGS; n++) {
            String pins = PINS.get(n - 1);
            list.at("leg" + n, "leg " + n, SHORT, SHORTED, rate.share(0.51))
                    .detailed(pins)
                    .at("leg" + n, "leg " + n, OPEN, OPENED, rate.share(0.29))
                    .detailed(pins)
                    .at("leg" + n, "leg " + n, LEAKY, leak(DiodeFailures.LEAK_OHMS), rate.share(0.20))
                    .detailed(pins);
        }
        return list.whole(REVERSED, null, FailureRate.HANDS.judged(0.5))
                .at(QUARTER, "", REVERSED, null, FailureRate.HANDS.judged(0.5))
                .said("is turned by a quarter", "is turned by a quarter")
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        boolean bothTurned = a.mode() == REVERSED && b.mode() == REVERSED;
        return bothTurned || a.place().equals(b.place());
    }

    @Override
    public Circuit apply(Failing<Bridge> f) {
        Bridge b = f.now();
        if (f.fault().mode() == REVERSED) {
            return f.replacedBy(f.fault().place().equals(QUARTER) ? quarterTurned(b) : halfTurned(b));
        }
        Circuit split = f.circuit().part(b.name()).isPresent() ? split(f.circuit(), b) : f.circuit();
        Diode leg = (Diode) split.part(f.fault().target()).orElseThrow();
        return legs.apply(new Failing<>(split, leg, leg, f.fault(), f.amountSi()));
    }

    private static Bridge halfTurned(Bridge b) {
        return new Bridge(b.name(), b.ac2(), b.ac1(), b.minus(), b.plus(), b.model(), b.about());
    }

    /** Pins stand round the square in the order plus, first a.c., minus, second a.c.; each takes the next one's pad. */
    private static Bridge quarterTurned(Bridge b) {
        return new Bridge(b.name(), b.minus(), b.plus(), b.ac1(), b.ac2(), b.model(), b.about());
    }

    private static Circuit split(Circuit circuit, Bridge bridge) {
        List<Part> parts = new ArrayList<>();
        for (Part part : circuit.parts()) {
            if (part.name().equals(bridge.name())) {
                for (int n = 1; n <= LEGS; n++) {
                    parts.add(bridge.leg(n));
                }
            } else {
                parts.add(part);
            }
        }
        return circuit.withParts(parts);
    }
}
