package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Event;
import fusetale.aftermath.Harm;
import fusetale.aftermath.Story;
import fusetale.aftermath.Strain;
import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.Solved;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What follows on the machines of the examples, each against a figure worked out by hand from currents and handbook laws. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AftermathOfMachinesTest {
    private static final Circuit FERRY = read("night-ferry");
    private static final Circuit BELL = read("fog-bell");
    private static final Question.Options PLAYED = new Question.Options(2, 1, 0, Aftermath.Settings.USUAL);

    /** Healthy machines, each worked out once. */
    private final Map<Question, Prepared> prepared = new HashMap<>();

    private static Circuit read(String name) {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", name + ".yaml"))
                .circuit());
    }

    private Outcome suppose(Circuit circuit, Arrangement arrangement, String... faults) {
        try {
            Supposition supposition = new SentenceParser(circuit).parse(List.of(faults));
            Prepared healthy = prepared.computeIfAbsent(
                    new Question(circuit, Supposition.NOTHING, arrangement, Meter.trueRms4000(), List.of(), PLAYED),
                    AftermathOfMachinesTest::prepare);
            return ((Answer.Answered) healthy.answer(supposition, () -> false)).outcome();
        } catch (SentenceException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static Prepared prepare(Question question) {
        Preparation made = new Explorer(1).prepare(question, Progress.SILENT, () -> false);
        return ((Preparation.Ready) made).prepared();
    }

    private Outcome suppose(Circuit circuit, String... faults) {
        return suppose(circuit, Arrangement.powered(circuit), faults);
    }

    private static Aftermath aftermath(Outcome outcome) {
        return Objects.requireNonNull(outcome.aftermath());
    }

    private static Optional<Event> event(Outcome outcome, String target, Harm harm) {
        return aftermath(outcome).events().stream()
                .filter(e -> e.target().equals(target) && e.harm() == harm)
                .findFirst();
    }

    private static double amps(Outcome outcome, String fuse) {
        return outcome.fuses().stream()
                .filter(f -> f.part().equals(fuse))
                .findFirst()
                .orElseThrow()
                .amps();
    }

    /**
     * UL 248-14, time-delay: from 12 s at twice the rating in a straight line of log-log to 10 ms where I²t is 5·In², at
     * √500 = 22.4 times; at most 120 s at twice, then constant I²t. At m times the rating: 12·(0.01/12)^(ln(m/2)/ln(11.18))
     * to 120·(2/m)² s.
     */
    @Test
    void behindTheRightFuseAShortedLegCostsTheFuseAndNothingElse() {
        Outcome outcome = suppose(FERRY, "BR201.leg1=short");
        double multiple = amps(outcome, "F201") / 6;
        double soonest = 12 * Math.pow(0.01 / 12, Math.log(multiple / 2) / Math.log(11.18));
        double latest = 120 * Math.pow(2 / multiple, 2);

        // the shorted leg, some 29 W, warms its neighbours: in a slow fuse's machine one may pass its rating, and none
        // is lost
        List<Event> lost = aftermath(outcome).events().stream()
                .filter(e -> e.consequence() != null)
                .toList();
        assertThat(lost).hasSize(1);
        assertThat(aftermath(outcome).events())
                .filteredOn(e -> e.consequence() == null)
                .allMatch(e -> e.part().equals("BR201") && e.harm() == Harm.JUNCTION_PAST_RATING)
                .allMatch(e -> e.count() <= 2);
        Event melts = lost.get(0);
        assertThat(melts.target()).isEqualTo("F201");
        assertThat(melts.count()).isEqualTo(64);
        // meanwhile copper warms up and the current falls: below 150 °C to no less than 259.5/384.5 of it
        double latestWarm = latest * square(384.5 / 259.5);
        assertThat(melts.leastSeconds()).isBetween(0.98 * soonest, latest);
        assertThat(melts.mostSeconds()).isBetween(melts.leastSeconds(), latestWarm);
        assertThat(outcome.doNotPowerUp()).isFalse();
    }

    /**
     * MIL-HDBK-217F, 15.1: a contact warms up by 30 K at its rating and with the current to the 1.85. At 38 A against 7 A that
     * is 690 K in the end; 80 K of it are there after −τ·ln(1 − 80/690), with τ between 40 K/W · 3 J/K over and times 1.95
     * (1.3 of resistance, 1.5 of capacity), and the end over and times 1.3, the air 25 to 40 °C.
     */
    @Test
    void behindALinkOf25AmperesTheConnectorBurnsBeforeAnyFuseMelts() {
        Outcome outcome = suppose(FERRY, "BR201.leg1=short", "F201=wrong-rating:25A");
        double end = 30 * Math.pow(amps(outcome, "F201") / 7, 1.85);
        double soonest = -120 / 1.95 * 1.3 * Math.log(1 - 65 / (1.3 * end)) / 1.3;
        double latest = -120 * 1.95 / 1.3 * Math.log(1 - 80 / (end / 1.3)) * 1.3;

        Event softens = event(outcome, "J1.3", Harm.HOUSING_SOFTENS).orElseThrow();

        assertThat(softens.leastSeconds()).isGreaterThan(soonest);
        assertThat(softens.mostSeconds()).isLessThan(latest);
        assertThat(aftermath(outcome).stories().get(0).steps().get(0).harm()).isEqualTo(Harm.CONTACT_BURNS);
        assertThat(event(outcome, "T101.sol", Harm.WINDING_PAST_CLASS)).isPresent();
        assertThat(outcome.doNotPowerUp()).isTrue();
        assertThat(outcome.doubts().get(0).text()).startsWith("F201 holds a 25 A link where 6 A is marked");
        // what was supposed shorted does not fail again
        assertThat(event(outcome, "BR201.leg1", Harm.FAILS_SHORT)).isEmpty();
    }

    /**
     * Adiabatic heating of copper, any text: m·c·ΔT/P at constant heat, the soonest, as a winding behind other resistances never takes more
     * than at first; a coil that keeps its volts takes V²/R, so with R growing by (234.5 + T)/259.5 the time from T1 to T2 is
     * m·c·R/V² · ∫(234.5 + T)/259.5 dT. Heat that is shed makes it longer still, at most by a half here, as the coil's path is
     * 3 to 5 K/W and its heat 400 W.
     */
    @Test
    void aShortedDriverCooksItsCoilWithinSeconds() {
        Outcome outcome = suppose(FERRY, "Q205.ce=short");
        double amps = amps(outcome, "F202");
        double watts = amps * amps * 4.7;
        double cool = adiabaticSeconds(watts, 25, 130);

        Event smells = event(outcome, "L205", Harm.WINDING_PAST_CLASS).orElseThrow();
        Event burnt = event(outcome, "L205", Harm.TURNS_SHORT).orElseThrow();

        // 60 g of copper, over and times 1.5
        assertThat(smells.leastSeconds()).isGreaterThan(60 * 0.385 * (130 - 40) / watts / 1.5);
        assertThat(smells.mostSeconds()).isLessThan(cool * 1.5 * 1.5);
        assertThat(burnt.leastSeconds()).isGreaterThan(60 * 0.385 * (200 - 40) / watts / 1.5);
        // which fuse, if any, saves it: none, F202 melts after the coil is lost if it melts at all, as hot copper takes
        // less
        assertThat(event(outcome, "F202", Harm.FUSE_MELTS)
                        .map(Event::leastSeconds)
                        .orElse(Double.POSITIVE_INFINITY))
                .isGreaterThan(burnt.mostSeconds());
        assertThat(outcome.doNotPowerUp()).isTrue();
    }

    private static double adiabaticSeconds(double wattsAt25, double from, double to) {
        double joulesPerKelvin = 60 * 0.385;
        double integral = (square(234.5 + to) - square(234.5 + from)) / (2 * 259.5);
        return joulesPerKelvin * integral / wattsAt25;
    }

    private static double square(double x) {
        return x * x;
    }

    /** I²R in the clip, 25 K/W as IEC 60127-6 accepts 2.5 W at 60 K: in the end 40 °C and 25 K for each watt. */
    @ParameterizedTest
    @ValueSource(strings = {"0.2ohm", "5ohm"})
    void aLooseClipIsAHeater(String ohms) throws UnfitArrangement {
        Arrangement held = Arrangement.powered(FERRY).withHeldOn("L205");
        Outcome outcome = suppose(FERRY, held, "F202=loose:" + ohms);
        double amps = amps(outcome, "F202");
        double clip = Double.parseDouble(ohms.replace("ohm", ""));

        double celsius = outcome.strains().stream()
                .filter(s -> s.part().equals("F202") && s.strain() == Strain.TEMPERATURE)
                .findFirst()
                .orElseThrow()
                .value();

        // the link's own 20.5 mΩ of 5 A adds a little
        assertThat(celsius).isCloseTo(40 + 25 * amps * amps * clip, within(0.1 * celsius + 2));
        assertThat(event(outcome, "F202", Harm.CLIP_UNSOLDERS)).isPresent();
    }

    /**
     * A pack of 0.06 to 2.5 Ah takes capacity over current; it is found at any charge, so as little as a tenth of that, and stands up to 1.6
     * times it. Evenly in the logarithm over 21.6 to 14,400 C, at 0.3 A 0.92 of the machines come to it within the eight hours that are
     * played: 59 of 64, 53 or more in 99 of 100 (binomial).
     */
    @Test
    void aShortedBlockingDiodeOvercharges() {
        Outcome outcome = suppose(FERRY, "D502=short");

        Event leaks = event(outcome, "B501", Harm.BATTERY_OVERCHARGED).orElseThrow();

        // 4.97 V less a signal diode's 0.8 to 1 V, over the pack's 0.8 Ω, against 3.6 V: 0.3 to 0.7 A
        assertThat(leaks.leastSeconds()).isGreaterThan(0.1 * 0.06 * 3600 / 0.7);
        assertThat(leaks.count()).isBetween(53, 64);
    }

    /**
     * Reversed, 12.65 V stand in series with the 16 V of the reservoir: (28.7 − 0.8) V over 220 Ω are 0.127 A. Evenly in the logarithm
     * over 0.06 to 2.5 Ah, within eight hours 0.76 of the machines come to it: 48 of 64, 39 to 57 in 99 of 100 (binomial).
     */
    @Test
    void aReversedBatteryIsDrained() {
        Outcome outcome = suppose(BELL, "B1=reversed");

        Event empty = event(outcome, "B1", Harm.BATTERY_EMPTIES).orElseThrow();

        assertThat(empty.leastSeconds()).isGreaterThan(0.06 * 3600 / 0.14);
        assertThat(empty.count()).isBetween(39, 57);
    }

    /** The same ohms in the same can: 15 V over 20 Ω are 11 W, leaky or reversed. */
    @ParameterizedTest
    @ValueSource(strings = {"leaky", "reversed"})
    void aCapacitorThatLeaksBoilsWhicheverWayRoundItStands(String how) {
        Outcome outcome = suppose(read("first-light"), "C1=" + how + ":20ohm");

        assertThat(event(outcome, "C1", Harm.VENTS)).isPresent();
    }

    /** About 31 V over 10 Ω are 96 W in a transistor on no heat sink: it is a short in the end. */
    @Test
    void aLeakyTransistorOverheatsAndShorts() {
        Outcome outcome = suppose(FERRY, "Q205.ce=leaky:10ohm");

        assertThat(event(outcome, "Q205", Harm.FAILS_SHORT)).isPresent();
    }

    /** A diode whose voltage drifted by a fiftieth is as mortal as any. */
    @Test
    void aDriftedJunctionIsStillThereToBeLost() {
        double sound = event(suppose(FERRY, "R403=drifted:20%"), "D404", Harm.FAILS_SHORT)
                .orElseThrow()
                .middleSeconds();

        Event drifted = event(suppose(FERRY, "R403=drifted:20%", "D404=drifted:98%"), "D404", Harm.FAILS_SHORT)
                .orElseThrow();

        assertThat(drifted.middleSeconds()).isCloseTo(sound, withinPercentage(20));
    }

    /**
     * A pin of 2 ohm in line with a coil of 4.7 ohm on a shorted driver burns on, and opens before the coil is lost. Come down to a
     * tenth of an ohm it would let the coil take twice its heat.
     */
    @Test
    void aBurntPinDoesNotHeal() {
        Outcome outcome =
                suppose(FERRY, "J1.3=burnt:2ohm", "Q205.ce=short", "F201=wrong-rating:25A", "F202=wrong-rating:25A");

        assertThat(event(outcome, "J1.3", Harm.BURNS_OPEN).map(Event::count)).contains(64);
        assertThat(event(outcome, "L205", Harm.TURNS_SHORT)).isEmpty();
    }

    /** A clip of half an ohm lets go of its link, whichever link that is. */
    @Test
    void whatHappensToASwappedLinkIsKnown() {
        Outcome outcome = suppose(FERRY, "BR201.leg1=short", "F201=25A", "F201=loose:0.5ohm");

        assertThat(event(outcome, "F201", Harm.CLIP_UNSOLDERS)).isPresent();
        assertThat(aftermath(outcome).stories()).noneMatch(s -> s.end() == Story.End.UNKNOWN);
    }

    /** Left on for an evening, in every arrangement that holds nothing on, no healthy machine comes to harm. */
    @ParameterizedTest
    @ValueSource(strings = {"first-light", "fog-bell", "night-ferry"})
    void healthyMachinesComeToNoHarm(String name) throws UnfitArrangement, UnfitSupposition {
        Circuit circuit = read(name);
        List<String> harmed = new ArrayList<>();
        for (BenchSetting setting : circuit.settings()) {
            Arrangement arrangement = Arrangement.of(circuit, setting);
            if (!arrangement.powerOn() || !arrangement.heldOn().isEmpty()) {
                continue;
            }
            Question question =
                    new Question(circuit, Supposition.NOTHING, arrangement, Meter.trueRms4000(), List.of(), PLAYED);
            Settled settled = ((Solved.Found<Settled>) Settled.shown(
                            Machine.of(circuit, arrangement, Supposition.NOTHING),
                            Meter.trueRms4000(),
                            null,
                            Set.copyOf(arrangement.pulledFuses()),
                            () -> false))
                    .value();
            Forward forward = new Forward(question, arrangement.appliedTo(circuit), settled.seen(), () -> false);
            Aftermath.of(forward, Aftermath.Settings.USUAL)
                    .events()
                    .forEach(e -> harmed.add(setting.name() + ": " + e));
        }

        assertThat(harmed).isEmpty();
    }
}
