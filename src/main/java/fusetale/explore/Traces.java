package fusetale.explore;

import fusetale.bench.Check;
import fusetale.bench.Seen;
import fusetale.circuit.MeterFunction;
import fusetale.quantity.Unit;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Chooses the waveforms worth showing: of the points that moved most (of one, where none moved), and of the fuse that carries most past its rating. A
 * point whose two waveforms look like those of one already chosen is passed over.
 */
final class Traces {
    /** Waveforms whose figures differ by less than this share look alike. */
    private static final double ALIKE = 0.03;

    private final Question question;
    private final Baseline baseline;
    private final Settled settled;
    private final Seen seen;
    private final List<Trace> chosen = new ArrayList<>();

    Traces(Question question, Baseline baseline, Settled settled, Seen seen) {
        this.question = question;
        this.baseline = baseline;
        this.settled = settled;
        this.seen = seen;
    }

    /**
     * The traces.
     *
     * @param compared the readings in the order of the question
     */
    List<Trace> chosen(List<Compared> compared) {
        if (question.options().traces() != Question.Options.EVERY_TRACE) {
            return chosen(compared, question.options().traces());
        }
        Map<String, Trace> all = new LinkedHashMap<>();
        chosen(compared, Question.Options.USUAL.traces()).forEach(t -> all.put(t.label(), t));
        for (int k = 0; k < compared.size(); k++) {
            all.putIfAbsent(label(question.checks().get(k)), trace(k));
        }
        for (Settled.Carrying fuse : settled.held()) {
            String name = fuse.fuse().name();
            all.putIfAbsent(name, new Trace(name, Unit.AMPERE, baseline.seen().amps(name), fuse.amps()));
        }
        return List.copyOf(all.values());
    }

    private List<Trace> chosen(List<Compared> compared, int most) {
        List<Integer> ranked = IntStream.range(0, compared.size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                                (Integer k) -> compared.get(k).movedInTwoFigures())
                        .reversed())
                .toList();
        List<Trace> fuses = fuseCurrent();
        int room = most - fuses.size();
        for (int k : ranked) {
            if (chosen.size() >= room || (!chosen.isEmpty() && compared.get(k).tooCloseToTell())) {
                break;
            }
            consider(k);
        }
        chosen.addAll(fuses);
        return chosen;
    }

    private void consider(int k) {
        Trace trace = trace(k);
        for (Trace other : chosen) {
            if (alike(trace.asBuilt(), other.asBuilt()) && alike(trace.asSupposed(), other.asSupposed())) {
                return;
            }
        }
        chosen.add(trace);
    }

    private Trace trace(int k) {
        Check check = question.checks().get(k);
        return new Trace(
                label(check),
                check.function() == MeterFunction.DC_AMPS ? Unit.AMPERE : Unit.VOLT,
                baseline.seen().waveforms().get(k),
                seen.waveforms().get(k));
    }

    /** Current of the first fuse that melts, or of that which may; as built beside it where it has one there. */
    private List<Trace> fuseCurrent() {
        Settled.Carrying fuse = settled.melted().stream()
                .findFirst()
                .or(() -> settled.mostOverloaded().filter(c -> !c.melting().surelyHolds()))
                .orElse(null);
        if (fuse == null || question.options().traces() < 2) {
            return List.of();
        }
        String name = fuse.fuse().name();
        return List.of(new Trace(name, Unit.AMPERE, baseline.seen().amps(name), fuse.amps()));
    }

    private String label(Check check) {
        boolean usual = question.healthy()
                .point(check.from())
                .map(p -> p.against().name().equals(check.to()))
                .orElse(false);
        return usual ? check.from() : check.from() + " to " + check.to();
    }

    private static boolean alike(Waveform one, Waveform two) {
        double size = Math.max(Math.max(one.highest(), -one.lowest()), Math.max(two.highest(), -two.lowest()));
        double allowed = ALIKE * size;
        return Math.abs(one.mean() - two.mean()) <= allowed
                && Math.abs(one.rms() - two.rms()) <= allowed
                && Math.abs(one.highest() - two.highest()) <= allowed
                && Math.abs(one.lowest() - two.lowest()) <= allowed;
    }
}
