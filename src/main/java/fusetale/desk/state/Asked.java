package fusetale.desk.state;

import fusetale.aftermath.Aftermath;
import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.TestPoint;
import fusetale.explore.Question;
import fusetale.fault.Supposition;
import fusetale.sentence.Leads;
import fusetale.sentence.Sentence;
import java.util.ArrayList;
import java.util.List;

/** Makes the question of a sentence: what is measured where, and how thoroughly it is to be answered. */
final class Asked {
    /** Machines drawn for the spread, as for the commands, so that window and command line say the same. */
    private static final Question.Options USUAL = Question.Options.USUAL;

    private Asked() {}

    /** The question of a sentence with its power as it is, without playing anything forward. */
    static Question of(Circuit board, Sentence sentence) {
        Arrangement arrangement = sentence.arrangement();
        List<Check> checks = new ArrayList<>(possible(board, sentence.setting().meter(), arrangement.powerOn()));
        MeterFunction function = sentence.setting().function();
        if (function == MeterFunction.CONTINUITY && !arrangement.powerOn()) {
            for (TestPoint point : board.points()) {
                checks.add(new Check(point.name(), point.against().name(), function));
            }
        }
        sentence.setting().check().filter(c -> !checks.contains(c)).ifPresent(checks::add);
        return new Question(
                board,
                Supposition.NOTHING,
                arrangement,
                sentence.setting().meter(),
                checks,
                new Question.Options(USUAL.draws(), USUAL.seed(), Question.Options.EVERY_TRACE));
    }

    /** The question of the same bench with the plug out where it is in, and in where it is out. */
    static Question otherwise(Circuit board, Sentence sentence) {
        Arrangement arrangement = sentence.arrangement();
        boolean on = !arrangement.powerOn();
        Meter meter = sentence.setting().meter();
        Arrangement other = arrangement.withPower(on);
        if (on) {
            other = other.withMainsVolts(
                    arrangement.mainsVolts() > 0
                            ? arrangement.mainsVolts()
                            : board.mains().volts().si());
        }
        return new Question(
                board,
                Supposition.NOTHING,
                Sentence.named(other),
                meter,
                possible(board, meter, on),
                new Question.Options(USUAL.draws(), USUAL.seed(), 0));
    }

    private static List<Check> possible(Circuit board, Meter meter, boolean powered) {
        return Check.all(board, powered).stream()
                .filter(c -> meter.has(c.function()))
                .toList();
    }

    /** What the tags of a sentence show: at each test point the meter's function, red lead on the point; then the leads. */
    static List<Check> tags(Circuit board, Sentence sentence) {
        MeterFunction function = sentence.setting().function();
        List<Check> tags = new ArrayList<>();
        if (function != MeterFunction.DC_AMPS) {
            for (TestPoint point : board.points()) {
                tags.add(new Check(point.name(), point.against().name(), function));
            }
        }
        Leads leads = sentence.setting().leads();
        if (leads != null) {
            Check held = new Check(leads.red(), leads.black(), function);
            tags.remove(held);
            tags.add(0, held);
        }
        return tags;
    }

    /** How an evening is played forward. */
    static Aftermath.Settings evening() {
        return Aftermath.Settings.USUAL;
    }
}
