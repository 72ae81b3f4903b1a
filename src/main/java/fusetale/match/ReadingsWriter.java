package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.bench.Observation.Sight;
import fusetale.circuit.Circuit;
import fusetale.circuit.Controller;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;

/**
 * Writes findings as {@link ReadingsReader} reads them: CSV by RFC 4180, safe to open in a spreadsheet. Read again they are
 * the same. For one circuit; belongs to one thread.
 */
public final class ReadingsWriter {
    private static final Words WORDS = Words.of(ReadingsWriter.class);
    private static final String OVER = "OL";

    private final Circuit circuit;
    private final BenchWords benches;

    /** For readings on one circuit. */
    public ReadingsWriter(Circuit circuit) {
        this.circuit = circuit;
        this.benches = new BenchWords(circuit);
    }

    /**
     * The whole file, heading first.
     *
     * @param meter the meter it was read with
     */
    public String text(Findings findings, Meter meter) {
        StringBuilder text = new StringBuilder(CsvRows.line(Column.all()));
        for (Findings.Spell spell : findings.spells()) {
            for (String part : spell.replaced()) {
                text.append(CsvRows.line(List.of("", WORDS.say("replaced"), part, "", "", "", "", "")));
            }
            spell.evidence().forEach(e -> text.append(CsvRows.line(cells(e, meter))));
        }
        return text.toString();
    }

    /**
     * What was asked in words, with the bench where that does not go without saying: {@code TP4 to gnd, ohms} and {@code TP4
     * to gnd, ohms (Power off, F201 pulled)}.
     */
    public String words(Ask ask) {
        boolean powerOn = !(ask instanceof Ask.Metered metered)
                || metered.check().function().powered();
        String bench = bench(ask.arrangement());
        return bench.equals(bench(benches.asFound(powerOn))) ? ask.words() : ask.words() + " (" + bench + ")";
    }

    /** How the bench is set, as a cell says it. */
    public String bench(Arrangement arrangement) {
        return benches.written(arrangement);
    }

    /**
     * What was read or seen, as a display or a repairer says it: {@code 17.4 V}, {@code OL}, {@code dark}, {@code stops at 2 of
     * 4}.
     */
    public String words(Evidence evidence) {
        if (evidence.ask() instanceof Ask.Metered metered) {
            String[] shown = shown(metered.check().function(), evidence.shown());
            return (shown[0] + " " + shown[1]).strip().replace("ohm", "Ω");
        }
        return evidence.shown() instanceof Shown.Seen seen ? sight(evidence.ask(), seen) : OVER;
    }

    private List<String> cells(Evidence evidence, Meter meter) {
        String bench = benches.written(evidence.ask().arrangement());
        if (evidence.ask() instanceof Ask.Metered metered) {
            MeterFunction function = metered.check().function();
            String[] shown = shown(function, evidence.shown());
            return List.of(
                    bench,
                    function.words(),
                    metered.check().from(),
                    metered.check().to(),
                    shown[0],
                    shown[1],
                    meter.name(),
                    evidence.note());
        }
        Ask.Noticed noticed = (Ask.Noticed) evidence.ask();
        return List.of(bench, noticed.aspect().words(), noticed.part(), "", words(evidence), "", "", evidence.note());
    }

    /** Value and unit. */
    private static String[] shown(MeterFunction function, Shown shown) {
        boolean buzzer = function == MeterFunction.CONTINUITY;
        if (!(shown instanceof Shown.Figure figure)) {
            return new String[] {buzzer ? WORDS.say("silent") : OVER, ""};
        }
        if (buzzer) {
            return new String[] {WORDS.say("beeps"), ""};
        }
        double size = Math.abs(figure.si());
        Unit unit = function.unit();
        // hundredths of a volt are read as volts: 0.61 V
        if (size == 0) {
            return new String[] {"0", unit.symbol()};
        }
        if (unit == Unit.VOLT && size >= 0.01 && size < 1) {
            return new String[] {new BigDecimal(Double.toString(figure.si())).toPlainString(), unit.symbol()};
        }
        String typed = Notation.typed(new Quantity(figure.si(), unit));
        int blank = typed.lastIndexOf(' ');
        return new String[] {typed.substring(0, blank), typed.substring(blank + 1)};
    }

    private String sight(Ask ask, Shown.Seen seen) {
        if (seen.sight() != Sight.STOPS || seen.counted() < 0) {
            return seen.sight().words();
        }
        int of = circuit.parts().stream()
                .filter(p -> ask instanceof Ask.Noticed noticed && p.name().equals(noticed.part()))
                .mapToInt(p ->
                        p instanceof Controller controller ? controller.checks().size() : 0)
                .sum();
        return WORDS.say("stops-at", seen.counted(), of);
    }
}
