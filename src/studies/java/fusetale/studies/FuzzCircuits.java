package fusetale.studies;

import fusetale.mna.Element;
import fusetale.mna.Network;
import fusetale.mna.RandomNetworks;
import fusetale.mna.RandomNetworks.Nature;
import fusetale.mna.Trial;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Draws networks at random and puts each to a {@link Trial}: supplies as designed, supplies broken, tangles. Says how many
 * were tried, how each question ended, and of whatever must not be the seed and the fewest elements that still show it: an
 * answer that is not true, and a sound supply without one. A broken supply or a tangle may be refused, for a reason; how often
 * each was is told beside.
 */
public final class FuzzCircuits {
    /** After which the search for a periodic state is asked to stop [s]. */
    private static final double PATIENCE_SECONDS = 5;
    /** Of each sort of finding so many are made small. */
    private static final int MADE_SMALL = 2;

    /** Endings that say no more than that the solver gave up. */
    private static final List<String> GIVEN_UP =
            List.of("NO_OPERATING_POINT", "NO_PERIODIC_STATE", "STEP_TOO_SMALL", "STOPPED", "SINGULAR");

    private final AtomicLong next;
    private final long endNanos;
    private final Map<String, Integer> counts = new TreeMap<>();
    private final Map<String, List<Case>> findings = new LinkedHashMap<>();
    private final Map<String, List<Case>> refused = new LinkedHashMap<>();
    private int tried;

    private FuzzCircuits(long firstSeed, double seconds) {
        this.next = new AtomicLong(firstSeed);
        this.endNanos = System.nanoTime() + (long) (seconds * 1e9);
    }

    /** Where something was found. */
    private record Case(Nature nature, long seed, String detail) {
        Network network() {
            return RandomNetworks.draw(nature, seed).network();
        }
    }

    /**
     * Draws until the time is up, or tries one network again.
     *
     * @param arguments seconds, first seed and threads; or the nature and the seed of one network
     */
    public static void main(String[] arguments) throws InterruptedException {
        if (arguments.length > 0 && arguments[0].chars().allMatch(Character::isLetter)) {
            again(Nature.valueOf(arguments[0].toUpperCase(Locale.ROOT)), Long.parseLong(arguments[1]));
            System.exit(0);
        }
        double seconds = arguments.length > 0 ? Double.parseDouble(arguments[0]) : 60;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        int threads = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 1;
        FuzzCircuits fuzz = new FuzzCircuits(seed, seconds);
        List<Thread> workers = new ArrayList<>();
        for (int k = 0; k < threads; k++) {
            Thread worker = new Thread(fuzz::work);
            worker.start();
            workers.add(worker);
        }
        for (Thread worker : workers) {
            worker.join();
        }
        fuzz.print(seed);
        System.exit(0); // a hanging network's thread is still there
    }

    private void work() {
        while (System.nanoTime() < endNanos) {
            long seed = next.getAndIncrement();
            for (Nature nature : Nature.values()) {
                note(
                        new Case(nature, seed, ""),
                        tried(RandomNetworks.draw(nature, seed).network()));
            }
        }
    }

    private synchronized void note(Case at, Trial.Verdict verdict) {
        tried++;
        String nature = at.nature().toString().toLowerCase(Locale.ROOT);
        counts.merge(nature + ", all", 1, Integer::sum);
        verdict.outcomes().forEach((question, outcome) -> {
            counts.merge(nature + ", " + question + ": " + outcome, 1, Integer::sum);
            if (GIVEN_UP.contains(outcome)) {
                String detail = String.valueOf(verdict.refusals().get(question));
                add(
                        at.nature() == Nature.SUPPLY ? findings : refused,
                        unsolved(question, outcome),
                        new Case(at.nature(), at.seed(), detail));
            }
        });
        for (Trial.Finding finding : verdict.findings()) {
            add(findings, finding.what(), new Case(at.nature(), at.seed(), finding.detail()));
        }
    }

    private static void add(Map<String, List<Case>> to, String what, Case found) {
        to.computeIfAbsent(what, w -> new ArrayList<>()).add(found);
    }

    private static Trial.Verdict tried(Network network) {
        return Alone.done(
                () -> Trial.of(network, PATIENCE_SECONDS), findings -> new Trial.Verdict(Map.of(), Map.of(), findings));
    }

    private static boolean shows(Network network, String what) {
        Trial.Verdict verdict = tried(network);
        return verdict.findings().stream().anyMatch(f -> f.what().equals(what))
                || verdict.outcomes().entrySet().stream()
                        .anyMatch(o -> unsolved(o.getKey(), o.getValue()).equals(what));
    }

    private static String unsolved(String question, String outcome) {
        return "not solved, " + question + ": " + outcome;
    }

    /** Takes elements away, many at once and at last one by one, while the finding stays. */
    private static Network small(Network network, String what) {
        Network least = network;
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
        for (int chunk = least.elements().size() / 2; chunk >= 1; chunk /= 2) {
            int at = 0;
            while (at < least.elements().size() && System.nanoTime() < end) {
                List<Element> fewer = new ArrayList<>(least.elements());
                fewer.subList(at, Math.min(at + chunk, fewer.size())).clear();
                Network candidate = RandomNetworks.withoutBareNodes(new Network(least.nodes(), fewer));
                if (shows(candidate, what)) {
                    least = candidate;
                } else {
                    at += chunk;
                }
            }
        }
        return least;
    }

    private static void again(Nature nature, long seed) {
        RandomNetworks.Drawn drawn = RandomNetworks.draw(nature, seed);
        drawn.listing(drawn.network()).forEach(line -> say("  %s", line));
        Trial.Verdict verdict = tried(drawn.network());
        say("%s", verdict.outcomes());
        verdict.refusals().forEach((question, reason) -> say("%s: %s", question, reason));
        verdict.findings().forEach(f -> say("%s: %s", f.what(), f.detail()));
    }

    private synchronized void print(long firstSeed) {
        say("%d networks of seeds from %d on", tried, firstSeed);
        counts.forEach((what, count) -> say("  %-48s%8d", what, count));
        print(refused);
        print(findings);
        say("%n%d refused, %d findings", size(refused), size(findings));
    }

    private static int size(Map<String, List<Case>> cases) {
        return cases.values().stream().mapToInt(List::size).sum();
    }

    private void print(Map<String, List<Case>> cases) {
        cases.forEach((what, found) -> {
            say("%n%s: %d", what, found.size());
            for (int k = 0; k < found.size(); k++) {
                Case c = found.get(k);
                String detail = c.detail().length() > 300 ? c.detail().substring(0, 297) + "..." : c.detail();
                if (k < 40) {
                    say("  %s %d  %s", c.nature(), c.seed(), detail);
                }
                if (k < MADE_SMALL) {
                    RandomNetworks.draw(c.nature(), c.seed())
                            .listing(small(c.network(), what))
                            .forEach(line -> say("      %s", line));
                }
            }
        });
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
