package fusetale.circuit;

/** A small circuit as text, line numbers in the margin of the source: tests spoil one line of it. */
final class Sample {
    /** Name under which the text is read. */
    static final String NAME = "bench.yaml";

    /** Line 1 is {@code format}, 6 T1, 7 R1, 8 C1, 10 TP1, 12 J1, 14 to 15 the arrangements, 17 to 19 the drawing. */
    static final String TEXT = """
            format: 1
            name: Bench
            mains: {volts: 120 V, hertz: 60 Hz}
            ground: gnd
            parts:
              T1: {is: transformer, primary: {pins: [line, neutral], volts: 120 V, ohms: 12 ohm}, windings: {sec: {pins: [raw, gnd], volts: 12 V, ohms: 1 ohm}}, regulation: 12 %}
              R1: {is: resistor, between: [out, gnd], value: 47 ohm, tolerance: ±10 %}
              C1: {is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}
            testpoints:
              TP1: {at: out, label: output}
            connectors:
              J1: {pins: {1: {board: out, harness: raw}}}
            arrangements:
              power on: {power: on}
              power off: {power: off, unplugged: [J1], lifted: [R1.one], clips: [[TP1, gnd]]}
            drawing:
              T1: {square: [0, 0]}
              R1: {square: [1, 0]}
              C1: {square: [2, 0]}
            """;

    private Sample() {}

    /** The text with one stretch of it replaced, which must be there. */
    static String with(String old, String fresh) {
        if (!TEXT.contains(old)) {
            throw new IllegalArgumentException("the sample does not hold: " + old);
        }
        return TEXT.replace(old, fresh);
    }

    /** The same, read. */
    static CircuitFile read(String text) {
        return CircuitReader.withShippedParts().readText(NAME, text);
    }

    /** Reads the text with one stretch replaced and gives its problems as a repairer sees them. */
    static java.util.List<String> problemsWith(String old, String fresh) {
        return read(with(old, fresh)).problems().stream().map(Problem::toString).toList();
    }
}
