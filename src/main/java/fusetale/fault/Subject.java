package fusetale.fault;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import java.util.List;
import java.util.Optional;

/**
 * A part or a connector together with the failures of its kind.
 *
 * @param <P> its kind
 * @param healthy as drawn
 * @param name its designator
 * @param kind its kind
 * @param failures of that kind
 */
record Subject<P>(P healthy, String name, Class<P> kind, Failures<P> failures) {
    private static final ConnectorFailures CONNECTOR_FAILURES = new ConnectorFailures();

    /** The part or connector of a name. */
    static Optional<Subject<?>> find(Circuit circuit, String name) {
        Optional<Subject<?>> part = circuit.part(name).map(Kinds::subject);
        return part.isPresent() ? part : circuit.connector(name).map(Subject::of);
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
        P now = circuit.part(name)
                .filter(kind::isInstance)
                .map(kind::cast)
                .or(() -> circuit.connector(name).filter(kind::isInstance).map(kind::cast))
                .orElse(healthy);
        return failures.apply(new Failing<>(circuit, healthy, now, fault, amount));
    }

    /** Whether this is still in a circuit from which an arrangement may have taken things away. */
    boolean standsIn(Circuit circuit) {
        return circuit.part(name).isPresent() || circuit.connector(name).isPresent();
    }
}
