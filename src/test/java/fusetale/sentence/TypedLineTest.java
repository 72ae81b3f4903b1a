package fusetale.sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import fusetale.circuit.Circuit;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** One typed line after the other changes the state; what is not understood says what would be. */
class TypedLineTest {
    private static final Circuit FERRY = WholeSentenceTest.read("circuits/night-ferry.yaml");
    private static final Sentences SENTENCES = new Sentences(FERRY);
    private static final Sentence FIRST = Sentence.atFirst(FERRY);

    static List<Circuit> circuits() {
        return WholeSentenceTest.circuits().toList();
    }

    /** The state after some lines, one after the other. */
    private static String after(String lines) throws SentenceException {
        Sentence now = FIRST;
        for (String line : lines.split(">", -1)) {
            now = SENTENCES.apply(now, line.strip());
        }
        return SENTENCES.text(now);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // failures are added; another at the same place replaces the first, as another amount does
                "d301 s > f201 bl and r101 open | Suppose D301 is shorted and F201 is blown and R101 is open.",
                "d301 s > f201 bl > d301 o | Suppose D301 is open and F201 is blown.",
                "c101=dried-out:40% > c101=dried-out:20% | Suppose C101 is dried out to 20 % left.",
                "br201 leg 1 s > br201 leg 2 s | Suppose BR201 leg 1 is shorted and BR201 leg 2 is shorted.",
                "c101 10000uF > c101 4700uF > c101 dr | Suppose C101 is 4700 μF and C101 is dried out.",
                "d301 s > suppose d302 o | Suppose D302 is open.",
                "d301 s > nothing | Suppose nothing.",
                "d301 s > f201 bl > put back d301 | Suppose F201 is blown.",
                "br201 leg 1 s > put back br201.leg1 | Suppose nothing.",
                "suppose f202 pulled | Suppose F202 is missing."
            })
    void suppositions(String lines, String supposed) throws SentenceException {
        assertThat(after(lines)).startsWith(supposed + " Power on, ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "power off | Power off, meter on d.c. volts.",
                "off | Power off, meter on d.c. volts.",
                "pow of | Power off, meter on d.c. volts.",
                "off > on | Power on, meter on d.c. volts.",
                "mains 110 | Power on, mains 110 V, meter on d.c. volts.",
                "at 25 kHz | Power on, at 25 kHz, meter on d.c. volts.",
                "at 1k5 Hz > at usual frequency | Power on, meter on d.c. volts.",
                "mains 110,5 V > mains 120 | Power on, meter on d.c. volts.",
                "lamp 100 W | Power on, a 100 W lamp in series, meter on d.c. volts.",
                "an 80 W lamp in series | Power on, an 80 W lamp in series, meter on d.c. volts.",
                "lamp 60 > no lamp | Power on, meter on d.c. volts.",
                "pull f202 | Power on, F202 pulled, meter on d.c. volts.",
                "f202 pulled > f202 in | Power on, meter on d.c. volts.",
                "f202 pu | Power on, F202 pulled, meter on d.c. volts.",
                "pull f303, f301 and f302 | Power on, F301 pulled, F302 pulled, F303 pulled, meter on d.c. volts.",
                "unplug j2 | Power on, J2 unplugged, meter on d.c. volts.",
                "j2 off > plug in j2 | Power on, meter on d.c. volts.",
                "lift br201.ac1 | Power on, BR201.ac1 lifted, meter on d.c. volts.",
                "br201 ac1 lifted > solder br201.ac1 | Power on, meter on d.c. volts.",
                "clip tp1 gnd | Power on, a clip lead from TP1 to gnd, meter on d.c. volts.",
                "clip gnd and tp1 > clip tp4-tp5 > no clip tp1 gnd | Power on, a clip lead from TP4 to TP5, meter on d.c. volts.",
                "clip tp1 gnd > no clip | Power on, meter on d.c. volts.",
                "hold l201 | Power on, L201 held on, meter on d.c. volts.",
                "l201 on > release l201 | Power on, meter on d.c. volts.",
                "l201 on > l201 off | Power on, meter on d.c. volts.",
                "l201 on > pulse l201 40 ms | Power on, L201 pulsed for 40 ms, meter on d.c. volts.",
                "pulse l201 40 ms > ohms | Power off, meter on ohms.",
                "s201 open | Power on, S201 open, meter on d.c. volts.",
                "open s201 > s201 closed | Power on, meter on d.c. volts.",
                "charge c101 8 V | Power off, C101 charged to 8 V, meter on d.c. volts.",
                "charge c101 8 V > volts | Power off, C101 charged to 8 V, meter on d.c. volts.",
                "charge c101 8 V > on | Power on, meter on d.c. volts.",
                "ohms > ac volts | Power on, meter on a.c. volts.",
                "diode test | Power off, meter on diode test.",
                "dt > power on | Power on, meter on d.c. volts.",
                "cont | Power off, meter on continuity.",
                "power off, dc volts | Power off, meter on d.c. volts.",
                "meter basic | Power on, basic 3½ digit meter on d.c. volts.",
                "meter average > meter usual | Power on, meter on d.c. volts.",
                "meter basic, range 20 V > ohms | Power off, basic 3½ digit meter on ohms.",
                "meter basic > range 2 kohm | Power off, basic 3½ digit meter on ohms, range 2 kohm.",
                "meter basic, range 20 V > auto range | Power on, basic 3½ digit meter on d.c. volts.",
                "tp4 to gnd | Power on, meter on d.c. volts, red lead on TP4, black lead on gnd.",
                "leads tp4 gnd > swap leads | Power on, meter on d.c. volts, red lead on gnd, black lead on TP4.",
                "tp10 > black lead on gnd | Power on, meter on d.c. volts, red lead on TP10, black lead on gnd.",
                "tp4 > no leads | Power on, meter on d.c. volts.",
                "pull f202, lamp 60 W, s201 open > put back | Power on, a 60 W lamp in series, meter on d.c. volts.",
                "pull f202 > put back f202 | Power on, meter on d.c. volts.",
                "arrangement F201 pulled | Power on, F201 pulled, meter on d.c. volts.",
                "pull f202 > coin door open | Power on, S201 open, meter on d.c. volts.",
                "lamps held | Power on, E301 held on, E302 held on, E303 held on, E304 held on, meter on d.c. volts.",
                "power off, J3 and J4 unplugged | Power off, J3 unplugged, J4 unplugged, meter on d.c. volts."
            })
    void theBench(String lines, String bench) throws SentenceException {
        assertThat(after(lines)).isEqualTo("Suppose nothing. " + bench);
    }

    @Test
    void aWholeSentenceReplacesTheState() throws SentenceException {
        assertThat(after("d301 s > pull f202 > meter basic > Suppose F201 is blown. Power off, meter on ohms."))
                .isEqualTo("Suppose F201 is blown. Power off, meter on ohms.");
        assertThat(after("d301 s > pull f202 > suppose f201 blown"))
                .isEqualTo("Suppose F201 is blown. Power on, F202 pulled, meter on d.c. volts.");
        assertThat(after("meter basic > suppose f201 blown. power off")).endsWith("Power off, meter on ohms.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "xyz | 'xyz' is nothing on this board, and nothing that is done at the bench.",
                "d309 s | 'd309' is nothing on this board, and nothing that is done at the bench. Near: D301, D302",
                "tp99 to gnd | 'tp99' is nothing on this board, and nothing that is done at the bench. Near: TP9",
                "pull f999 | f999 is no fuse on this board. Near: F1",
                "unplug d301 | d301 is no connector on this board. Near: J1",
                "pull f3 | f3 could be more than one fuse: F301, F302, F303, F304. Type more of it.",
                "p | 'p' could be several things: power, pull, plug, pulse, put. Type more of it.",
                "lamp -5 W | 'lamp' is nothing on this board",
                "lamp 0 | a series lamp of 0 W; it must be above 0 and at most 10 000 W",
                "mains 5 kV | mains of 5 kV; it must be above 0 and at most 1000 V",
                "pulse l201 | Say how much: pulse L201 40 ms.",
                "pulse l201 40 V | pulse L201 40 ms: '40 V' is in volts; seconds are expected",
                "power on, ohms | ohms only with the power off",
                "power off, pulse l201 40 ms | a pulse for L201 with the power off; nothing drives it then",
                "power on, charge c101 8 V | capacitors charged beforehand: only with the power off",
                "meter basic, amps, range 20 V | The basic 3½ digit meter has no 20 V range of d.c. amps. It has: ",
                "range 30 V | The true rms 4000-count meter has no 30 V range of d.c. volts. It has: 399.9 mV, 3.999 V",
                "range big | 'big' is no range: write it like 20 V, 2 kohm or 200 mA.",
                "meter none | There is no meter 'none'. There is: true rms 4000-count; average-responding",
                "basic meter on colours | A meter has no 'colours'. It has: d.c. volts, a.c. volts, ohms, diode test",
                "swap leads | The leads are held nowhere. Say where: leads TP1 gnd.",
                "black lead on tp1 | Say where the red lead goes first, then the black one on TP1.",
                "put back d301 | D301 is as drawn; there is nothing to put back.",
                "no clip tp1 gnd | There is no clip lead from TP1 to gnd.",
                "clip tp1 tp1 | a clip lead from TP1 to TP1 joins net raw5 with itself",
                "arrangement f9 | The file has no arrangement 'f9'. It has: as found; power off; F201 pulled;",
                "d301 s and d301=leaky:5V | D301=leaky: '5V' is in volts; ohms are expected",
                "l201 off on | 'off on' is nothing that L201 can be",
                "t101 d | 'd' is nothing that T101 can be"
            })
    void whatIsNotUnderstoodSaysWhatWouldBe(String line, String problem) {
        SentenceException thrown = catchThrowableOfType(SentenceException.class, () -> SENTENCES.apply(FIRST, line));
        assertThat(thrown).as(line).isNotNull().hasMessageStartingWith(problem);
        assertThat(SENTENCES.understood(FIRST, line))
                .isInstanceOfSatisfying(
                        Understood.Unclear.class, u -> assertThat(u.problem()).isEqualTo(thrown.getMessage()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "d301 s | D301 is shorted",
                "ohms | Power off, meter on ohms",
                "d301 s, pull f202 | D301 is shorted, F202 pulled",
                "nothing | changes nothing",
                "tp4 | red lead on TP4, black lead on gnd"
            })
    void whatALineMeansIsSaidBeforeItIsEntered(String line, String words) {
        assertThat(SENTENCES.understood(FIRST, line))
                .isInstanceOfSatisfying(
                        Understood.Means.class, m -> assertThat(m.words()).isEqualTo(words));
    }

    @Test
    void whatALineTakesAwayIsSaidToo() throws SentenceException {
        Sentence pulled = SENTENCES.apply(FIRST, "pull f202, meter basic");

        assertThat(SENTENCES.understood(pulled, "f202 in"))
                .isInstanceOfSatisfying(
                        Understood.Means.class, m -> assertThat(m.words()).isEqualTo("no longer: F202 pulled"));
        assertThat(SENTENCES.understood(pulled, "meter usual"))
                .isInstanceOfSatisfying(
                        Understood.Means.class, m -> assertThat(m.words()).isEqualTo("the usual meter"));
    }

    /** Anything that can be typed gives an answer, and what is understood reads back. */
    @ParameterizedTest
    @MethodSource("circuits")
    void nothingThatIsTypedIsTooMuch(Circuit circuit) throws SentenceException {
        Sentences sentences = new Sentences(circuit);
        MeasuredParser readings = new MeasuredParser(circuit);
        Scribble scribble = new Scribble(circuit, sentences, 3);
        Sentence now = Sentence.atFirst(circuit);
        int understood = 0;
        for (int i = 0; i < 400; i++) {
            String line = scribble.next();
            Understood answer = sentences.understood(now, line);
            assertThat(sentences.completions(now, line)).as(line).hasSizeLessThanOrEqualTo(12);
            try {
                assertThat(readings.parse(line, null, now.setting().function()).text())
                        .isNotBlank();
            } catch (SentenceException unclear) {
                assertThat(unclear).hasMessageNotContaining("null");
            }
            if (answer instanceof Understood.Means means) {
                assertThat(sentences.parse(sentences.text(means.after())))
                        .as("%s on %s", line, sentences.text(now))
                        .isEqualTo(means.after());
                now = i % 20 == 0 ? Sentence.atFirst(circuit) : means.after();
                understood++;
            } else if (answer instanceof Understood.Unclear unclear) {
                assertThat(unclear.problem()).as(line).isNotBlank().isNotEqualTo("null");
            }
        }
        assertThat(understood).isGreaterThan(40);
    }

    /** Lines as cats and tired people type them. */
    private static final class Scribble {
        private static final String SIGNS = "abcdz019 .,;:=-+%×Ωμ½/()[]{}\\^$*?|\"'\t\u00a0\ud83d";
        private final Random random;
        private final List<String> words = new ArrayList<>(List.of(
                "s",
                "o",
                "is",
                "and",
                ",",
                ";",
                ". ",
                "suppose",
                "nothing",
                "40 %",
                "25 A",
                "2 ohm",
                "x1.5",
                "100 W",
                "110 V",
                "40 ms",
                "-8 V",
                "=",
                ":",
                "to",
                "pulled",
                "in",
                "off",
                "open",
                "closed",
                "leg 1",
                "pin",
                "a",
                "the",
                "clip lead from",
                "lamp in series",
                "1e-300F",
                "1e300V",
                "1nF",
                "shorted",
                "dried out",
                "OL",
                "held on",
                "charged"));
        private final Sentences sentences;
        private final RandomStates states;

        Scribble(Circuit circuit, Sentences sentences, long seed) {
            this.random = new Random(seed);
            this.sentences = sentences;
            this.states = new RandomStates(circuit, seed);
            words.addAll(Verbs.all());
            Names names = new Names(circuit);
            for (Names.Kind kind : Names.Kind.values()) {
                names.all(kind).stream().limit(15).forEach(words::add);
            }
        }

        String next() {
            return switch (random.nextInt(4)) {
                case 0 -> signs(random.nextInt(20));
                case 1 -> cut(sentences.text(states.next()));
                default -> words(random.nextInt(7));
            };
        }

        private String signs(int many) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < many; i++) {
                line.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
            }
            return line.toString();
        }

        private String words(int many) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < many; i++) {
                String word = words.get(random.nextInt(words.size()));
                line.append(random.nextInt(4) == 0 ? word.substring(0, 1 + random.nextInt(word.length())) : word)
                        .append(random.nextInt(8) == 0 ? "" : " ");
            }
            return line.toString();
        }

        private String cut(String sentence) {
            int from = random.nextInt(3) == 0 ? random.nextInt(sentence.length()) : 0;
            String part = sentence.substring(from, from + random.nextInt(sentence.length() - from + 1));
            return random.nextBoolean() ? part : part.toLowerCase(java.util.Locale.ROOT);
        }
    }
}
