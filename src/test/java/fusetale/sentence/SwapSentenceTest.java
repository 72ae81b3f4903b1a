package fusetale.sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Mounting;
import fusetale.circuit.Part;
import fusetale.fault.Fitting;
import fusetale.fault.Replacements;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SwapSentenceTest {
    private static final Circuit NIGHT_FERRY = read("circuits/night-ferry.yaml");
    private static final SentenceParser PARSER = new SentenceParser(NIGHT_FERRY);

    private static Circuit read(String file) {
        return Objects.requireNonNull(
                CircuitReader.withShippedParts().read(Path.of(file)).circuit());
    }

    /** Everything that fits any part of a circuit, with several values and ratings. */
    static List<Swap> everySwap(Circuit circuit) {
        List<Swap> all = new ArrayList<>();
        for (Part part : circuit.parts()) {
            Replacements may = Replacements.of(circuit, part.name()).orElse(null);
            if (may == null) {
                continue;
            }
            may.models().forEach(m -> all.add(new Swap(part.name(), new Fitting.Model(m))));
            if (may.mounted()) {
                for (Mounting mounting : Mounting.values()) {
                    all.add(new Swap(part.name(), new Fitting.Mounted(mounting)));
                }
            }
            Unit value = may.value();
            Unit rating = may.rating();
            if (value != null && rating != null) {
                for (double si : value == Unit.FARAD ? new double[] {1e-9, 4.7e-6, 0.022} : new double[] {0.47, 4700}) {
                    Quantity fitted = new Quantity(si, value);
                    all.add(new Swap(part.name(), new Fitting.Value(fitted, null)));
                    all.add(new Swap(part.name(), new Fitting.Value(fitted, new Quantity(6.3, rating))));
                }
            }
            if (may.link()) {
                all.addAll(links(part.name()));
            }
        }
        return all;
    }

    private static List<Swap> links(String fuse) {
        List<Swap> all = new ArrayList<>();
        for (double amps : new double[] {0.25, 5, 8}) {
            Quantity rated = new Quantity(amps, Unit.AMPERE);
            all.add(new Swap(fuse, new Fitting.Link(rated, null, null)));
            for (FuseLink.Speed speed : FuseLink.Speed.values()) {
                all.add(new Swap(fuse, new Fitting.Link(rated, speed, null)));
                for (FuseLink.Standard standard : FuseLink.Standard.values()) {
                    all.add(new Swap(fuse, new Fitting.Link(rated, speed, standard)));
                }
            }
        }
        return all;
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-light", "night-ferry", "fog-bell"})
    void everySwapReadsBackAsItWasMeant(String name) throws UnfitSupposition, SentenceException {
        Circuit circuit = read("circuits/" + name + ".yaml");
        SentenceParser parser = new SentenceParser(circuit);
        SentencePrinter printer = new SentencePrinter(circuit);
        List<Swap> swaps = everySwap(circuit);

        assertThat(swaps).hasSizeGreaterThan(20);
        for (Swap swap : swaps) {
            Supposition supposition = new Supposition(List.of(), List.of(swap));
            assertThat(parser.parse(printer.sentence(supposition))).isEqualTo(supposition);
            assertThat(parser.parse(SentencePrinter.compact(supposition))).isEqualTo(supposition);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "BR201 is a bridge-35A | BR201=bridge-35A",
                "br201 is a Bridge-35a | BR201=bridge-35A",
                "BR201=bridge-35A:standing-clear | BR201=bridge-35A BR201=standing-clear",
                "BR201 is a bridge-35A, standing clear | BR201=bridge-35A BR201=standing-clear",
                "BR201 stands clear of the plate | BR201=standing-clear",
                "BR201 sits on the chassis | BR201=on-chassis",
                "BR201 hangs in free air | BR201=free-air",
                "C101 is 10000 uF | C101=10000uF",
                "C101 is 10000 μF, 63 V | C101=10000uF:63V",
                "C101=0.01F:63V | C101=10000uF:63V",
                "R403 is 4k7 | R403=4.7kohm",
                "F201 is a 5 A fast fuse | F201=5A:quick",
                "F201=5A:fast | F201=5A:quick",
                "F201 is an IEC 5 A slow fuse | F201=5A:slow:IEC",
                "F201 is a 6.3 A time-lag fuse to IEC 60127 | F201=6.3A:slow:IEC",
                "F201=IEC 5 A slow | F201=5A:slow:IEC",
                "F201 is a 5 A fuse | F201=5A",
                "F201=0,063A:quick | F201=63mA:quick",
                "F201=0,063A | F201=63mA",
                "F201 is a 0,063 A quick fuse | F201=63mA:quick",
                "F201=3,15A:slow | F201=3.15A:slow",
                "F201 is a slow, 3,15 A fuse | F201=3.15A:slow",
                "F201 is a 3,15 A fuse, quick | F201=3.15A:quick",
                "F201 holds a 5 A slow fuse | F201=5A:slow",
                "F201 holds a 25 A fuse | F201=wrong-rating:25A",
                "U101=5v-1a | U101=5V-1A",
                "BR201.leg1=short BR201=bridge-35A | BR201=bridge-35A BR201.leg1=short",
                "BR201 is a bridge-35A and C101 is dried out to 40 % left | BR201=bridge-35A C101=dried-out:40%",
            })
    void lineMeansTheSameAsItsCompactForm(String line, String compact) throws SentenceException {
        assertThat(SentencePrinter.compact(PARSER.parse(line))).isEqualTo(compact);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "BR201=bridge-35A | Suppose BR201 is a bridge-35A.",
                "BR201=bridge-35A:standing-clear | Suppose BR201 is a bridge-35A and BR201 stands clear of the plate.",
                "C101=22000uF:25V | Suppose C101 is 22000 μF, 25 V.",
                "F201=5A:slow:IEC | Suppose F201 is an IEC 5 A slow fuse.",
                "F201=8A:quick | Suppose F201 is an 8 A quick fuse.",
            })
    void sentenceIsPlain(String compact, String sentence) throws SentenceException, UnfitSupposition {
        assertThat(new SentencePrinter(NIGHT_FERRY).sentence(PARSER.parse(compact)))
                .isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "BR201=1N4007 | 1N4007 is a diode, and BR201 is a bridge. Allowed: bridge-4A",
                "BR201=bridge-35 | nearest: 'bridge-35A'",
                "C101=10000 | C101=10000 lacks its unit: write it behind, as in C101=10000uF",
                "C101=10000uF:63 | C101=63 lacks its unit: write it behind, as in C101=63V",
                "F201=5 | F201=5 lacks its unit: write it behind, as in F201=5A:slow",
                "C101=-5uF | nothing has a value below zero, or none",
                "C101=50F | C101 can be 1 pF to 10 F, not 50 F",
                "F201=500A | F201 can be 20 mA to 100 A, not 500 A",
                "C101=10ohm | C101",
                "BR201=bridge-35A:flying | 'flying' is neither a model for BR201 nor a mounting",
                "C101=10000uF:63V:red | nothing behind them",
                "T101=bridge-4A | T101",
                "BR201=bridge-35A BR201=bridge-4A | BR201=bridge-35A and BR201=bridge-4A contradict each other",
                "BR201=bridge-35A BR201=bridge-35A | BR201=bridge-35A is said twice; say it once",
                "F201=5A:slow F201=wrong-rating:25A | F201=5A and F201=wrong-rating contradict each other",
            })
    void whatDoesNotFitIsToldWithWhatWould(String line, String told) {
        assertThat(catchThrowableOfType(SentenceException.class, () -> PARSER.parse(line)))
                .hasMessageContaining(told);
    }

    @Test
    void faultAndSwapOfOnePartHoldTogether() throws SentenceException {
        Supposition both = PARSER.parse("BR201=bridge-35A BR201.leg1=short");

        assertThat(both.swaps()).hasSize(1);
        assertThat(both.faults()).hasSize(1);
    }
}
