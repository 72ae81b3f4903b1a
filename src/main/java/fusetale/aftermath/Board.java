package fusetale.aftermath;

import fusetale.circuit.Circuit;
import fusetale.fault.Fault;
import fusetale.mna.Solved;
import java.util.List;
import java.util.Set;

/** The machine that is played forward: asked again after everything that happens to it. */
public interface Board {
    /** Everything in it that warms up, in the order of the circuit. */
    List<Body> bodies();

    /**
     * The machine after some things have happened to it.
     *
     * @param happened in this order; one that contradicts what was supposed or happened before changes nothing
     * @param hot names of windings to be taken at {@link #HOT_CELSIUS}; the others are at their stated temperature
     */
    Solved<Loads> after(List<Fault> happened, Set<String> hot);

    /** Temperature [°C] of what is called hot. */
    double HOT_CELSIUS = 150;

    /** A circuit with some of its windings at {@link #HOT_CELSIUS}. */
    static Circuit warmed(Circuit circuit, Set<String> hot) {
        return hot.isEmpty() ? circuit : Warmed.of(circuit, hot, HOT_CELSIUS);
    }
}
