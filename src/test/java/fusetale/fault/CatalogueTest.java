package fusetale.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.Battery;
import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Diode;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.EndOfStroke;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Resistor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transistor;
import fusetale.circuit.Wire;
import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CatalogueTest {
    private static final Circuit BOARD = OneOfEach.circuit();

    static Stream<FaultForm> everyFault() {
        return Catalogue.possible(BOARD).stream();
    }

    @Test
    void everyPermittedKindOfPartHasFailures() {
        assertThat(Kinds.known()).containsExactlyInAnyOrder(Part.class.getPermittedSubclasses());
    }

    @Test
    void possibleFaultsFollowTheOrderOfTheCircuit() {
        List<String> parts = Catalogue.possible(BOARD).stream()
                .map(FaultForm::part)
                .distinct()
                .toList();

        assertThat(parts).isEqualTo(Catalogue.designators(BOARD));
    }

    @Test
    void noFaultIsListedTwice() {
        List<String> all = Catalogue.possible(BOARD).stream()
                .map(f -> f.target() + "=" + f.mode())
                .toList();

        assertThat(all).doesNotHaveDuplicates();
    }

    @Test
    void everyFailureWordIsUsedBySomeKind() {
        List<FailureMode> used = Catalogue.possible(BOARD).stream()
                .map(FaultForm::mode)
                .distinct()
                .toList();

        assertThat(used).containsExactlyInAnyOrder(FailureMode.values());
    }

    static Stream<FaultForm> everyFaultThatShowsAtRest() {
        // the board's switch is closed and its output rests: stuck as they stand, nothing has changed yet
        return everyFault()
                .filter(f -> !(f.part().equals("S1") && f.mode() == FailureMode.STUCK_ON))
                .filter(f -> !(f.part().equals("U502") && f.mode() == FailureMode.STUCK_OFF));
    }

    @ParameterizedTest
    @MethodSource("everyFaultThatShowsAtRest")
    void everyFaultThatShowsAtRestChangesTheCircuit(FaultForm form) throws UnfitSupposition {
        assertThat(Catalogue.apply(BOARD, suppose(form.usual()))).isNotEqualTo(BOARD);
    }

    @ParameterizedTest
    @MethodSource("everyFault")
    void everyFaultLeavesAllOtherPartsAlone(FaultForm form) throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(form.usual()));

        List<Part> others = BOARD.parts().stream()
                .filter(p -> !p.name().equals(form.part()))
                .toList();
        assertThat(changed.parts()).containsAll(others);
    }

    @ParameterizedTest
    @MethodSource("everyFault")
    void everyPriorIsPositive(FaultForm form) {
        assertThat(form.priorRatio()).isPositive();
    }

    @Test
    void shortLaysTwentyMilliohmsAcross() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("D1", "", FailureMode.SHORT)));

        Wire laid = part(changed, "D1~short", Wire.class);
        assertThat(List.of(laid.one(), laid.two())).containsExactly(new Net("raw"), new Net("logic"));
        // 20 mΩ: the default of the product's physics page
        assertThat(laid.ohms().si()).isEqualTo(0.020);
    }

    @Test
    void openResistorIsAHundredMegohms() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("R204", "", FailureMode.OPEN)));

        // 100 MΩ: the default of the product's physics page
        assertThat(part(changed, "R204", Resistor.class).ohms().si()).isEqualTo(100e6);
    }

    @Test
    void driftSaysWhatThereIsOfNominal() throws UnfitSupposition {
        Fault drift = new Fault("R204", "", FailureMode.DRIFTED, new Quantity(1.5, Unit.RATIO));

        Circuit changed = Catalogue.apply(BOARD, suppose(drift));

        assertThat(part(changed, "R204", Resistor.class).ohms().si()).isCloseTo(1.5 * 470, within(1e-9));
    }

    @Test
    void faultyLegTakesTheBridgeApartUnderTheNamesOfItsLegs() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("BR201", "leg1", FailureMode.SHORT)));

        assertThat(changed.parts().stream().map(Part::name).filter(n -> n.startsWith("BR201")))
                .containsExactly("BR201.leg1", "BR201.leg2", "BR201.leg3", "BR201.leg4", "BR201.leg1~short");
    }

    @Test
    void healthyLegsOfAFaultyBridgeAreThoseOfTheWholeOne() throws UnfitSupposition {
        Bridge whole = part(BOARD, "BR201", Bridge.class);

        Circuit changed = Catalogue.apply(BOARD, suppose(fault("BR201", "leg1", FailureMode.SHORT)));

        assertThat(part(changed, "BR201.leg3", Diode.class)).isEqualTo(whole.leg(3));
    }

    @Test
    void twoLegsOfOneBridgeFailTogether() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(
                BOARD, suppose(fault("BR201", "leg1", FailureMode.SHORT), fault("BR201", "leg4", FailureMode.OPEN)));

        assertThat(changed.part("BR201.leg1~short")).isPresent();
        assertThat(part(changed, "BR201.leg4~open", Wire.class).ohms().si()).isEqualTo(100e6);
    }

    @Test
    void reversedBridgeMakesTheRailNegative() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("BR201", "", FailureMode.REVERSED)));

        Bridge turned = part(changed, "BR201", Bridge.class);
        assertThat(List.of(turned.plus(), turned.minus())).containsExactly(new Net("gnd"), new Net("raw"));
    }

    @Test
    void bridgeTurnedByAQuarterHasItsPlusOnAnAlternatingPad() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("BR201", "quarter", FailureMode.REVERSED)));

        Bridge turned = part(changed, "BR201", Bridge.class);
        assertThat(List.of(turned.plus(), turned.minus())).containsExactly(new Net("f"), new Net("s2"));
    }

    @Test
    void turnedBridgeWithAShortedLegIsTurnedFirst() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(
                BOARD, suppose(fault("BR201", "leg1", FailureMode.SHORT), fault("BR201", "", FailureMode.REVERSED)));

        assertThat(part(changed, "BR201.leg1", Diode.class).cathode()).isEqualTo(new Net("gnd"));
    }

    @Test
    void driedOutCapacitorLosesCapacitanceAndGainsResistance() throws UnfitSupposition {
        Fault dry = new Fault("C101", "", FailureMode.DRIED_OUT, new Quantity(0.6, Unit.RATIO));

        Electrolytic c = part(Catalogue.apply(BOARD, suppose(dry)), "C101", Electrolytic.class);

        assertThat(c.farads().si()).isCloseTo(0.6 * 4700e-6, within(1e-12));
        // with 40 % of the electrolyte gone ESR stands at 2.8 times: Gasperi, IEEE IAS 1996 (from memory)
        assertThat(c.seriesOhms().si() / 0.05).isCloseTo(2.8, within(0.05));
    }

    @Test
    void wrongFuseKeepsWhatTheMarkingAsksFor() throws UnfitSupposition {
        Fault wrong = new Fault("F201", "", FailureMode.WRONG_RATING, new Quantity(25, Unit.AMPERE));

        Fuse fuse = part(Catalogue.apply(BOARD, suppose(wrong)), "F201", Fuse.class);

        assertThat(fuse.marked().ratedAmps().si()).isEqualTo(5);
        assertThat(fuse.fitted().ratedAmps().si()).isEqualTo(25);
    }

    @Test
    void linkOfAHigherRatingResistsLess() throws UnfitSupposition {
        Fault wrong = new Fault("F201", "", FailureMode.WRONG_RATING, new Quantity(25, Unit.AMPERE));

        Fuse fuse = part(Catalogue.apply(BOARD, suppose(wrong)), "F201", Fuse.class);

        // maker's table of slow 6.3 × 32 mm links: 5 A 25.6 mΩ, 25 A 3.1 mΩ; another family's ratio, hence 20 %
        assertThat(fuse.fitted().coldOhms().si()).isCloseTo(0.0031, within(0.0006));
    }

    @Test
    void wrongFuseThatIsBlownStaysBlownHoweverItIsSaid() throws UnfitSupposition {
        Fault wrong = new Fault("F201", "", FailureMode.WRONG_RATING, new Quantity(25, Unit.AMPERE));

        Circuit changed = Catalogue.apply(BOARD, suppose(fault("F201", "", FailureMode.BLOWN), wrong));

        assertThat(part(changed, "F201", Fuse.class).fitted().coldOhms().si()).isEqualTo(100e6);
    }

    @Test
    void shortBetweenCollectorAndEmitterTouchesNothingElse() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("Q204", "ce", FailureMode.SHORT)));

        Wire laid = part(changed, "Q204.ce~short", Wire.class);
        assertThat(List.of(laid.one(), laid.two())).containsExactly(new Net("drive"), new Net("gnd"));
    }

    @Test
    void weakTransistorHasTheGainThatIsLeft() throws UnfitSupposition {
        Fault weak = new Fault("Q204", "", FailureMode.WEAK, new Quantity(0.1, Unit.RATIO));

        Circuit changed = Catalogue.apply(BOARD, suppose(weak));

        assertThat(part(changed, "Q204", Transistor.class).model().forwardGainRatio())
                .isCloseTo(5, within(1e-12));
    }

    @Test
    void openWindingOfATransformerLeavesTheOthers() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("T1", "sec", FailureMode.OPEN)));

        Transformer t = part(changed, "T1", Transformer.class);
        assertThat(t.secondaries().get(0).ohms().si()).isEqualTo(100e6);
        assertThat(t.secondaries().get(1))
                .isEqualTo(part(BOARD, "T1", Transformer.class).secondaries().get(1));
    }

    @Test
    void shortedTurnsKeepTheTurnsTheirVoltsAndOhmsTogether() throws UnfitSupposition {
        Fault turns = new Fault("T1", "sec", FailureMode.SHORTED_TURNS, new Quantity(0.9, Unit.RATIO));

        Transformer t = part(Catalogue.apply(BOARD, suppose(turns)), "T1", Transformer.class);

        Transformer.Winding rest = t.secondaries().get(0);
        Transformer.Winding dead = t.secondaries().get(2);
        // conservation: live and shorted turns together are the winding as wound
        assertThat(rest.volts().si() + dead.volts().si()).isCloseTo(28, within(1e-9));
        assertThat(rest.ohms().si() + dead.ohms().si()).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void shortedTurnsOfThePrimaryKeepTheFluxOfEachTurn() throws UnfitSupposition {
        Fault turns = new Fault("T1", "primary", FailureMode.SHORTED_TURNS, new Quantity(0.9, Unit.RATIO));

        Transformer t = part(Catalogue.apply(BOARD, suppose(turns)), "T1", Transformer.class);

        // ampere-turns at equal volts a turn: 0.9 of the turns need the current of all divided by 0.9 (Ampère's law)
        assertThat(t.primary().volts().si() * t.magnetics().magnetisingAmps().si())
                .isCloseTo(120 * 0.04, within(1e-9));
    }

    @Test
    void stuckEndOfStrokeSwitchNeverOpens() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("L208", "switch", FailureMode.STUCK_ON)));

        assertThat(part(changed, "L208", DualCoil.class).endOfStroke()).isEqualTo(EndOfStroke.STUCK_CLOSED);
    }

    @Test
    void outputStuckOnLeavesItsRest() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("U502", "", FailureMode.STUCK_ON)));

        assertThat(part(changed, "U502", LogicOutput.class).state()).isEqualTo(LogicOutput.State.HIGH);
    }

    @Test
    void outputStuckOffRestsThoughAnArrangementHoldsItOn() throws UnfitSupposition {
        LogicOutput u = part(BOARD, "U502", LogicOutput.class);
        Circuit held = BOARD.with(new LogicOutput(
                u.name(),
                u.out(),
                u.supply(),
                u.ground(),
                u.highOhms(),
                u.lowOhms(),
                LogicOutput.State.HIGH,
                u.commands(),
                u.about()));

        Circuit changed = Catalogue.apply(BOARD, held, suppose(fault("U502", "", FailureMode.STUCK_OFF)));

        assertThat(part(changed, "U502", LogicOutput.class).state()).isEqualTo(LogicOutput.State.LOW);
    }

    @Test
    void shortGoesAlongWithALiftedPin() throws UnfitSupposition {
        Net lifted = new Net("lifted");
        Circuit arranged = BOARD.with(part(BOARD, "BR201", Bridge.class).rewired("ac1", lifted));

        Circuit changed = Catalogue.apply(BOARD, arranged, suppose(fault("BR201", "leg1", FailureMode.SHORT)));

        assertThat(part(changed, "BR201.leg1~short", Wire.class).one()).isEqualTo(lifted);
    }

    @Test
    void faultOfAConnectorThatIsUnpluggedChangesNothing() throws UnfitSupposition {
        Circuit unplugged = BOARD.withConnectors(List.of());

        Circuit changed = Catalogue.apply(BOARD, unplugged, suppose(fault("J3", "4", FailureMode.BURNT)));

        assertThat(changed).isEqualTo(unplugged);
    }

    @Test
    void burntPinOfAConnectorThatIsOffDoesNotJoinItAgain() throws UnfitSupposition {
        Toleranced air = new Toleranced(new Quantity(1e10, Unit.OHM), Tolerance.EXACT);
        Connector plugged = BOARD.connector("J3").orElseThrow();
        Connector off = new Connector(
                "J3",
                plugged.pins().stream()
                        .map(p -> new Connector.Contact(p.label(), p.board(), p.harness(), air))
                        .toList(),
                null);
        Circuit arranged = BOARD.withConnectors(List.of(off));

        assertThat(Catalogue.apply(BOARD, arranged, suppose(fault("J3", "4", FailureMode.BURNT))))
                .isEqualTo(arranged);
    }

    @Test
    void burntPinHasTheResistanceSaid() throws UnfitSupposition {
        Fault burnt = new Fault("J3", "4", FailureMode.BURNT, new Quantity(2, Unit.OHM));

        Connector j = Catalogue.apply(BOARD, suppose(burnt)).connector("J3").orElseThrow();

        assertThat(j.pins().stream().map(p -> p.ohms().si())).containsExactly(0.005, 2.0, 0.005);
    }

    @Test
    void reversedBatteryKeepsItsVolts() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("B501", "", FailureMode.REVERSED)));

        assertThat(part(changed, "B501", Battery.class).plus()).isEqualTo(new Net("gnd"));
        assertThat(part(changed, "B501", Battery.class).volts().si()).isEqualTo(3.6);
    }

    @Test
    void oneLampOfEightFewerLeavesSeven() throws UnfitSupposition {
        Circuit changed = Catalogue.apply(BOARD, suppose(fault("E2", "one", FailureMode.OPEN)));

        assertThat(part(changed, "E2", Lamp.class).count()).isEqualTo(7);
    }

    @Test
    void swappedPinsTradeTheirWires() throws UnfitSupposition {
        Connector j = Catalogue.apply(BOARD, suppose(fault("J3", "4", FailureMode.SWAPPED)))
                .connector("J3")
                .orElseThrow();

        assertThat(j.pins().stream().map(Connector.Contact::harness))
                .containsExactly(new Net("raw-h"), new Net("gnd-h"), new Net("drive-h"));
        assertThat(j.pins().stream().map(Connector.Contact::board))
                .containsExactly(new Net("raw"), new Net("drive"), new Net("gnd"));
    }

    @Test
    void lastPinHasNoNextToBeSwappedWith() {
        assertUnfit("J3.key cannot be 'swapped'; J3.1, J3.4 can", fault("J3", "key", FailureMode.SWAPPED));
    }

    @Test
    void pinThatIsSwappedMayAlsoBeBurnt() throws UnfitSupposition {
        Connector j = Catalogue.apply(
                        BOARD, suppose(fault("J3", "4", FailureMode.BURNT), fault("J3", "4", FailureMode.SWAPPED)))
                .connector("J3")
                .orElseThrow();

        assertThat(j.pins().get(1).ohms().si()).isEqualTo(2);
        assertThat(j.pins().get(1).harness()).isEqualTo(new Net("gnd-h"));
    }

    @Test
    void lowAndHighMainsContradictEachOther() {
        assertUnfit(
                "the mains is low and the mains is high contradict each other; keep one of them",
                fault("mains", "", FailureMode.LOW_LINE),
                fault("mains", "", FailureMode.HIGH_LINE));
    }

    @Test
    void lowMainsAreBelowTheRangeOfHealthyOnes() {
        assertThatThrownBy(() -> Catalogue.apply(
                        BOARD, suppose(new Fault("mains", "", FailureMode.LOW_LINE, new Quantity(118, Unit.VOLT)))))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessage("mains=low-line says what there is now: 1 V to 110 V, not 118 V");
    }

    @Test
    void rectifierIsNotSaidToDriftAsASignalDiodeIs() {
        assertThat(Catalogue.possible(BOARD, "D3")).extracting(FaultForm::mode).contains(FailureMode.DRIFTED);
        assertThat(Catalogue.possible(BOARD, "D1")).extracting(FaultForm::mode).doesNotContain(FailureMode.DRIFTED);
    }

    @Test
    void sameFaultTwiceOverGetsTwoNames() throws UnfitSupposition {
        Supposition once = suppose(fault("D1", "", FailureMode.SHORT));

        Circuit twice = Catalogue.apply(Catalogue.apply(BOARD, once), once);

        assertThat(twice.parts().stream().map(Part::name)).doesNotHaveDuplicates();
    }

    @Test
    void nothingSupposedIsTheHealthyCircuit() throws UnfitSupposition {
        assertThat(Catalogue.apply(BOARD, Supposition.NOTHING)).isEqualTo(BOARD);
    }

    @Test
    void unknownPartIsRefusedWithTheNearestName() {
        assertUnfit("no part 'BR210' in One Of Each; nearest: 'BR201'", fault("BR210", "leg1", FailureMode.SHORT));
    }

    @Test
    void unknownLegIsRefusedWithTheNearestName() {
        assertUnfit(
                "BR201 has no 'leg5'; nearest: 'leg1'. Allowed: leg1, leg2, leg3, leg4, quarter",
                fault("BR201", "leg5", FailureMode.SHORT));
    }

    @Test
    void placeOfAPartWithoutPlacesIsRefused() {
        assertUnfit("D1 has no places; write D1=short", fault("D1", "leg1", FailureMode.SHORT));
    }

    @Test
    void modeThatThePlaceDoesNotHaveIsRefusedWithWhatItHas() {
        assertUnfit(
                "R204 cannot be 'blown'. Allowed: open, drifted, short, cracked-joint",
                fault("R204", "", FailureMode.BLOWN));
    }

    @Test
    void wholeBridgeCannotBeShortedButItsLegsCan() {
        assertUnfit(
                "BR201 cannot be 'short'; BR201.leg1, BR201.leg2, BR201.leg3, BR201.leg4 can",
                fault("BR201", "", FailureMode.SHORT));
    }

    @Test
    void amountOutOfBoundsIsRefusedWithTheBounds() {
        assertThatThrownBy(() -> Catalogue.apply(
                        BOARD, suppose(new Fault("C101", "", FailureMode.DRIED_OUT, new Quantity(1.4, Unit.RATIO)))))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessageContaining("C101=dried-out says what there is now");
    }

    @Test
    void amountInAnotherUnitIsRefused() {
        assertThatThrownBy(() -> Catalogue.apply(
                        BOARD, suppose(new Fault("C101", "", FailureMode.DRIED_OUT, new Quantity(2, Unit.OHM)))))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessageContaining("C101=dried-out");
    }

    @Test
    void amountWhereThereIsNoneIsRefused() {
        assertThatThrownBy(() -> Catalogue.apply(
                        BOARD, suppose(new Fault("F201", "", FailureMode.BLOWN, new Quantity(2, Unit.OHM)))))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessageContaining("takes no amount");
    }

    @Test
    void shortedAndOpenContradictEachOther() {
        assertUnfit(
                "D1 is shorted and D1 is open contradict each other; keep one of them",
                fault("D1", "", FailureMode.SHORT),
                fault("D1", "", FailureMode.OPEN));
    }

    @Test
    void openPinContradictsAShortOfThatPin() {
        assertUnfit(
                "Q204 C to E is shorted and Q204 collector is open contradict each other; keep one of them",
                fault("Q204", "ce", FailureMode.SHORT),
                fault("Q204", "c", FailureMode.OPEN));
    }

    @Test
    void sameFaultTwiceIsRefused() {
        assertUnfit(
                "D1 is shorted is said twice; say it once",
                fault("D1", "", FailureMode.SHORT),
                new Fault("D1", "", FailureMode.SHORT, new Quantity(0.1, Unit.OHM)));
    }

    private static void assertUnfit(String message, Fault... faults) {
        assertThatThrownBy(() -> Catalogue.apply(BOARD, suppose(faults)))
                .isInstanceOf(UnfitSupposition.class)
                .hasMessage(message);
    }

    private static Supposition suppose(Fault... faults) {
        return new Supposition(Arrays.asList(faults));
    }

    private static Fault fault(String part, String place, FailureMode mode) {
        return new Fault(part, place, mode, null);
    }

    private static <P extends Part> P part(Circuit circuit, String name, Class<P> kind) {
        return kind.cast(circuit.part(name).orElseThrow());
    }
}
