package fusetale.sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import fusetale.circuit.Circuit;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompletionTest {
    private static final Circuit FERRY = WholeSentenceTest.read("circuits/night-ferry.yaml");
    private static final Sentences SENTENCES = new Sentences(FERRY);
    private static final Sentence FIRST = Sentence.atFirst(FERRY);
    private static final List<String> TYPED = List.of(
            "",
            "d",
            "d301",
            "d301 ",
            "d301 s",
            "f",
            "f202 ",
            "p",
            "pu",
            "pull f",
            "meter ",
            "range ",
            "br201 leg 1 ",
            "tp",
            "suppose d3",
            "d301 s and f2",
            "lift br",
            "s201 ",
            "c101 ",
            "clip ",
            "hold l",
            "mains ",
            "lamp ",
            "put b",
            "arrangement ",
            "pulse l",
            "charge c",
            "red ",
            "leads tp",
            "power ",
            "no l",
            "diode ");

    /** Failures in the order of their share, by what they are called in the line. */
    @ParameterizedTest
    @ValueSource(strings = {"D301", "C101", "F202", "BR201", "L201", "Q201", "J2", "T101"})
    void failuresOfAPartComeMostCommonFirst(String part) {
        List<Double> shares = SENTENCES.completions(FIRST, part.toLowerCase(Locale.ROOT) + " ").stream()
                .map(c -> SENTENCES.understood(FIRST, c.line()))
                .filter(u -> u instanceof Understood.Means m
                        && !m.after().supposition().isNothing())
                .map(u -> ((Understood.Means) u).after().supposition().faults().get(0))
                .map(f -> Catalogue.possible(FERRY, part).stream()
                        .filter(form -> form.covers(f))
                        .findFirst()
                        .orElseThrow()
                        .priorRatio())
                .toList();
        double commonest = Catalogue.possible(FERRY, part).stream()
                .mapToDouble(FaultForm::priorRatio)
                .max()
                .orElseThrow();

        assertThat(shares).isNotEmpty().isSortedAccordingTo(Comparator.reverseOrder());
        assertThat(shares.get(0)).isEqualTo(commonest);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "d301 s | D301 is shorted | D301 is shorted",
                "br201 leg 1 o | BR201 leg 1 is open | BR201 leg 1 is open",
                "f202 p | F202 pulled | F202 pulled",
                "d301 s and f202 b | d301 s and F202 is blown | F202 is blown",
                "suppose c101 dr | suppose C101 is dried out | C101 is dried out",
                "pull f20 | pull F201 | F201 pulled",
                "dio | diode | diode test; power off",
                "d30 | D301 | D301: short, open, leaky ...",
                "tp10 | TP10 to gi1r | red lead on TP10, black lead on gi1r",
                "meter ba | meter basic 3½ digit | basic 3½ digit meter",
                "meter on o | meter on ohms | Power off, meter on ohms",
                "power | power | on or off",
                "power o | power off | Power off",
                "clip tp1 | clip TP1 to gnd | a clip lead from TP1 to gnd",
                "clip tp4 to tp5 | clip tp4 to TP5 | a clip lead from TP4 to TP5",
                "leads tp4 tp5 | leads tp4 TP5 | red lead on TP4, black lead on TP5",
                "red tp4 | red TP4 | red lead on TP4, black lead on gnd",
                "red lead on tp4 | red lead on TP4 | red lead on TP4, black lead on gnd",
                "coin | arrangement coin door open | set the bench as the file says: coin door open"
            })
    void linesGoOn(String typed, String line, String words) {
        assertThat(SENTENCES.completions(FIRST, typed))
                .extracting(c -> c.line().strip(), Completion::words)
                .contains(tuple(line, words));
    }

    @Test
    void anEmptyLineOffersPartsAndTheBench() {
        List<String> lines =
                SENTENCES.completions(FIRST, "").stream().map(Completion::line).toList();

        assertThat(lines).hasSizeBetween(8, 12).contains("power off", "ohms").anyMatch(l -> l.endsWith(" "));
    }

    /** What is offered in full is understood, and never less than what was typed. */
    @Test
    void whatIsOfferedIsUnderstood() throws SentenceException {
        Sentence now = SENTENCES.apply(FIRST, "pull f301");
        for (String typed : TYPED) {
            List<Completion> offered = SENTENCES.completions(now, typed);
            assertThat(offered)
                    .as(typed)
                    .isNotEmpty()
                    .hasSizeLessThanOrEqualTo(12)
                    .doesNotHaveDuplicates();
            for (Completion completion : offered) {
                boolean tobegun = completion.line().endsWith(" ") || Verbs.has(completion.line());
                if (!tobegun) {
                    assertThat(SENTENCES.understood(now, completion.line()))
                            .as("'%s' for '%s'", completion.line(), typed)
                            .isInstanceOf(Understood.Means.class);
                }
            }
        }
    }

    /** As fast as typing: half of all answers within 5 ms, on the largest board. */
    @Test
    void completionsComeAtOnce() {
        for (int warm = 0; warm < 20; warm++) {
            TYPED.forEach(t -> SENTENCES.completions(FIRST, t));
        }
        long[] nanos = TYPED.stream()
                .mapToLong(t -> {
                    long start = System.nanoTime();
                    SENTENCES.completions(FIRST, t);
                    return System.nanoTime() - start;
                })
                .sorted()
                .toArray();

        assertThat(nanos[nanos.length / 2] / 1e6).as(Arrays.toString(nanos)).isLessThan(5);
    }
}
