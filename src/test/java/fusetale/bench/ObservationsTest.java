package fusetale.bench;

import static fusetale.model.PartsBox.bridge;
import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.diode;
import static fusetale.model.PartsBox.electrolytic;
import static fusetale.model.PartsBox.exactly;
import static fusetale.model.PartsBox.junction;
import static fusetale.model.PartsBox.lamp;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.aftermath.Surfaces;
import fusetale.bench.Observation.Aspect;
import fusetale.bench.Observation.Sight;
import fusetale.circuit.About;
import fusetale.circuit.Battery;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Controller;
import fusetale.circuit.DualCoil;
import fusetale.circuit.EndOfStroke;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Part;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ObservationsTest {
    private static final Warmth COLD = seen -> Map.of();

    private static List<Observation> observed(Circuit circuit, Arrangement arrangement, Warmth warmth) {
        Seen seen = BridgeSupplyTest.look(circuit, arrangement, Meter.trueRms4000(), List.of());
        return Observations.of(circuit, seen, Set.of(), warmth);
    }

    private static Observation observed(Circuit circuit, String part, Aspect aspect) {
        return observed(circuit, Arrangement.powered(circuit), new Surfaces(circuit)).stream()
                .filter(o -> o.part().equals(part) && o.sight().aspect() == aspect)
                .findFirst()
                .orElseThrow();
    }

    private static Circuit fed(double volts, Part... parts) {
        List<Part> all = new ArrayList<>(List.of(parts));
        all.add(new Battery(
                "BT1", net("top"), net("gnd"), quantity(volts, Unit.VOLT), quantity(1e-3, Unit.OHM), About.NOTHING));
        return circuit(120, 1, all.toArray(Part[]::new));
    }

    /**
     * Light ∝ V^3.4 (Fink and Beaty, Standard Handbook): half of it at 82 % of the rated voltage, one and a half times it at 113
     * %; the glow begins at 798 K (Draper), which a filament of 2350 K reaches at some 7 % of its voltage.
     */
    @ParameterizedTest
    @CsvSource({"0.5, DARK", "1.6, DIM", "4, DIM", "10.5, DIM", "11.6, LIT", "13, LIT", "14.4, LIT", "15.2, BRIGHT"})
    void lampsGlowByTheirPower(double volts, Sight sight) {
        assertThat(observed(fed(volts, lamp("E1", "top", "gnd", 13, 0.25)), "E1", Aspect.LAMP)
                        .sight())
                .isEqualTo(sight);
    }

    /** 0.98·(798/2350)⁴ + 0.02·500/2052. */
    @Test
    void glowBeginsAtDrapersPoint() {
        double radiated = 0.98 * Math.pow(798.0 / 2350, 4);
        double conducted = 0.02 * (798.0 - 298) / (2350 - 298);

        assertThat(Observations.SEEN_RATIO).isCloseTo(radiated + conducted, within(5e-4));
        assertThat(Observations.brightness(0.017)).isEqualTo(Sight.DARK);
        assertThat(Observations.brightness(0.019)).isEqualTo(Sight.DIM);
    }

    private static Coil coil(double ohms, double henries) {
        return new Coil(
                "L1",
                net("top"),
                net("gnd"),
                exactly(ohms, Unit.OHM),
                exactly(henries, Unit.HENRY),
                quantity(2, Unit.AMPERE),
                quantity(0.8, Unit.AMPERE),
                About.NOTHING);
    }

    /** Ohm's law: 8 ohm, pull-in 2 A at 16 V, holding 0.8 A at 6.4 V. */
    @ParameterizedTest
    @CsvSource({"16.1, PULLS_IN", "15.9, TOO_WEAK", "6.5, TOO_WEAK", "6.3, STILL", "0.1, STILL"})
    void coilsOnDirectCurrentPullInByOhmsLaw(double volts, Sight sight) {
        assertThat(observed(fed(volts, coil(8, 0.02)), "L1", Aspect.COIL).sight())
                .isEqualTo(sight);
    }

    /**
     * Straight from 24 V a.c. the current goes through nought twice a cycle: the plunger buzzes. Behind a bridge it follows the
     * pulses with a time constant of L/R = 2.5 ms and a diode to flow on through, and never falls to 0.8 A: it holds.
     */
    @Test
    void coilsBuzzOnAlternatingCurrentAndHoldOnFullWavePulses() {
        Circuit alternating = circuit(
                24, 0.1, coil(8, 0.02), resistor("R1", "line", "top", 1e-3), resistor("R2", "neutral", "gnd", 1e-3));
        Circuit rectified = circuit(
                48,
                0.1,
                bridge("BR1", "line", "neutral", "top", "gnd"),
                diode("D1", "gnd", "top", junction(1e-8, 2, 0.01)),
                coil(8, 0.02));

        assertThat(observed(alternating, "L1", Aspect.COIL).sight()).isEqualTo(Sight.BUZZES);
        assertThat(observed(rectified, "L1", Aspect.COIL).sight()).isEqualTo(Sight.PULLS_IN);
    }

    /** One leg open of a bridge: pulses at 60 Hz with gaps of 8 ms, in which 3 ms of L/R let the current die to 0.8 A and less. */
    @Test
    void coilsBuzzOnHalfWavePulses() {
        Circuit halfWave = circuit(
                48,
                0.1,
                diode("D2", "line", "top", junction(1e-8, 2, 0.01)),
                diode("D1", "gnd", "top", junction(1e-8, 2, 0.01)),
                resistor("R2", "neutral", "gnd", 1e-3),
                coil(8, 0.02));

        assertThat(observed(halfWave, "L1", Aspect.COIL).sight()).isEqualTo(Sight.BUZZES);
    }

    private static DualCoil dual(EndOfStroke stroke, boolean in, double holdOhms) {
        return new DualCoil(
                "L1",
                net("top"),
                net("gnd"),
                exactly(2.7, Unit.OHM),
                exactly(6e-3, Unit.HENRY),
                exactly(holdOhms, Unit.OHM),
                exactly(0.4, Unit.HENRY),
                stroke,
                in,
                About.NOTHING);
    }

    /** 48 V: 17.8 A through the strong winding pull in, 48/152.7 = 0.314 A hold; with the holding winding open it chatters. */
    @ParameterizedTest
    @CsvSource({
        "FOLLOWS, false, 150, PULLS_IN",
        "FOLLOWS, true, 150, HOLDS",
        "STUCK_CLOSED, true, 150, PULLS_IN",
        "STUCK_OPEN, false, 150, TOO_WEAK",
        "STUCK_OPEN, true, 150, TOO_WEAK",
        "FOLLOWS, true, 1e8, CHATTERS",
        "STUCK_OPEN, true, 1e8, STILL"
    })
    void coilsOfTwoWindingsFollowTheirSwitch(EndOfStroke stroke, boolean in, double holdOhms, Sight sight) {
        assertThat(observed(fed(48, dual(stroke, in, holdOhms)), "L1", Aspect.COIL)
                        .sight())
                .isEqualTo(sight);
    }

    /** The cap says 6 A as the holder does, and the other letter: a quick one melts where a slow one is asked for. */
    @ParameterizedTest
    @CsvSource({
        "SLOW, SLOW, RIGHT_RATING, ''",
        "QUICK, SLOW, UNDER_RATED, (quick where slow is marked)",
        "SLOW, QUICK, OVER_RATED, (slow where quick is marked)"
    })
    void aLinkOfAnotherSpeedIsNotAsMarked(FuseLink.Speed fitted, FuseLink.Speed marked, Sight sight, String detail) {
        Fuse fuse =
                new Fuse("F1", net("a"), net("b"), link(marked), link(fitted), exactly(0.005, Unit.OHM), About.NOTHING);
        Circuit circuit = circuit(24, 0.1, fuse);

        assertThat(Observations.ratings(circuit, circuit, Set.of()))
                .containsExactly(new Observation("F1", sight, detail));
    }

    private static FuseLink link(FuseLink.Speed speed) {
        return new FuseLink(
                quantity(6, Unit.AMPERE), speed, FuseLink.Standard.UL_248_14, "6.3x32", quantity(0.02, Unit.OHM));
    }

    /** A burnt contact of 20 Ω before 2.7 Ω: 48 V drive 2.1 A of the 3.33 A that pull in; 48/172.7 = 0.278 A would hold. */
    @Test
    void aPlungerThatNeverWentInIsNotHeld() {
        DualCoil sound = dual(EndOfStroke.FOLLOWS, true, 150);
        Circuit burnt = fed(48, sound.withPower(exactly(22.7, Unit.OHM), sound.powerHenries()));
        Seen seen = BridgeSupplyTest.look(burnt, Arrangement.powered(burnt), Meter.trueRms4000(), List.of());

        assertThat(Observations.of(fed(48, sound), seen, Set.of(), COLD))
                .filteredOn(o -> o.part().equals("L1"))
                .extracting(Observation::sight)
                .containsExactly(Sight.TOO_WEAK);
    }

    /**
     * 30 W in 2.7 ohm are 3.33 A. Behind a bad joint of some 24 ohm 48 V drive 1.7 A through all of the turns: not enough, however
     * little power the winding itself now asks for. A quarter of the turns asks for 13.3 A: 10 A behind 4.1 ohm are
     * not enough, where 7 A are for all of them.
     */
    @ParameterizedTest
    @CsvSource({"27, 6e-3, 0, STILL", "2.7, 6e-3, 0, PULLS_IN", "0.675, 3.75e-4, 4.1, STILL", "2.7, 6e-3, 4.1, PULLS_IN"
    })
    void aPlungerOfTwoWindingsAsksForItsAmpereTurns(double ohms, double henries, double lead, Sight sight) {
        DualCoil sound = dual(EndOfStroke.FOLLOWS, false, 150);
        DualCoil failed = new DualCoil(
                "L1",
                net("fed"),
                net("gnd"),
                exactly(ohms, Unit.OHM),
                exactly(henries, Unit.HENRY),
                sound.holdOhms(),
                sound.holdHenries(),
                EndOfStroke.FOLLOWS,
                /* pulledIn= */ false,
                About.NOTHING);
        Circuit healthy = fed(48, sound, resistor("R1", "top", "fed", 1));
        Circuit supposed = fed(48, failed, resistor("R1", "top", "fed", lead + 1e-3));
        Seen seen = BridgeSupplyTest.look(supposed, Arrangement.powered(supposed), Meter.trueRms4000(), List.of());

        assertThat(Observations.of(healthy, seen, Set.of(), COLD))
                .filteredOn(o -> o.part().equals("L1"))
                .extracting(Observation::sight)
                .containsExactly(sight);
    }

    private static Controller controller() {
        return new Controller(
                "U1",
                net("top"),
                net("gnd"),
                quantity(5, Unit.VOLT),
                quantity(0.1, Unit.AMPERE),
                quantity(4.6, Unit.VOLT),
                List.of(check("memory", 0.5), check("lamps", 0.4), check("coils", 0.7)),
                About.NOTHING);
    }

    private static Controller.StartUpCheck check(String label, double ofSupply) {
        return new Controller.StartUpCheck(
                label, net("half"), quantity(5 * ofSupply - 0.6, Unit.VOLT), quantity(5 * ofSupply + 0.6, Unit.VOLT));
    }

    /** Half of 5 V passes 1.9 to 3.1 V and 1.4 to 2.6 V, and fails 2.9 to 4.1 V: it stops at two of three. */
    @ParameterizedTest
    @CsvSource({"5, 'stops at 2 of 3, before coils'", "4.5, held in reset", "1, dead"})
    void controllerCountsItsChecksAndStopsAtTheFirstThatFails(double volts, String words) {
        Circuit circuit =
                fed(volts, controller(), resistor("R1", "top", "half", 1000), resistor("R2", "half", "gnd", 1000));

        assertThat(observed(circuit, "U1", Aspect.START_UP).words()).isEqualTo(words);
    }

    private static Fuse fuse(String name, double coldOhms) {
        FuseLink link = new FuseLink(
                quantity(2, Unit.AMPERE),
                FuseLink.Speed.SLOW,
                FuseLink.Standard.IEC_60127,
                "6.3x32",
                quantity(coldOhms, Unit.OHM));
        return new Fuse(name, net("top"), net("gnd"), link, link, exactly(5e-3, Unit.OHM), About.NOTHING);
    }

    @Test
    void fusesAreSeenThroughTheirGlassWithThePowerOffToo() {
        Circuit circuit = circuit(120, 1, fuse("F1", 0.05), fuse("F2", 1e8), fuse("F3", 1e8));
        Arrangement pulled = Arrangement.unpowered();
        Seen seen = BridgeSupplyTest.look(circuit, pulled, Meter.trueRms4000(), List.of());

        assertThat(Observations.of(circuit, seen, Set.of("F3"), COLD))
                .containsExactly(
                        new Observation("F1", Sight.WIRE_WHOLE, ""),
                        new Observation("F2", Sight.WIRE_GONE, ""),
                        new Observation("F3", Sight.NO_FUSE, ""));
    }

    /** 10 V on 100 ohm is 1 W; a film resistor rated 1 W carries that at 85 K above its air by its derating line. */
    @Test
    void resistorAtItsRatingIsTooHotToTouch() {
        assertThat(observed(fed(10, resistor("R1", "top", "gnd", 100)), "R1", Aspect.HEAT))
                .isEqualTo(new Observation("R1", Sight.TOO_HOT, "(about 110 °C)"));
        assertThat(observed(fed(5, resistor("R1", "top", "gnd", 100)), "R1", Aspect.HEAT)
                        .sight())
                .isEqualTo(Sight.NOT_HOT);
    }

    @Test
    void anotherLawOfHeatMayBeGiven() {
        Circuit circuit = fed(10, resistor("R1", "top", "gnd", 1e6));

        assertThat(observed(circuit, Arrangement.powered(circuit), seen -> Map.of("R1", 61.0)))
                .contains(new Observation("R1", Sight.TOO_HOT, "(about 60 °C)"));
    }

    /**
     * ΔV = I/(2fC): 28 V into 12 000 µF at 1.7 A is quiet (0.8 % r.m.s. of 33.9 V, independent integration); without the capacitor
     * full-wave pulses have a ripple of 48.3 %, and with one leg open they come at 60 Hz.
     */
    @Test
    void railsHumWhereTheirCapacitorIsGone() {
        Circuit sound = circuit(
                28,
                0.4,
                bridge("BR1", "line", "neutral", "plus", "gnd"),
                electrolytic("C1", "plus", "gnd", 0.012, 0.03),
                resistor("R1", "plus", "gnd", 20));
        Circuit dry = circuit(
                28,
                0.4,
                bridge("BR1", "line", "neutral", "plus", "gnd"),
                electrolytic("C1", "plus", "gnd", 1e-9, 0.03),
                resistor("R1", "plus", "gnd", 20));
        Circuit half = circuit(
                28,
                0.4,
                diode("D1", "line", "plus", junction(1e-8, 2, 0.01)),
                resistor("R2", "neutral", "gnd", 1e-3),
                electrolytic("C1", "plus", "gnd", 1e-9, 0.03),
                resistor("R1", "plus", "gnd", 20));

        assertThat(observed(sound, "C1", Aspect.HUM).sight()).isEqualTo(Sight.QUIET);
        assertThat(observed(dry, "C1", Aspect.HUM).words()).startsWith("hums at 120 Hz, ripple 5");
        assertThat(observed(half, "C1", Aspect.HUM).words()).startsWith("hums at 60 Hz, ripple 12");
    }
}
