package fusetale.explore;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.diode;
import static fusetale.model.PartsBox.leg35;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where the leads of a meter are when they touch the legs of a part that failed. Sums by Ohm's law. */
class LegsTest {
    private static final double OHMS = 220;
    private static final Meter METER = Meter.trueRms4000();

    /** A diode across a resistor, and another resistor beside. */
    private static Circuit board() {
        return circuit(
                120,
                1e-3,
                resistor("R1", "one", "gnd", OHMS),
                diode("D1", "gnd", "one", leg35()),
                resistor("R2", "one", "gnd", 2 * OHMS),
                resistor("R3", "line", "gnd", 1e6),
                resistor("R4", "gnd", "neutral", 1));
    }

    private static Reading told(Fault fault, Check check) throws Exception {
        Reading told = Foretelling.of(
                        Specimen.nominal(board()), Arrangement.unpowered(), METER, List.of(check), () -> false)
                .under(new Supposition(List.of(fault)), () -> false)
                .orElseThrow()
                .readings()
                .get(0);
        Question question = new Question(
                board(),
                new Supposition(List.of(fault)),
                Arrangement.unpowered(),
                METER,
                List.of(check),
                new Question.Options(2, 1, 0));
        Answer answer = new Explorer(1).answer(question, Progress.SILENT, () -> false);
        Reading whole = ((Answer.Answered) answer).outcome().readings().get(0).asSupposed();
        assertThat(told.value()).isCloseTo(whole.value(), within(whole.halfWidth()));
        assertThat(told.overRange()).isEqualTo(whole.overRange());
        return whole;
    }

    /** Open inside, a diode's legs are still across both resistors: 220 Ω beside 440 Ω. */
    @Test
    void legsOfADiodeThatIsOpenInsideStayWhereTheyAreSoldered() throws Exception {
        Reading read = told(
                new Fault("D1", "", FailureMode.OPEN, null), new Check("D1.cathode", "D1.anode", MeterFunction.OHMS));

        assertThat(read.value()).isCloseTo(2 * OHMS / 3, within(read.halfWidth()));
    }

    /** Behind a cracked joint a meter on its legs reads the resistor, and what lies behind its joint: 220 Ω beside 440 Ω + 1 MΩ. */
    @Test
    void legBehindACrackedJointHangs() throws Exception {
        Fault cracked = new Fault("R1", "", FailureMode.CRACKED_JOINT, new Quantity(1e6, Unit.OHM));
        Reading own = told(cracked, new Check("R1.one", "R1.two", MeterFunction.OHMS));
        Reading board = told(cracked, new Check("one", "gnd", MeterFunction.OHMS));

        assertThat(own.value()).isCloseTo(1 / (1 / OHMS + 1 / (2 * OHMS + 1e6)), within(own.halfWidth()));
        assertThat(board.value()).isCloseTo(1 / (1 / (2 * OHMS) + 1 / (OHMS + 1e6)), within(board.halfWidth()));
    }
}
