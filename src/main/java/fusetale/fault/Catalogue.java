package fusetale.fault;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Wire;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All failure modes of all part kinds, and how to apply them; and swaps, which are made first.
 *
 * <p>Applying rewrites the circuit. Where the part's own figures can say what happened it keeps its name, its pins and its
 * nets; where they cannot, a resistance is laid across it or put in series with a pin, as a new part named after the fault:
 * {@code R204~cracked-joint}, {@code Q204.ce~short}. A bridge with a faulty leg becomes four diodes, {@code BR201.leg1} to
 * {@code BR201.leg4}.
 *
 * <p>Shorts and opens are finite, 20 mΩ and 100 MΩ unless an amount says otherwise, so that every supposition stays solvable.
 */
public final class Catalogue {
    private Catalogue() {}

    /** Every single fault a circuit can have: parts in circuit order, then connectors, then the mains. */
    public static List<FaultForm> possible(Circuit circuit) {
        List<FaultForm> all = new ArrayList<>();
        for (Part part : circuit.parts()) {
            all.addAll(Kinds.subject(part).forms());
        }
        for (Connector connector : circuit.connectors()) {
            all.addAll(Subject.of(connector).forms());
        }
        all.addAll(Subject.of(circuit.mains()).forms());
        return all;
    }

    /** Every way one part, connector or the mains can fail; empty where there is none of that name. */
    public static List<FaultForm> possible(Circuit circuit, String part) {
        return Subject.find(circuit, part).map(Subject::forms).orElse(List.of());
    }

    /** Designators of everything that can fail: parts in circuit order, then connectors, then the mains. */
    public static List<String> designators(Circuit circuit) {
        return Stream.of(
                        circuit.parts().stream().map(Part::name),
                        circuit.connectors().stream().map(Connector::name),
                        Stream.of(Mains.NAME))
                .flatMap(names -> names)
                .toList();
    }

    /**
     * The form of a fault.
     *
     * @throws UnfitSupposition where the fault names no part, a place or a mode the part does not have, or an amount out of
     *     bounds
     */
    public static FaultForm form(Circuit circuit, Fault fault) throws UnfitSupposition {
        return Fit.form(circuit, fault);
    }

    /**
     * Whether a supposition fits a circuit; returns where it does.
     *
     * @throws UnfitSupposition as {@link #apply(Circuit, Supposition)}
     */
    public static void check(Circuit circuit, Supposition supposition) throws UnfitSupposition {
        Fit.check(circuit, supposition);
    }

    /**
     * The circuit as supposed.
     *
     * @throws UnfitSupposition where a fault or a swap names no part, a mode or a model the part does not have, an amount
     *     out of bounds, or contradicts another
     */
    public static Circuit apply(Circuit healthy, Supposition supposition) throws UnfitSupposition {
        return apply(healthy, healthy, supposition);
    }

    /**
     * The circuit as supposed, on a bench already arranged. What the arrangement took away or apart (a pulled fuse, an
     * unplugged connector) stays so, a switched output or switch that is stuck does not follow it, and a lifted pin takes the
     * fault of its part along: which is why arrangements come first. Points are looked up in {@code arranged}: in what is
     * returned a bridge may have been taken apart.
     *
     * @param healthy the circuit as drawn, against which the supposition is checked
     * @param arranged the same circuit with an arrangement applied; what is returned is this one, rewritten
     * @throws UnfitSupposition as {@link #apply(Circuit, Supposition)}
     */
    public static Circuit apply(Circuit healthy, Circuit arranged, Supposition supposition) throws UnfitSupposition {
        Fit.check(healthy, supposition);
        Circuit swapped = Swapping.done(healthy, supposition.swaps());
        List<Fault> ordered = supposition.faults().stream()
                .sorted(Comparator.comparingInt(Catalogue::rank))
                .toList();
        Circuit circuit = Swapping.done(arranged, supposition.swaps());
        for (Fault fault : ordered) {
            Subject<?> subject = Subject.find(swapped, fault.part()).orElseThrow();
            if (subject.standsIn(arranged)) {
                circuit = subject.fail(circuit, fault, Fit.amount(swapped, fault));
            }
        }
        return circuit;
    }

    /**
     * A part is first turned round, or exchanged, and then fails. What fails in its leads, its socket or before its winding lies in series
     * with what fails in it, whichever is said first. What the switch of a coil adds comes on top of what its winding has become.
     */
    private static int rank(Fault fault) {
        return switch (fault.mode()) {
            case REVERSED, SWAPPED -> 0;
            case WRONG_RATING -> 1;
            case CRACKED_JOINT, LOOSE -> 2;
            case BURNT -> fault.place().equals(DualCoilFailures.SWITCH) ? 4 : 3;
            default -> fault.place().equals(TransformerFailures.CUT_OUT) ? 2 : 3;
        };
    }

    /**
     * Where a meter finds a leg of a part that is open inside: at the net the leg is soldered to, not behind the break. A cracked
     * joint is another matter: there the leg is what hangs.
     *
     * @param circuit as supposed
     * @param net that of the pin there
     * @return empty where the pin's net is the leg's
     */
    public static Optional<Net> legBefore(Circuit circuit, Net net) {
        if (!Failing.behindBreak(net)) {
            return Optional.empty();
        }
        return circuit.parts().stream()
                .filter(p -> p instanceof Wire w && w.one().equals(net))
                .map(p -> ((Wire) p).two())
                .findFirst();
    }

    /**
     * Across what a fault laid a wire: the part, or the place of it, that is shorted or leaks there.
     *
     * @param wire of a circuit as supposed
     * @return {@code Q204.ce} of {@code Q204.ce~short}; empty for any other wire
     */
    public static Optional<String> bridged(Wire wire) {
        return Failing.path(wire.name(), FailureMode.SHORT).or(() -> Failing.path(wire.name(), FailureMode.LEAKY));
    }
}
