package fusetale.fault;

import fusetale.circuit.Circuit;
import java.util.List;

/**
 * How one kind of part fails. Stateless.
 *
 * @param <P> the kind
 */
interface Failures<P> {
    /** The kind's word, as circuit files write it: {@code dual coil}. */
    String kind();

    /** All its failures, in the order a list shows them. */
    List<FaultForm> forms(P part);

    /** The circuit with this one fault more. */
    Circuit apply(Failing<P> failing);

    /**
     * Whether two different faults of one part cannot both hold; they are never of one form. Asked both ways round; one yes
     * is enough.
     */
    default boolean clash(Fault a, Fault b) {
        return a.place().equals(b.place())
                && a.mode() != FailureMode.REVERSED
                && b.mode() != FailureMode.REVERSED
                && a.mode() != FailureMode.CRACKED_JOINT
                && b.mode() != FailureMode.CRACKED_JOINT;
    }
}
