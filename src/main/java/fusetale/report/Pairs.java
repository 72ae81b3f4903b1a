package fusetale.report;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;

/** Names of pairs of points. */
public final class Pairs {
    private Pairs() {}

    /** {@code TP4} where its black lead goes where the schematic says, {@code TP4 to TP2} otherwise. */
    public static String name(Circuit circuit, Check check) {
        boolean usual = circuit.point(check.from())
                .map(p -> circuit.find(check.to()).filter(p.against()::equals).isPresent())
                .orElse(false);
        return usual ? check.from() : check.from() + " to " + check.to();
    }
}
