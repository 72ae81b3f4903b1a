package fusetale.studies;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.match.Ask;
import fusetale.match.Candidate;
import fusetale.match.Evidence;
import fusetale.match.Findings;
import fusetale.match.Matcher;
import fusetale.match.Ranking;
import fusetale.match.Shown;
import fusetale.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;

/**
 * The program's own matcher, as it would be asked by a repairer: it compares everything of its catalogue that can be wrong
 * with any part of the circuit, not the classes alone. Its answer is the class of the part it would change first, up or
 * down by the amount of the likeliest drift; a part that is no class's, or a failure other than a drift, is a miss.
 */
final class MatcherGuess implements FilterBenchmark.Guess {
    private final List<FilterBenchmark.FaultClass> classes;
    private final List<Arrangement> arrangements;
    private final Check check;
    private final Matcher matcher;

    MatcherGuess(
            Circuit circuit,
            Meter meter,
            List<Arrangement> arrangements,
            Check check,
            List<FilterBenchmark.FaultClass> classes) {
        this.classes = classes;
        this.arrangements = arrangements;
        this.check = check;
        this.matcher = Matcher.of(circuit, meter, new Matcher.Settings(2, 1, null));
    }

    @Override
    public String name() {
        return "the program's matcher";
    }

    @Override
    public int of(double[] volts, double[] sigmas) {
        List<Evidence> evidence = new ArrayList<>();
        for (int k = 0; k < volts.length; k++) {
            evidence.add(new Evidence(new Ask.Metered(arrangements.get(k), check), new Shown.Figure(volts[k])));
        }
        try {
            Ranking ranking = matcher.rank(Findings.of(evidence), better -> {}, (done, of) -> {}, () -> false);
            return ranking.candidates().isEmpty() ? -1 : classOf(ranking.candidates().get(0));
        } catch (UnfitArrangement e) {
            throw new IllegalStateException(e);
        }
    }

    private int classOf(Candidate first) {
        if (first.repair().isNothing()) {
            return 0;
        }
        for (Candidate.Likely likely : first.suppositions()) {
            Supposition supposition = likely.supposition();
            for (Fault fault : supposition.faults()) {
                Quantity amount = fault.amount();
                if (fault.mode() == FailureMode.DRIFTED) {
                    boolean up = amount != null && amount.si() > 1;
                    return indexOf(fault.part() + (up ? " up" : " down"));
                }
            }
        }
        return -1;
    }

    private int indexOf(String name) {
        for (int k = 0; k < classes.size(); k++) {
            if (classes.get(k).name().equals(name)) {
                return k;
            }
        }
        return -1;
    }
}
