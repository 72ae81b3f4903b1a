package fusetale.studies;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A family of supplies that differ in size only. Each rail has a winding, a fuse, a bridge, a bleeder and four coils with
 * drivers and flyback diodes, the first of them held on; every second rail has a capacitor; every fourth, from the first,
 * two lamps. All rails of a supply hang on one transformer, or each on one of its own.
 */
final class Family {
    private static final int COILS = 4;
    private static final int COLUMNS = 20;

    private Family() {}

    /** The supply as a circuit. */
    static Circuit supply(int rails, boolean ownTransformers) {
        CircuitFile read = CircuitReader.withShippedParts().readText("family.yaml", text(rails, ownTransformers));
        return Objects.requireNonNull(read.circuit(), () -> String.valueOf(read.errors()));
    }

    /** The supply as a circuit file. */
    static String text(int rails, boolean ownTransformers) {
        StringBuilder text = new StringBuilder();
        add(text, "format: 1");
        add(text, "name: %d rails", rails);
        add(
                text,
                "mains: {volts: 120 V, range: 110..126 V, hertz: 60 Hz, source: %s}",
                ownTransformers ? "1 mohm" : "0.1 ohm");
        add(text, "ground: gnd");
        add(text, "parts:");
        add(text, "  B1: {is: battery, plus: v5, minus: gnd, volts: 5 V, ohms: 50 mohm}");
        int first = 1;
        int together = ownTransformers ? 1 : rails;
        for (int transformer = 1; first <= rails; transformer++) {
            transformer(text, transformer, first, together);
            first += together;
        }
        for (int rail = 1; rail <= rails; rail++) {
            rail(text, rail);
        }
        drawing(text);
        return text.toString();
    }

    private static void transformer(StringBuilder text, int number, int firstRail, int rails) {
        double amps = 0.8 * rails;
        add(text, "  T%d:", number);
        add(text, "    is: transformer");
        add(
                text,
                "    primary: {pins: [line, neutral], volts: 120 V, ohms: %.3f ohm, amps: %.2f A}",
                4.0 / rails,
                amps);
        add(text, "    windings:");
        for (int rail = firstRail; rail < firstRail + rails; rail++) {
            add(
                    text,
                    "      w%d: {pins: [a%d, b%d], volts: %d V, ohms: 0.5 ohm, amps: 3 A}",
                    rail,
                    rail,
                    rail,
                    volts(rail));
        }
        add(text, "    regulation: 10 %%");
        add(text, "    magnetising: %d mA", 60 * rails);
        add(text, "    core loss: %d W", 3 * rails);
        add(text, "    leakage: 2 %%");
    }

    /** From 24 V up, each rail another, so that no two rails turn on at the same moment. */
    private static int volts(int rail) {
        return 24 + 2 * (rail % 13);
    }

    private static void rail(StringBuilder text, int rail) {
        add(text, "  F%d: {is: fuse, between: [a%d, c%d], rating: 6 A, speed: slow}", rail, rail, rail);
        add(
                text,
                "  BR%d: {is: bridge, ac: [c%d, b%d], plus: p%d, minus: gnd, model: bridge-6A}",
                rail,
                rail,
                rail,
                rail);
        add(text, "  R%d: {is: resistor, between: [p%d, gnd], value: 1 kohm, watts: 5 W}", rail, rail);
        if (rail % 2 == 0) {
            add(text, "  C%d: {is: electrolytic, plus: p%d, minus: gnd, value: 4700 uF, volts: 100 V}", rail, rail);
        }
        if (rail % 4 == 1) {
            add(
                    text,
                    "  E%d: {is: lamp, between: [p%d, gnd], volts: %d V, current: 0.1 A, count: 2}",
                    rail,
                    rail,
                    volts(rail));
        }
        for (int coil = 1; coil <= COILS; coil++) {
            String id = rail + "0" + coil;
            add(text, "  L%s: {is: coil, between: [p%d, k%s], ohms: 40 ohm, inductance: 30 mH}", id, rail, id);
            add(text, "  D%s: {is: diode, anode: k%s, cathode: p%d, model: 1N4004}", id, id, rail);
            add(text, "  Q%s: {is: darlington, collector: k%s, base: q%s, emitter: gnd, model: TIP102}", id, id, id);
            String end = coil == 1 ? "v5" : "gnd";
            add(text, "  R%s: {is: resistor, between: [%s, q%s], value: 330 ohm}", id, end, id);
        }
    }

    /** A file must say where its parts stand: one beside the other. */
    private static void drawing(StringBuilder text) {
        List<String> names = text.toString()
                .lines()
                .filter(line -> line.matches("  [A-Z]+\\d+:.*"))
                .map(line -> line.strip().split(":", 2)[0])
                .toList();
        add(text, "drawing:");
        for (int k = 0; k < names.size(); k++) {
            add(text, "  %s: {square: [%d, %d]}", names.get(k), k % COLUMNS, k / COLUMNS);
        }
    }

    private static void add(StringBuilder text, String line, Object... values) {
        text.append(String.format(Locale.ROOT, line, values)).append('\n');
    }
}
