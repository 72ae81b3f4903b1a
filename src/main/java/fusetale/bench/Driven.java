package fusetale.bench;

import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Part;
import java.util.ArrayList;
import java.util.List;

/** What logic outputs switch on, and how. */
public final class Driven {
    /** A shorter pulse ends before a step of the solver is told from a step of the driver. */
    public static final double SHORTEST_PULSE_SECONDS = BenchSetting.SHORTEST_PULSE_SECONDS;
    /** A longer one is no pulse: hold it on. */
    public static final double LONGEST_PULSE_SECONDS = BenchSetting.LONGEST_PULSE_SECONDS;

    /** A logic output whose high side has more than this [ohm] cannot pull up: an open collector. */
    private static final double OPEN_COLLECTOR_FROM_OHMS = 1e6;

    private Driven() {}

    /** The outputs that command a coil or a lamp, or the output of this name. */
    static List<LogicOutput> outputs(Circuit circuit, String name) {
        List<LogicOutput> outputs = new ArrayList<>();
        for (Part part : circuit.parts()) {
            if (part instanceof LogicOutput output && (output.name().equals(name) || name.equals(output.commands()))) {
                outputs.add(output);
            }
        }
        return outputs;
    }

    /** Everything that can be held on or pulsed: logic outputs, and what they switch on. */
    public static List<String> names(Circuit circuit) {
        List<String> known = new ArrayList<>();
        for (Part part : circuit.parts()) {
            if (part instanceof LogicOutput output) {
                known.add(output.name());
                String commands = output.commands();
                if (commands != null) {
                    known.add(commands);
                }
            }
        }
        return known;
    }

    /** The level that an output has while it works. */
    static LogicOutput.State working(LogicOutput output) {
        return switch (output.state()) {
            case HIGH -> LogicOutput.State.LOW;
            case LOW -> LogicOutput.State.HIGH;
            case OFF ->
                output.highOhms().si() > OPEN_COLLECTOR_FROM_OHMS ? LogicOutput.State.LOW : LogicOutput.State.HIGH;
        };
    }

    /** The same output at another level. */
    static LogicOutput inState(LogicOutput o, LogicOutput.State state) {
        return new LogicOutput(
                o.name(), o.out(), o.supply(), o.ground(), o.highOhms(), o.lowOhms(), state, o.commands(), o.about());
    }
}
