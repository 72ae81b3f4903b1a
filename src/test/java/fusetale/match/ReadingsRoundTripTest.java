package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation.Aspect;
import fusetale.bench.Observation.Sight;
import fusetale.circuit.Circuit;
import fusetale.circuit.Controller;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Part;
import fusetale.circuit.TestPoint;
import fusetale.sentence.Sentence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is written is read as the same, whatever was found. */
class ReadingsRoundTripTest {
    private static final Circuit FERRY = ReadingsReaderTest.FERRY;
    private static final BenchWords BENCHES = new BenchWords(FERRY);
    private static final Meter METER = Meter.builtIn().get(0);

    @Test
    void whatIsWrittenReadsBackTheSame() {
        Random random = new Random(20261126);
        ReadingsWriter writer = new ReadingsWriter(FERRY);
        ReadingsReader reader = new ReadingsReader(FERRY);
        for (int run = 0; run < 300; run++) {
            Findings findings = findings(random);
            String text = writer.text(findings, METER);
            ReadingsFile read = reader.read("a.csv", text);

            assertThat(read.problems()).as(text).isEmpty();
            assertThat(read.findings().evidence()).as(text).containsExactlyElementsOf(findings.evidence());
            assertThat(read.findings()).as(text).isEqualTo(findings);
            assertThat(writer.text(read.findings(), METER)).isEqualTo(text);
        }
    }

    @Test
    void whateverIsInAFileThereIsAnAnswer() {
        Random random = new Random(5);
        ReadingsReader reader = new ReadingsReader(FERRY);
        String base = new ReadingsWriter(FERRY).text(findings(random), METER)
                + ",ohms,TP4,gnd,1e999,,,\n,dc,TP4,,1e308 kV,,,\n,start-up,,,999 of 4,,,\n,heat,J1.1,,hot,,,\n";
        for (int run = 0; run < 500; run++) {
            StringBuilder text = new StringBuilder(base);
            for (int k = 1 + random.nextInt(6); k > 0; k--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, ",;\"\n\r'=-+eE.9kΩ%s\\".charAt(random.nextInt(18)));
                    default -> text.setCharAt(at, text.charAt(random.nextInt(text.length())));
                }
            }
            ReadingsFile read = reader.read("a.csv", text.toString());

            assertThat(read.lines()).hasSize(read.findings().size());
            assertThat(read.problems()).allMatch(p -> p.isError() && !p.found().isEmpty());
        }
    }

    /** CWE-1236: a spreadsheet works out cells that begin with one of these signs. */
    @Test
    void noCellIsTakenForAFormula() {
        for (String note : List.of("=1+1", "+1-A1", "-2+3", "@SUM(A1)", "\t=1", "'=1", "=cmd|' /C calc'!A0")) {
            Evidence evidence = new Evidence(
                    new Ask.Metered(BENCHES.asFound(true), new Check("TP4", "gnd", MeterFunction.DC_VOLTS)),
                    new Shown.Figure(-12.4),
                    note);
            String text = new ReadingsWriter(FERRY).text(Findings.of(List.of(evidence)), METER);
            CsvRows.Row row = CsvRows.of(text).rows().get(1);

            assertThat(row.written(7)).startsWith("'").endsWith(note);
            // a negative figure stays one
            assertThat(row.written(4)).isEqualTo("-12.4");
        }
    }

    private static Findings findings(Random random) {
        List<Findings.Spell> spells = new ArrayList<>();
        spells.add(new Findings.Spell(List.of(), evidence(random, random.nextInt(5))));
        for (int k = random.nextInt(3); k > 0; k--) {
            spells.add(new Findings.Spell(
                    List.of(any(random, FERRY.parts()).name()), evidence(random, 1 + random.nextInt(3))));
        }
        return new Findings(spells);
    }

    private static List<Evidence> evidence(Random random, int many) {
        List<Evidence> all = new ArrayList<>();
        while (all.size() < many) {
            all.add(random.nextInt(3) == 0 ? seen(random) : metered(random));
        }
        return all;
    }

    private static Evidence metered(Random random) {
        MeterFunction function = any(random, Arrays.asList(MeterFunction.values()));
        TestPoint point = any(random, FERRY.points());
        String one = random.nextBoolean()
                ? point.name()
                : any(random, new ArrayList<>(FERRY.nets())).name();
        String other = random.nextBoolean() ? point.against().name() : "BR201.ac1";
        Check check = new Check(one, other, function);
        Shown shown = random.nextInt(4) == 0
                ? new Shown.Over()
                : new Shown.Figure(function == MeterFunction.CONTINUITY ? 0 : figure(random));
        return new Evidence(new Ask.Metered(arrangement(random, function.powered()), check), shown, note(random));
    }

    /** As a display shows it, and any double at all. */
    private static double figure(Random random) {
        double size = (random.nextBoolean() ? 1 : -1) * Math.pow(10, random.nextDouble() * 10 - 4);
        // no -0: a display's minus before a zero says nothing
        return 0
                + switch (random.nextInt(4)) {
                    case 0 -> 0;
                    case 1 -> size;
                    case 2 -> Math.rint(size);
                    default -> Math.rint(size * 1000) / 1000;
                };
    }

    private static Evidence seen(Random random) {
        Sight sight = any(random, Arrays.asList(Sight.values()));
        Part part = any(
                random,
                FERRY.parts().stream().filter(p -> fits(sight.aspect(), p)).toList());
        int counted = sight == Sight.STOPS ? random.nextInt(5) - 1 : -1;
        return new Evidence(
                new Ask.Noticed(arrangement(random, random.nextBoolean()), part.name(), sight.aspect()),
                new Shown.Seen(sight, counted),
                note(random));
    }

    private static boolean fits(Aspect aspect, Part part) {
        return switch (aspect) {
            case FUSE, RATING -> part instanceof Fuse;
            case LAMP -> part instanceof Lamp;
            case COIL -> part.name().startsWith("L20");
            case START_UP -> part instanceof Controller;
            case HUM -> part instanceof Electrolytic;
            case HEAT -> true;
        };
    }

    private static Arrangement arrangement(Random random, boolean powerOn) {
        Arrangement arrangement = BENCHES.asFound(powerOn);
        if (random.nextInt(3) == 0) {
            arrangement = arrangement.withPulledFuse("F201");
        }
        if (random.nextInt(4) == 0) {
            arrangement = arrangement.withPulledFuse("F102");
        }
        if (random.nextInt(4) == 0) {
            arrangement = arrangement.withLiftedPin("C101.plus");
        }
        if (random.nextInt(5) == 0) {
            arrangement = arrangement.withUnplugged("J1");
        }
        if (random.nextInt(5) == 0) {
            arrangement = arrangement.withClip("TP4", "gnd");
        }
        if (powerOn && random.nextInt(4) == 0) {
            arrangement = arrangement.withHeldOn("L205");
        }
        if (powerOn && random.nextInt(4) == 0) {
            arrangement = arrangement.withSeriesLamp(60.0 + random.nextInt(40));
        }
        if (powerOn && random.nextInt(4) == 0) {
            arrangement = arrangement.withMainsVolts(110.5 + random.nextInt(10));
        }
        return Sentence.named(arrangement);
    }

    private static String note(Random random) {
        String signs = "ab ,;\t\"'\r\n=+-@Ωµ½1";
        StringBuilder note = new StringBuilder();
        for (int k = random.nextInt(8); k > 0; k--) {
            note.append(signs.charAt(random.nextInt(signs.length())));
        }
        return note.toString();
    }

    private static <T> T any(Random random, List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
