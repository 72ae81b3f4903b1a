package fusetale.explore;

import static fusetale.model.PartsBox.bridge;
import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.electrolytic;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
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
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class SwapEffectsTest {
    private static final Circuit NIGHT_FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());

    private static Outcome ask(Circuit circuit, Arrangement bench, Check check, Supposition supposition) {
        Question question = new Question(
                circuit, supposition, bench, Meter.trueRms4000(), List.of(check), new Question.Options(2, 1, 0));
        Answer answer = new Explorer(1).answer(question, (done, all) -> {}, () -> false);
        assertThat(answer).isInstanceOf(Answer.Answered.class);
        return ((Answer.Answered) answer).outcome();
    }

    private static Outcome ferry(Arrangement bench, Swap... swaps) {
        Check check = new Check("TP4", "gnd", MeterFunction.DC_VOLTS);
        return ask(NIGHT_FERRY, bench, check, new Supposition(List.of(), List.of(swaps)));
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
        Outcome outcome = ask(
                NIGHT_FERRY, Arrangement.powered(NIGHT_FERRY), new Check("TP4", "gnd", MeterFunction.DC_VOLTS), both);

        assertThat(supposed(outcome, "BR201", SwapFigure.DISSIPATION).low()).isGreaterThan(20);
        assertThat(supposed(outcome, "BR201", SwapFigure.SURGE_CURRENT).low()).isGreaterThan(30);
    }

    @Test
    void nothingIsSwappedWithThePowerOff() {
        Outcome outcome = ferry(Arrangement.unpowered(), mounted(Mounting.FREE_AIR));

        assertThat(outcome.swaps()).isEqualTo(SwapChanges.NONE);
    }
}
