package fusetale.explore;

import static fusetale.model.PartsBox.bridge;
import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.diode;
import static fusetale.model.PartsBox.electrolytic;
import static fusetale.model.PartsBox.exactly;
import static fusetale.model.PartsBox.junction;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.About;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Mounting;
import fusetale.explore.SwapChange.Band;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Fitting;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SwapEffectsTest {
    private static final Circuit NIGHT_FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    /** Night Ferry in one arrangement after another, its healthy side worked out once in each. */
    private final Map<Arrangement, Prepared> prepared = new HashMap<>();

    private static Question question(Circuit circuit, Arrangement bench, Check check, Supposition supposition) {
        return new Question(
                circuit, supposition, bench, Meter.trueRms4000(), List.of(check), new Question.Options(2, 1, 0));
    }

    private static Outcome ask(Circuit circuit, Arrangement bench, Check check, Supposition supposition) {
        Question question = question(circuit, bench, check, supposition);
        return outcome(new Explorer(1).answer(question, (done, all) -> {}, () -> false));
    }

    private static Outcome outcome(Answer answer) {
        assertThat(answer).isInstanceOf(Answer.Answered.class);
        return ((Answer.Answered) answer).outcome();
    }

    private Outcome ferry(Arrangement bench, Swap... swaps) {
        return ferry(bench, new Supposition(List.of(), List.of(swaps)));
    }

    private Outcome ferry(Arrangement bench, Supposition supposition) {
        return outcome(prepared.computeIfAbsent(bench, SwapEffectsTest::prepare).answer(supposition, () -> false));
    }

    private static Prepared prepare(Arrangement bench) {
        Check check = new Check("TP4", "gnd", MeterFunction.DC_VOLTS);
        Question question = question(NIGHT_FERRY, bench, check, Supposition.NOTHING);
        return ((Preparation.Ready) new Explorer(1).prepare(question, Progress.SILENT, () -> false)).prepared();
    }

    private static Arrangement coilHeld() {
        return Arrangement.powered(NIGHT_FERRY).withHeldOn("L205");
    }

    private static Swap capacitor(String part, double farads) {
        return new Swap(part, new Fitting.Value(new Quantity(farads, Unit.FARAD), null));
    }

    private static Swap mounted(Mounting mounting) {
        return new Swap("BR201", new Fitting.Mounted(mounting));
    }

    private static SwapChange row(Outcome outcome, String part, SwapFigure figure) {
        return outcome.swaps().rows().stream()
                .filter(r -> r.part().equals(part) && r.figure() == figure)
                .findFirst()
                .orElseThrow(() -> new AssertionError(part + " has no " + figure));
    }

    private static Band built(Outcome outcome, String part, SwapFigure figure) {
        return Objects.requireNonNull(row(outcome, part, figure).asBuilt());
    }

    private static Band supposed(Outcome outcome, String part, SwapFigure figure) {
        return Objects.requireNonNull(row(outcome, part, figure).asSupposed());
    }

    /** A supply of Schade's: 300 V peak behind 1 ohm, a bridge whose drop is nothing beside it, a load. */
    private static Outcome schade(double loadOhms, double farads, double otherFarads) {
        Circuit circuit = circuit(
                300 / Math.sqrt(2),
                1 - 2 * 6.74e-3,
                bridge("BR1", "line", "neutral", "plus", "minus"),
                electrolytic("C1", "plus", "minus", farads, 1e-4),
                resistor("R1", "plus", "minus", loadOhms));
        return ask(
                circuit,
                Arrangement.powered(circuit),
                new Check("plus", "minus", MeterFunction.DC_VOLTS),
                new Supposition(List.of(), List.of(capacitor("C1", otherFarads))));
    }

    /**
     * O. H. Schade, Proc. IRE 31(7), 1943, full wave, Rs/RL = 0.05: at ωCRL = 5 peak over mean 7.45 and r.m.s. over mean 2.421 a
     * diode, at ωCRL = 20 8.02 and 2.529. The bridge drops 0.7 % of the peak, hence the tolerance of 2 %.
     */
    @Test
    void conductionWithAnotherCapacitorIsSchades() {
        double loadOhms = 20;
        double omega = 2 * Math.PI * 60;
        Outcome outcome = schade(loadOhms, 5 / omega / loadOhms, 20 / omega / loadOhms);

        double builtMean = built(outcome, "BR1", SwapFigure.MEAN_CURRENT).low();
        double mean = supposed(outcome, "BR1", SwapFigure.MEAN_CURRENT).low();
        assertThat(built(outcome, "BR1", SwapFigure.PEAK_CURRENT).low() / builtMean)
                .isCloseTo(7.45, within(0.02 * 7.45));
        assertThat(built(outcome, "BR1", SwapFigure.RMS_CURRENT).low() / builtMean)
                .isCloseTo(2.421, within(0.02 * 2.421));
        assertThat(supposed(outcome, "BR1", SwapFigure.PEAK_CURRENT).low() / mean)
                .isCloseTo(8.02, within(0.02 * 8.02));
        assertThat(supposed(outcome, "BR1", SwapFigure.RMS_CURRENT).low() / mean)
                .isCloseTo(2.529, within(0.02 * 2.529));
    }

    /** Into an empty capacitor so large that it stays empty flows (Vp − two drops)/Rs at the crest: at most 300 A. */
    @Test
    void surgeIntoAnEmptyCapacitorComesCloseToWhatTheResistanceAllows() {
        Outcome outcome = schade(20, 0.001, 0.2);

        assertThat(supposed(outcome, "BR1", SwapFigure.SURGE_CURRENT).low()).isBetween(0.98 * 300, 300.0);
        assertThat(built(outcome, "BR1", SwapFigure.SURGE_CURRENT).low())
                .isLessThan(supposed(outcome, "BR1", SwapFigure.SURGE_CURRENT).low());
    }

    /** Ripple goes about as 1/C (ΔV = I/2fC, Horowitz and Hill), a little more slowly since the load feeds longer. */
    @Test
    void rippleGoesAsTheInverseOfTheCapacitance() {
        Outcome outcome = ferry(Arrangement.powered(NIGHT_FERRY), capacitor("C101", 0.024));

        double ratio = built(outcome, "C101", SwapFigure.RIPPLE).low()
                / supposed(outcome, "C101", SwapFigure.RIPPLE).low();
        assertThat(ratio).isBetween(1.85, 2.05);
    }

    @Test
    void capacitorBringsTheBridgeAndTheFuseThatFeedIt() {
        Outcome outcome = ferry(Arrangement.powered(NIGHT_FERRY), capacitor("C101", 0.022));

        assertThat(outcome.swaps().rows().stream().map(SwapChange::part).distinct())
                .containsExactly("C101", "BR101", "F102");
        assertThat(supposed(outcome, "F102", SwapFigure.RMS_CURRENT).low()).isPositive();
    }

    /** Junction heat and currents are those of the parts: the whole bridge twice a leg's mean times its drop, about. */
    @Test
    void bridgeDissipatesItsCurrentTimesTwoDrops() {
        Outcome outcome = ferry(coilHeld(), new Swap("BR201", new Fitting.Model("bridge-35A")));

        double amps = supposed(outcome, "BR201", SwapFigure.DC_OUTPUT).low();
        double watts = supposed(outcome, "BR201", SwapFigure.DISSIPATION).low();
        // 0.84 V at 1 A to 1.02 V at 10 A a leg, the model's own table
        assertThat(watts / amps).isBetween(2 * 0.84, 2 * 1.1);
        assertThat(supposed(outcome, "BR201", SwapFigure.MEAN_CURRENT).low()).isCloseTo(amps / 2, within(0.01 * amps));
    }

    @Test
    void bridgeClearOfThePlateIsHotterAndSafeForLess() {
        Outcome outcome = ferry(coilHeld(), mounted(Mounting.STANDING_CLEAR));

        Band plate = built(outcome, "BR201", SwapFigure.JUNCTION_TEMPERATURE);
        Band clear = supposed(outcome, "BR201", SwapFigure.JUNCTION_TEMPERATURE);
        assertThat(clear.low()).isGreaterThan(plate.low() + 20);
        assertThat(supposed(outcome, "BR201", SwapFigure.SAFE_CURRENT).high())
                .isLessThan(built(outcome, "BR201", SwapFigure.SAFE_CURRENT).low());
        double watts = built(outcome, "BR201", SwapFigure.DISSIPATION).low();
        assertThat(supposed(outcome, "BR201", SwapFigure.DISSIPATION).low()).isCloseTo(watts, within(1e-4 * watts));
    }

    @Test
    void readingsStayWhereOnlyTheMountingChanges() {
        Outcome outcome = ferry(coilHeld(), mounted(Mounting.FREE_AIR));

        assertThat(outcome.moved()).isEmpty();
        assertThat(outcome.swaps().rows()).isNotEmpty();
    }

    @Test
    void swappedBridgeWithAShortedLegStillHasItsFigures() {
        Supposition both = new Supposition(
                List.of(
                        new Fault("BR201", "leg1", FailureMode.SHORT, null),
                        new Fault("F201", "", FailureMode.WRONG_RATING, new Quantity(25, Unit.AMPERE))),
                List.of(new Swap("BR201", new Fitting.Model("bridge-35A"))));
        Outcome outcome = ferry(Arrangement.powered(NIGHT_FERRY), both);

        assertThat(supposed(outcome, "BR201", SwapFigure.DISSIPATION).low()).isGreaterThan(20);
        assertThat(supposed(outcome, "BR201", SwapFigure.SURGE_CURRENT).low()).isGreaterThan(30);
    }

    @Test
    void nothingIsSwappedWithThePowerOff() {
        Outcome outcome = ferry(Arrangement.unpowered(), mounted(Mounting.FREE_AIR));

        assertThat(outcome.swaps()).isEqualTo(SwapChanges.NONE);
    }

    private static Outcome example(String name, String point, MeterFunction on, Supposition supposition) {
        Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", name + ".yaml"))
                .circuit());
        return ask(circuit, Arrangement.powered(circuit), new Check(point, "gnd", on), supposition);
    }

    /** On the fog bell D1 lets the bridge charge C1; D2 catches the relay's current, and has no part in it. */
    @Test
    void whatChargesACapacitorIsShownAndWhatCatchesACoilsCurrentIsNot() {
        Supposition bigger = new Supposition(List.of(), List.of(capacitor("C1", 2200e-6)));

        Outcome outcome = example("fog-bell", "raw", MeterFunction.DC_VOLTS, bigger);

        assertThat(outcome.swaps().rows()).extracting(SwapChange::part).contains("C1", "D1", "BR1", "F1");
        assertThat(outcome.swaps().rows()).extracting(SwapChange::part).doesNotContain("D2");
    }

    /** What lets go of the fog bell's relay, another MOSFET: each of its figures beside that data sheet's (14 A, 30 A, 100 V). */
    @Test
    void aDriverStandsWhatItsOwnDataSheetSays() {
        Supposition larger = new Supposition(List.of(), List.of(new Swap("Q2", new Fitting.Model("2N6756"))));

        Outcome outcome = example("fog-bell", "raw", MeterFunction.DC_VOLTS, larger);

        assertThat(row(outcome, "Q2", SwapFigure.RMS_CURRENT).rating()).isEqualTo(14);
        assertThat(row(outcome, "Q2", SwapFigure.PEAK_CURRENT).rating()).isEqualTo(30);
        assertThat(row(outcome, "Q2", SwapFigure.HIGHEST_VOLTAGE).rating()).isEqualTo(100);
    }

    /** The part files: the reverse voltage of a regulator is its largest input voltage, 35 V for the 7805's class. */
    @Test
    void aRegulatorsInputIsHeldAgainstWhatItStands() {
        Outcome outcome = ferry(Arrangement.powered(NIGHT_FERRY), new Swap("U101", new Fitting.Model("5V-1A")));

        assertThat(row(outcome, "U101", SwapFigure.INPUT_VOLTAGE).rating()).isEqualTo(35);
        assertThat(supposed(outcome, "U101", SwapFigure.INPUT_VOLTAGE).high()).isBetween(8.0, 14.0);
    }

    /**
     * First Light: 120 V, up to 126 V. What the bridge charges goes up with the mains and a little more, for the drops stay;
     * a leg that is off blocks what is charged and the drop of the one that is on.
     */
    @Test
    void voltagesGoUpToThoseOfTheHighestMains() {
        Supposition swap = new Supposition(List.of(), List.of(capacitor("C1", 2200e-6)));

        Outcome usual = example("first-light", "raw", MeterFunction.DC_VOLTS, swap);

        Band capacitor = supposed(usual, "C1", SwapFigure.HIGHEST_VOLTAGE);
        double highest = 126 / 120.0;
        assertThat(capacitor.high() / capacitor.low()).isBetween(highest, highest + 0.02);
        Band reverse = supposed(usual, "BR1", SwapFigure.REVERSE_VOLTAGE);
        assertThat(reverse.high()).isCloseTo(capacitor.high(), within(0.1 * capacitor.high()));
        assertThat(usual.swaps().assumptions()).anyMatch(a -> a.contains("at 120 V of mains"));
    }

    /** A capacitor without a plus stands as much either way round: the trough of 120 V mains is 170 V from nothing. */
    @Test
    void theHighestVoltageOfAFilmCapacitorHasNoSign() {
        Circuit circuit = circuit(
                120,
                0.1,
                diode("D1", "neg", "line", junction(1e-8, 2, 0.01)),
                new Capacitor(
                        "C1",
                        net("neg"),
                        net("neutral"),
                        exactly(1e-6, Unit.FARAD),
                        quantity(250, Unit.VOLT),
                        About.NOTHING),
                resistor("R1", "neg", "neutral", 1e6),
                resistor("R2", "neutral", "gnd", 1e-3));
        Outcome outcome = ask(
                circuit,
                Arrangement.powered(circuit),
                new Check("neg", "neutral", MeterFunction.DC_VOLTS),
                new Supposition(List.of(), List.of(capacitor("C1", 2e-6))));

        // at 120 V; the mains may come to more
        assertThat(supposed(outcome, "C1", SwapFigure.HIGHEST_VOLTAGE).low()).isCloseTo(169, within(2.0));
    }

    /** What was swapped stays so while a contact comes and goes: a bleeder more or less is nothing to a ripple of half a volt. */
    @Test
    void swapsHoldWhileAContactComesAndGoes() {
        Fault cracked = new Fault("R1", "", FailureMode.CRACKED_JOINT, null);
        Supposition smaller = new Supposition(List.of(cracked), List.of(capacitor("C1", 1000e-6)));

        Outcome outcome = example("first-light", "raw", MeterFunction.AC_VOLTS, smaller);

        assertThat(outcome.comingAndGoing())
                .allSatisfy(c -> assertThat(c.good().value())
                        .isCloseTo(c.bad().value(), within(0.1 * c.bad().value())));
    }
}
