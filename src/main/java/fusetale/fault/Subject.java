package fusetale.fault;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Mains;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A part, a connector or the mains together with the failures of its kind.
 *
 * @param <P> its kind
 * @param healthy as drawn
 * @param name its designator
 * @param kind its kind
 * @param failures of that kind
 */
record Subject<P>(P healthy, String name, Class<P> kind, Failures<P> failures) {
    private static final ConnectorFailures CONNECTOR_FAILURES = new ConnectorFailures();
    private static final MainsFailures MAINS_FAILURES = new MainsFailures();

    /** The part or connector of a name, or the mains. */
    static Optional<Subject<?>> find(Circuit circuit, String name) {
        if (name.equals(Mains.NAME)) {
            return Optional.of(of(circuit.mains()));
        }
        Optional<Subject<?>> part = circuit.part(name).map(Kinds::subject);
        return part.isPresent() ? part : circuit.connector(name).map(Subject::of);
    }

    /** The mains with their failures. */
    static Subject<Mains> of(Mains mains) {
        return new Subject<>(mains, Mains.NAME, Mains.class, MAINS_FAILURES);
    }

    /** A connector with its failures. */
    static Subject<Connector> of(Connector connector) {
        return new Subject<>(connector, connector.name(), Connector.class, CONNECTOR_FAILURES);
    }

    /** All ways it can fail. */
    List<FaultForm> forms() {
        return failures.forms(healthy);
    }

    /**
     * The circuit with one fault more. Where the part is no longer in it under its name (a bridge already taken apart into
     * legs), its kind is handed the part as drawn.
     */
    Circuit fail(Circuit circuit, Fault fault, double amount) {
        P now = Stream.of(circuit.part(name), circuit.connector(name), Optional.of(circuit.mains()))
                .flatMap(Optional::stream)
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElse(healthy);
        return failures.apply(new Failing<>(circuit, healthy, now, fault, amount));
    }

    /** Whether this is still in a circuit from which an arrangement may have taken things away. */
    boolean standsIn(Circuit circuit) {
        return name.equals(Mains.NAME)
                || circuit.part(name).isPresent()
                || circuit.connector(name).isPresent();
    }
}
