package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.STUCK_OFF;
import static fusetale.fault.FailureMode.STUCK_ON;

import fusetale.circuit.Circuit;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.LogicOutput.State;
import java.util.List;
import java.util.Locale;

/**
 * Logic outputs. Stuck on: always in the state that works what they drive, the opposite of rest; an output that rests off
 * pulls up, or where it has nothing to pull up with, being an open collector, down. Stuck off: always at rest, whatever holds it on. Shares: judgement.
 */
final class LogicOutputFailures implements Failures<LogicOutput> {
    /** A high side of more than this [Ω] is none. */
    private static final double OPEN_COLLECTOR_OHMS = 1e6;

    @Override
    public String kind() {
        return "logic output";
    }

    @Override
    public List<FaultForm> forms(LogicOutput u) {
        FailureRate rate = FailureRate.LOGIC;
        return new FormList(u.name(), kind())
                .whole(STUCK_ON, null, rate.judged(0.4))
                .detailed(word(working(u, u.state())))
                .whole(STUCK_OFF, null, rate.judged(0.3))
                .detailed(word(u.state()))
                .whole(OPEN, OPENED, rate.judged(0.3))
                .list();
    }

    @Override
    public Circuit apply(Failing<LogicOutput> f) {
        State rest = f.healthy().state();
        return switch (f.fault().mode()) {
            case STUCK_ON -> f.replacedBy(with(f.now(), working(f.now(), rest)));
            case STUCK_OFF -> f.replacedBy(with(f.now(), rest));
            case OPEN -> f.inSeries(f.now(), "out", f.amountSi());
            default -> throw f.unlisted();
        };
    }

    private static String word(State state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    private static State working(LogicOutput u, State rest) {
        boolean openCollector = u.highOhms().si() > OPEN_COLLECTOR_OHMS;
        return switch (rest) {
            case HIGH -> State.LOW;
            case LOW -> State.HIGH;
            case OFF -> openCollector ? State.LOW : State.HIGH;
        };
    }

    private static LogicOutput with(LogicOutput u, State state) {
        return new LogicOutput(
                u.name(), u.out(), u.supply(), u.ground(), u.highOhms(), u.lowOhms(), state, u.commands(), u.about());
    }
}
