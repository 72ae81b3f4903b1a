package fusetale.sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fusetale.bench.Arrangement;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import fusetale.fault.OneOfEach;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a sentence says is the whole state, and reads back as the same state. */
class WholeSentenceTest {
    private static final int STATES = 200;
    private static final Circuit NIGHT_FERRY = read("circuits/night-ferry.yaml");
    private static final Sentences FERRY = new Sentences(NIGHT_FERRY);

    static Circuit read(String file) {
        return Objects.requireNonNull(
                CircuitReader.withShippedParts().read(Path.of(file)).circuit());
    }

    static Stream<Circuit> circuits() {
        return Stream.of(
                read("circuits/first-light.yaml"), read("circuits/fog-bell.yaml"), NIGHT_FERRY, OneOfEach.circuit());
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void everyStateReadsBack(Circuit circuit) throws SentenceException {
        Sentences sentences = new Sentences(circuit);
        RandomStates states = new RandomStates(circuit, 7);

        for (int i = 0; i < STATES; i++) {
            Sentence state = sentences.settled(states.next());
            assertThat(sentences.parse(sentences.text(state)))
                    .as(sentences.text(state))
                    .isEqualTo(state);
        }
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void everyStateReadsBackFromTheShortLinesOfItsPieces(Circuit circuit) throws SentenceException {
        Sentences sentences = new Sentences(circuit);
        RandomStates states = new RandomStates(circuit, 8);
        Sentence plain = sentences.parse("Suppose nothing. Power on.");

        for (int i = 0; i < STATES; i++) {
            Sentence state = sentences.settled(states.next());
            String line = sentences.pieces(state).stream()
                    .map(Piece::compact)
                    .filter(c -> !c.isEmpty())
                    .collect(Collectors.joining(", "));
            // read as if behind "suppose": there, failures of one place stand beside each other
            assertThat(sentences.supposing(plain, List.of(line)).sentence())
                    .as(line)
                    .isEqualTo(state);
        }
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void everyFailureAndEverySwapReadsBack(Circuit circuit) throws SentenceException {
        Sentences sentences = new Sentences(circuit);
        Sentence first = Sentence.atFirst(circuit);

        for (FaultForm form : Catalogue.possible(circuit)) {
            Sentence state = first.withSupposition(new Supposition(List.of(form.usual())));
            assertThat(sentences.parse(sentences.text(state)))
                    .as(sentences.text(state))
                    .isEqualTo(state);
        }
        for (Swap swap : SwapSentenceTest.everySwap(circuit)) {
            Sentence state = first.withSupposition(new Supposition(List.of(), List.of(swap)));
            assertThat(sentences.parse(sentences.text(state)))
                    .as(sentences.text(state))
                    .isEqualTo(state);
        }
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void everyArrangementOfTheFileReadsBack(Circuit circuit) throws SentenceException, UnfitArrangement {
        Sentences sentences = new Sentences(circuit);
        for (BenchSetting setting : circuit.settings()) {
            Arrangement arrangement = Arrangement.of(circuit, setting);
            MeterFunction function = arrangement.powerOn() ? MeterFunction.DC_VOLTS : MeterFunction.OHMS;
            Sentence state = sentences.settled(new Sentence(
                    Supposition.NOTHING, arrangement, Setting.usual().withFunction(function)));

            assertThat(sentences.parse(sentences.text(state))).isEqualTo(state);
            assertThat(sentences.apply(Sentence.atFirst(circuit), "arrangement " + setting.name()))
                    .as(setting.name())
                    .extracting(Sentence::arrangement)
                    .isEqualTo(state.arrangement());
        }
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void textsOfThePiecesAreTheSentence(Circuit circuit) {
        Sentences sentences = new Sentences(circuit);
        RandomStates states = new RandomStates(circuit, 9);

        for (int i = 0; i < 50; i++) {
            Sentence state = states.next();
            String text = sentences.text(state);
            assertThat(sentences.pieces(state).stream().map(Piece::text).collect(Collectors.joining()))
                    .isEqualTo(text);
            assertThat(text).startsWith("Suppose ").endsWith(".").doesNotContain("  ");
            assertThat(sentences.pieces(state))
                    .filteredOn(p -> p.kind() != Piece.Kind.METER)
                    .extracting(Piece::text)
                    .noneMatch(t -> t.contains("Ω"));
        }
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void aPieceTakenAwayIsGoneAndTheRestStays(Circuit circuit) throws SentenceException {
        Sentences sentences = new Sentences(circuit);
        RandomStates states = new RandomStates(circuit, 10);

        for (int i = 0; i < 60; i++) {
            Sentence state = sentences.settled(states.next());
            for (Piece piece : sentences.pieces(state)) {
                Sentence without = sentences.without(state, piece);
                List<String> left = sentences.pieces(without).stream()
                        .filter(p -> p.kind() == piece.kind())
                        .map(Piece::text)
                        .toList();
                switch (piece.kind()) {
                    case WORDS -> assertThat(without).isEqualTo(state);
                    case POWER -> assertThat(left).containsExactly("Power on");
                    case METER -> assertThat(left).containsExactly("meter");
                    case FUNCTION -> assertThat(left).containsAnyOf("d.c. volts", "ohms");
                    default -> assertThat(left).as(piece.text()).doesNotContain(piece.text());
                }
                assertThat(sentences.parse(sentences.text(without)))
                        .as("%s without %s", sentences.text(state), piece.text())
                        .isEqualTo(without);
            }
        }
    }

    @Test
    void amountsCanBeDraggedOverTheirRange() throws SentenceException {
        Sentence state =
                FERRY.parse("Suppose C101 is dried out to 40 % left. Power on, mains 110 V, a 60 W lamp in series.");
        for (Piece piece : FERRY.pieces(state)) {
            AmountRange range = FERRY.range(piece).orElse(null);
            if (range == null) {
                continue;
            }
            for (double si : new double[] {range.lowSi(), range.usualSi(), range.highSi()}) {
                Sentence dragged = FERRY.withAmount(state, piece, new Quantity(si, range.unit()));
                assertThat(FERRY.parse(FERRY.text(dragged))).isEqualTo(dragged);
            }
            assertThatIllegalArgumentException()
                    .isThrownBy(() ->
                            FERRY.withAmount(state, piece, new Quantity(2 * range.highSi() + 1, range.unit())));
        }
        assertThat(FERRY.pieces(state).stream().filter(p -> FERRY.range(p).isPresent()))
                .extracting(Piece::kind)
                .containsExactly(Piece.Kind.FAULT, Piece.Kind.MAINS, Piece.Kind.LAMP);
    }

    @Test
    void aPieceOfAnotherStateChangesNothing() throws SentenceException {
        Sentence state = FERRY.parse("Suppose D301 is shorted. Power on.");
        Piece gone = FERRY.pieces(state).get(1);
        Sentence later = FERRY.parse("Suppose D302 is open. Power on.");

        assertThat(FERRY.without(later, gone)).isEqualTo(later);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FERRY.withAmount(later, gone, new Quantity(0.1, Unit.OHM)));
    }

    @Test
    void orderOfTheDeedsDoesNotMatter() {
        Arrangement one =
                Arrangement.powered(NIGHT_FERRY).withPulledFuse("F202").withPulledFuse("F201");
        Arrangement other = Arrangement.powered(NIGHT_FERRY)
                .withPulledFuse("F201")
                .withPulledFuse("F202")
                .withPulledFuse("F201");
        assertThat(Sentence.named(one)).isEqualTo(Sentence.named(other));
        assertThat(Sentence.named(one.withClip("gnd", "TP1"))).isEqualTo(Sentence.named(other.withClip("TP1", "gnd")));
        assertThat(Sentence.named(one).pulledFuses()).containsExactly("F201", "F202");
        assertThat(Sentence.named(one.withName("something else")).name()).contains("F201 pulled, F202 pulled");
    }

    // the window's own examples
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "d301 s | Suppose D301 is shorted. Power on, meter on d.c. volts.",
                "Suppose D301 is shorted and F201 holds a 25 A fuse. Power on, F202 pulled, a 100 W lamp in series,"
                        + " L201 held on, meter on a.c. volts. | Suppose D301 is shorted and F201 holds a 25 A fuse."
                        + " Power on, F202 pulled, a 100 W lamp in series, L201 held on, meter on a.c. volts.",
                "suppose c101 high-esr:5ohm; power off | Suppose C101 has high ESR, 5 ohm. Power off, meter on d.c. volts.",
                "ohms | Suppose nothing. Power off, meter on ohms.",
                "meter basic, range 20 V | Suppose nothing. Power on, basic 3½ digit meter on d.c. volts, range 20 V.",
                "tp4 to gnd | Suppose nothing. Power on, meter on d.c. volts, red lead on TP4, black lead on gnd.",
                "tp10, ac volts | Suppose nothing. Power on, meter on a.c. volts, red lead on TP10, black lead on gi1r.",
                "charge c101 8 | Suppose nothing. Power off, C101 charged to 8 V, meter on d.c. volts.",
                "pulse l201 40 ms | Suppose nothing. Power on, L201 pulsed for 40 ms, meter on d.c. volts.",
                "lift br201.ac1, clip tp1 gnd, s201 open | Suppose nothing. Power on, BR201.ac1 lifted,"
                        + " a clip lead from TP1 to gnd, S201 open, meter on d.c. volts."
            })
    void linesGiveTheSentence(String line, String sentence) throws SentenceException {
        assertThat(FERRY.text(FERRY.apply(Sentence.atFirst(NIGHT_FERRY), line))).isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "br201 leg 1 s, lift br201.ac1 | Suppose BR201 leg 1 is shorted. Power on, BR201 pin ac1 lifted,"
                        + " meter on DC volts.",
                "c101=dried-out:40%, f201=wrong-rating:25A | Suppose C101 is dried out to 40 per cent left and"
                        + " F201 holds a 25 amp fuse. Power on, meter on DC volts.",
                "r401 has drifted to x1.5 of nominal | Suppose R401 has drifted to 1.5 times nominal. Power on,"
                        + " meter on DC volts.",
                "c101 10000uF, j2.1 burnt 2 ohm, pulse l201 40 ms | Suppose C101 is 10000 microfarads and"
                        + " J2 pin 1 is burnt, 2 ohms. Power on, L201 pulsed for 40 milliseconds, meter on DC volts."
            })
    void unitsAndSignsAreSpoken(String line, String spoken) throws SentenceException {
        assertThat(FERRY.spoken(FERRY.apply(Sentence.atFirst(NIGHT_FERRY), line)))
                .isEqualTo(spoken);
    }

    @Test
    void theSentenceWithoutItsMeterEndsBeforeIt() throws SentenceException {
        assertThat(FERRY.textWithoutMeter(FERRY.parse("Suppose D301 is shorted. Power off, F202 pulled, tp4 to gnd.")))
                .isEqualTo("Suppose D301 is shorted. Power off, F202 pulled.");
    }
}
