package fusetale.explore;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.exactly;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.About;
import fusetale.circuit.Battery;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Diode;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import fusetale.circuit.Transistor;
import fusetale.circuit.TransistorModel;
import fusetale.circuit.Zener;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A coil of 4 Ω and 20 mH on 28 V, so 7 A and a time constant of 5 ms, against closed forms of first-order circuits:
 * i(t) = I·(1 − e^(−t/τ)) while on, and after switching off into a voltage V beyond the supply i(t) = (I + V/R)·e^(−tR/L) −
 * V/R, which is without current after (L/R)·ln(1 + I·R/V).
 */
class PulsesTest {
    private static final double MANY = Double.POSITIVE_INFINITY;
    private static final double OHMS = 4;
    private static final double HENRIES = 0.020;
    private static final double SUPPLY = 28;
    private static final double FULL = SUPPLY / OHMS;
    private static final double TAU = HENRIES / OHMS;
    private static final Ratings UNRATED = new Ratings(MANY, MANY, MANY, MANY, MANY, MANY, List.of());

    private static Coil coil(double pullIn, double hold) {
        return new Coil(
                "L1",
                net("rail"),
                net("off"),
                exactly(OHMS, Unit.OHM),
                exactly(HENRIES, Unit.HENRY),
                quantity(pullIn, Unit.AMPERE),
                quantity(hold, Unit.AMPERE),
                About.NOTHING);
    }

    private static Circuit machine(double pullIn, double hold, Part... more) {
        List<Part> parts = new ArrayList<>(List.of(more));
        parts.add(new Battery(
                "B1", net("rail"), net("gnd"), quantity(SUPPLY, Unit.VOLT), quantity(1e-4, Unit.OHM), About.NOTHING));
        parts.add(coil(pullIn, hold));
        return circuit(120, 0.1, parts.toArray(Part[]::new));
    }

    /** An open collector that pulls the coil to ground: a contact, nothing that could break down. */
    private static LogicOutput contact() {
        return new LogicOutput(
                "U1",
                net("off"),
                net("rail"),
                net("gnd"),
                quantity(1e9, Unit.OHM),
                quantity(1e-3, Unit.OHM),
                LogicOutput.State.OFF,
                "L1",
                About.NOTHING);
    }

    private static Zener zener(String anode, String cathode, double volts) {
        DiodeModel model = new DiodeModel("test", 1e-12, 1, 1e-3, 1e-10, 1e12, volts, 5e-3, 1e-3, UNRATED);
        return new Zener("D1", net(anode), net(cathode), model, exactly(volts, Unit.VOLT), About.NOTHING);
    }

    /** 0.9 V at 1 A, and so steep that it is 0.9 V within 1 % from 30 mA to 30 A. */
    private static Diode diode() {
        return diode(UNRATED);
    }

    private static Diode diode(Ratings ratings) {
        double ideality = 0.1;
        double saturation = Math.exp(-0.9 / (ideality * 0.0256926));
        return new Diode(
                "D1",
                net("off"),
                net("rail"),
                new DiodeModel("test", saturation, ideality, 1e-4, 1e-10, 1e12, MANY, 1e-5, 100, ratings),
                About.NOTHING);
    }

    private static Pulsed pulsed(Circuit machine, double seconds) {
        return pulsed(machine, seconds, Supposition.NOTHING);
    }

    private static Pulsed pulsed(Circuit machine, double seconds, Supposition supposition) {
        return pulsed(machine, "L1", seconds, supposition);
    }

    private static Pulsed pulsed(Circuit machine, String name, double seconds, Supposition supposition) {
        return outcome(machine, name, seconds, supposition).bench().pulses().get(0);
    }

    private static List<String> doubts(Circuit machine, double seconds, Fault fault) {
        return outcome(machine, "L1", seconds, new Supposition(List.of(fault))).doubts().stream()
                .map(Doubt::text)
                .toList();
    }

    private static Outcome outcome(Circuit machine, String name, double seconds, Supposition supposition) {
        Question question = new Question(
                machine,
                supposition,
                Arrangement.powered(machine).withPulse(name, seconds),
                Meter.trueRms4000(),
                List.of(new Check("rail", "gnd", MeterFunction.DC_VOLTS)),
                new Question.Options(2, 1, 0));
        Answer answer = new Explorer(1).answer(question, (done, of) -> {}, () -> false);
        assertThat(answer).isInstanceOf(Answer.Answered.class);
        return ((Answer.Answered) answer).outcome();
    }

    /** On a steady rail all moments are alike: their middle, after a look that they are. */
    private static double one(List<PulseFigures> side, ToDoubleFunction<PulseFigures> figure) {
        Pulsed.Range range = Pulsed.range(side, figure);
        assertThat(range.moments()).isEqualTo(side.size());
        assertThat(range.most()).isCloseTo(range.least(), within(2e-3 * Math.abs(range.most()) + 1e-9));
        return (range.least() + range.most()) / 2;
    }

    /** i(t) = 7·(1 − e^(−t/τ)): 3 A after τ·ln(7/4) = 2.798 ms; energy from the rail V·I·(t − τ·(1 − e^(−t/τ))). */
    @ParameterizedTest
    @CsvSource({"0.005, 4.424844", "0.010, 6.052653", "0.040, 6.997652"})
    void currentRisesAsTheClosedFormSays(double seconds, double amps) {
        List<PulseFigures> built =
                pulsed(machine(3, 0.5, contact(), diode()), seconds).asBuilt();

        assertThat(one(built, PulseFigures::reachedAmps)).isCloseTo(amps, within(1e-3 * amps));
        assertThat(one(built, PulseFigures::pullInSeconds)).isCloseTo(TAU * Math.log(7 / 4.0), within(1e-5));
        double taken = SUPPLY * FULL * (seconds - TAU * (1 - Math.exp(-seconds / TAU)));
        assertThat(one(built, PulseFigures::takenJoules)).isCloseTo(taken, within(2e-3 * taken));
        assertThat(one(built, PulseFigures::storedJoules))
                .isCloseTo(HENRIES * amps * amps / 2, within(2e-3 * HENRIES * amps * amps / 2));
    }

    @Test
    void plungerStaysWhereTheCurrentDoesNotGetThere() {
        List<PulseFigures> built =
                pulsed(machine(6.5, 0.5, contact(), diode()), 5e-3).asBuilt();

        assertThat(Pulsed.range(built, PulseFigures::pullInSeconds).moments()).isZero();
    }

    /** Flyback diode of 0.9 V from 7 A: 2.432929 A after τ, of 0.490 J 0.0280 J in the diode (closed form, above). */
    @Test
    void flybackDiodeLetsTheCurrentDieSlowly() {
        List<PulseFigures> built =
                pulsed(machine(3, 2.432929, contact(), diode()), 0.060).asBuilt();

        assertThat(one(built, PulseFigures::dropOutSeconds)).isCloseTo(TAU, within(5e-3 * TAU));
        assertThat(one(built, PulseFigures::limitJoules)).isCloseTo(0.0280, within(3e-4));
        assertThat(one(built, PulseFigures::peakVolts)).isCloseTo(SUPPLY + 0.9, within(0.02));
        assertThat(built.get(0).limit()).isEqualTo(new PulseFigures.Limit(PulseFigures.Kind.DIODE, "D1"));
        assertThat(one(built, PulseFigures::avalancheJoules)).isZero();
    }

    /**
     * A zener across the driver that clamps so far above the supply. Without current after 5.76951 and 1.23430 ms; 0.1 A are
     * left (L/R)·ln((I + V/R)/(0.1 + V/R)) after. The clamp's share of the coil's energy, V·∫i dt, is 0.21147 and 0.41425 J; the
     * zener takes what the rail adds besides, (28 + V)·∫i dt.
     */
    @ParameterizedTest
    @CsvSource({"12.9, 0.21147", "100, 0.41425"})
    void clampTakesItsShare(double above, double joules) {
        Zener zener = zener("gnd", "off", SUPPLY + above);
        List<PulseFigures> built =
                pulsed(machine(3, 0.1, contact(), zener), 0.060).asBuilt();

        double seconds = TAU * Math.log((FULL + above / OHMS) / (0.1 + above / OHMS));
        assertThat(one(built, PulseFigures::dropOutSeconds)).isCloseTo(seconds, within(5e-3 * seconds));
        double taken = joules * (SUPPLY + above) / above;
        assertThat(one(built, PulseFigures::limitJoules)).isCloseTo(taken, within(1e-2 * taken));
        assertThat(one(built, PulseFigures::peakVolts)).isCloseTo(SUPPLY + above, within(0.1));
        assertThat(built.get(0).limit()).isEqualTo(new PulseFigures.Limit(PulseFigures.Kind.ZENER, "D1"));
    }

    /** An NPN driver of 100 V breakdown whose base an output lifts. */
    private static List<Part> transistor(double joules) {
        return transistor(new Ratings(MANY, MANY, MANY, MANY, MANY, MANY, joules, UNRATED.thermal(), List.of()));
    }

    private static List<Part> transistor(Ratings ratings) {
        TransistorModel model = new TransistorModel(
                "test", TransistorModel.Polarity.NPN, 1e-13, 200, 1, MANY, 0.1, 0, 0, 1e-11, BREAKDOWN, ratings);
        return List.of(
                new Transistor("Q1", net("off"), net("base"), net("gnd"), model, About.NOTHING),
                new LogicOutput(
                        "U1",
                        net("drive"),
                        net("rail"),
                        net("gnd"),
                        quantity(10, Unit.OHM),
                        quantity(10, Unit.OHM),
                        LogicOutput.State.LOW,
                        "L1",
                        About.NOTHING),
                resistor("R1", "drive", "base", 100));
    }

    private static final double BREAKDOWN = 100;
    /** Slope of a breakdown in the models: a twentieth of an ohm a volt. */
    private static final double SLOPE_OHMS = BREAKDOWN / 20;

    /**
     * The flyback diode open: the driver breaks down. i(t) as above with V = 100 − 28 V and R = 4 + 5 Ω; the transistor takes
     * ∫(100 + 5·i)·i dt, which is what the coil stored and the rail adds less what the winding burns.
     */
    @Test
    void withTheDiodeOpenTheDriverTakesWhatTheCoilStored() {
        List<Part> parts = new ArrayList<>(transistor(0.030));
        parts.add(diode());
        Circuit machine = machine(3, 0.1, parts.toArray(Part[]::new));
        Pulsed pulsed = pulsed(machine, 0.060, new Supposition(List.of(new Fault("D1", "", FailureMode.OPEN, null))));
        List<PulseFigures> open = pulsed.asSupposed();

        double amps = one(open, PulseFigures::reachedAmps);
        double ohms = OHMS + SLOPE_OHMS;
        double volts = BREAKDOWN - SUPPLY;
        double ends = HENRIES / ohms * Math.log(1 + amps * ohms / volts);
        double charge = (HENRIES * amps - volts * ends) / ohms;
        double square = (HENRIES * amps * amps / 2 - volts * charge) / ohms;
        double taken = BREAKDOWN * charge + SLOPE_OHMS * square;
        assertThat(one(open, PulseFigures::peakVolts))
                .isCloseTo(BREAKDOWN + SLOPE_OHMS * amps, within(2e-2 * BREAKDOWN));
        assertThat(one(open, PulseFigures::avalancheJoules)).isCloseTo(taken, within(1e-2 * taken));
        double stored = one(open, PulseFigures::storedJoules);
        assertThat(stored + SUPPLY * charge - OHMS * square).isCloseTo(taken, within(1e-6 * taken + 2e-3 * stored));
        assertThat(open.get(0).limit()).isEqualTo(new PulseFigures.Limit(PulseFigures.Kind.BREAKDOWN, "Q1"));
        assertThat(pulsed.avalancheRatedJoules()).isEqualTo(0.030);
        assertThat(PulseDoubts.of(List.of(pulsed)))
                .extracting(Doubt::text)
                .anyMatch(t -> t.contains("it stands 30 mJ"));
    }

    /** Nobody's data sheet tells what it stands: that is no reason to be silent where the diode no longer spares it. */
    @Test
    void breakingDownIsToldWhereWhatTheDriverStandsIsNotKnown() {
        List<Part> parts = new ArrayList<>(transistor(MANY));
        parts.add(diode());
        Circuit machine = machine(3, 0.1, parts.toArray(Part[]::new));

        assertThat(doubts(machine, 0.060, new Fault("D1", "", FailureMode.OPEN, null)))
                .anyMatch(t -> t.startsWith("Each time L1 is switched off, Q1 breaks down and takes up to ")
                        && t.endsWith("what it stands is not known."));
        assertThat(outcome(machine, "L1", 0.060, Supposition.NOTHING).doubts()).isEmpty();
    }

    /** No diode at all: what the driver takes each time is told of the machine as drawn only where its rating is far from that. */
    @ParameterizedTest
    @CsvSource({"0.030, 1", "0.500, 0"})
    void aMachineAsDrawnIsTakenAtItsWordUnlessFarOut(double rated, int told) {
        Circuit machine = machine(3, 0.1, transistor(rated).toArray(Part[]::new));

        Outcome outcome = outcome(machine, "L1", 0.060, Supposition.NOTHING);

        double taken = Pulsed.range(outcome.bench().pulses().get(0).asBuilt(), PulseFigures::avalancheJoules)
                .most();
        assertThat(taken).isBetween(0.5, 0.8);
        assertThat(outcome.doubts()).hasSize(told);
    }

    private static final Fault HALF_THE_TURNS =
            new Fault("L1", "", FailureMode.SHORTED_TURNS, quantity(0.5, Unit.RATIO));

    /**
     * Half the turns, 14 A for 7 A; the mean of a pulse of 60 ms is I·(1 − (τ/t)·(1 − e^(−t/τ))), 6.42 A and 13.4 A less what
     * the transistor drops. Data sheets: continuous and peak collector current.
     */
    @ParameterizedTest
    @CsvSource({"8, 20, in the mean where it stands 8 A", "12.5, 13, up to 13.", "15, 20, ''"})
    void theDriversCurrentIsHeldAgainstWhatItStands(double steady, double peak, String told) {
        List<Part> parts = new ArrayList<>(transistor(new Ratings(steady, peak, MANY, MANY, MANY, MANY, List.of())));
        parts.add(diode());
        Circuit machine = machine(3, 0.1, parts.toArray(Part[]::new));

        List<String> doubts = doubts(machine, 0.060, HALF_THE_TURNS);

        if (told.isEmpty()) {
            assertThat(doubts).isEmpty();
        } else {
            assertThat(doubts).anyMatch(t -> t.contains("Q1") && t.contains(told));
        }
    }

    /** What catches the coil's current takes it over whole: 14 A; i²t of 14²/2·τ, τ of 2.5 ms, so about 0.24 A²s. */
    @ParameterizedTest
    @CsvSource({"10, 1, where it stands 10 A", "30, 0.1, where it stands 0.1 A²s", "30, 1, ''"})
    void theClampsCurrentIsHeldAgainstWhatItStands(double peak, double heat, String told) {
        Ratings ratings = new Ratings(1, peak, heat, MANY, MANY, MANY, List.of());
        Circuit machine = machine(3, 0.1, contact(), diode(ratings));

        List<String> doubts = doubts(machine, 0.060, HALF_THE_TURNS);

        if (told.isEmpty()) {
            assertThat(doubts).isEmpty();
        } else {
            assertThat(doubts).anyMatch(t -> t.contains("D1") && t.contains(told));
        }
    }

    @Test
    void anOutputStuckOffIsNotPulsed() {
        Circuit machine = machine(3, 0.5, contact(), diode());
        Pulsed pulsed =
                pulsed(machine, 0.040, new Supposition(List.of(new Fault("U1", "", FailureMode.STUCK_OFF, null))));

        assertThat(one(pulsed.asSupposed(), PulseFigures::reachedAmps)).isLessThan(1e-6);
        assertThat(one(pulsed.asBuilt(), PulseFigures::reachedAmps)).isGreaterThan(6.9);
        assertThat(pulsed.asSupposed().get(0).limit()).isEqualTo(PulseFigures.Limit.NONE);
    }

    @Test
    void nothingIsPulsedWhereNothingIsAsked() {
        Circuit machine = machine(3, 0.5, contact(), diode());
        Question question = new Question(
                machine,
                Supposition.NOTHING,
                Arrangement.powered(machine),
                Meter.trueRms4000(),
                List.of(new Check("rail", "gnd", MeterFunction.DC_VOLTS)),
                new Question.Options(2, 1, 0));
        Answer answer = new Explorer(1).answer(question, (done, of) -> {}, () -> false);

        assertThat(((Answer.Answered) answer).outcome().bench().pulses()).isEmpty();
    }

    /** Half the turns: 2 Ω, 5 mH, 14 A; the same ampere turns at 6 A and 1 A. With τ = 2.5 ms 6 A come after τ·ln(14/8). */
    @Test
    void aPlungerAsksForItsAmpereTurnsOfFewerTurns() {
        Quantity half = quantity(0.5, Unit.RATIO);
        Supposition shorted = new Supposition(List.of(new Fault("L1", "", FailureMode.SHORTED_TURNS, half)));

        List<PulseFigures> supposed =
                pulsed(machine(3, 0.5, contact(), diode()), 0.040, shorted).asSupposed();

        assertThat(one(supposed, PulseFigures::pullInSeconds)).isCloseTo(2.5e-3 * Math.log(14 / 8.0), within(1e-5));
        // from 14 A against 0.9 V over 2 Ω down to 1 A: τ·ln((14 + 0.45)/(1 + 0.45))
        assertThat(one(supposed, PulseFigures::dropOutSeconds))
                .isCloseTo(2.5e-3 * Math.log(14.45 / 1.45), within(1e-4));
    }

    /** Ten times the inductance, so a time constant of 50 ms: below 0.5 A after τ·ln((I + V/R)/(0.5 + V/R)), V of 0.9 V. */
    @Test
    void aRunGoesOnUntilWhatAnOutputCommandsHasDroppedOut() {
        Coil quick = coil(3, 0.5);
        Coil slow = new Coil(
                "L1",
                quick.one(),
                quick.two(),
                quick.ohms(),
                exactly(10 * HENRIES, Unit.HENRY),
                quick.pullInAmps(),
                quick.holdAmps(),
                About.NOTHING);
        Circuit machine = machine(3, 0.5, contact(), diode()).with(slow);

        Pulsed pulsed = pulsed(machine, "U1", 0.1, Supposition.NOTHING);

        double reached = FULL * (1 - Math.exp(-0.1 / (10 * TAU)));
        assertThat(one(pulsed.asBuilt(), PulseFigures::dropOutSeconds))
                .isCloseTo(10 * TAU * Math.log((reached + 0.225) / (0.5 + 0.225)), within(2e-3));
    }
}
