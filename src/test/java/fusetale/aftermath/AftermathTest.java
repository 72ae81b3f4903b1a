package fusetale.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.aftermath.Body.Nature;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.mna.NotSolved;
import fusetale.mna.Solved;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Machines whose ends can be worked out by hand. */
class AftermathTest {
    private static final Fault OPEN = new Fault("L1", "", FailureMode.OPEN, null);
    private static final Fault BLOWN = new Fault("F1", "", FailureMode.BLOWN, null);

    /** No spread at all, air at 25 °C. */
    private static final Aftermath.Settings EXACT = new Aftermath.Settings(3, 1, 3600, 25, 25);

    /** A board whose loads follow from what happened. */
    private record Given(List<Body> bodies, Function<List<Fault>, Loads> loads) implements Board {
        @Override
        public Solved<Loads> after(List<Fault> happened, Set<String> hot) {
            return new Solved.Found<>(loads.apply(happened));
        }
    }

    private static Body coil(Limit... limits) {
        // R 4 K/W, C 25 J/K: 100 s
        return new Body(
                "L1", "", Nature.RESISTOR, ThermalNetwork.single(4, 25), new Body.Spread(1, 1), List.of(limits));
    }

    private static Limit at(double celsius, Harm harm, @Nullable Fault then) {
        return new Limit(celsius, celsius, harm, then, "by hand");
    }

    private static Loads watts(double watts) {
        return new Loads(Map.of("L1", watts), Map.of(), List.of());
    }

    /** t = RC·ln(P·R/(P·R − ΔT)): 50 W over 4 K/W end at 200 K; 100 K are passed after 100 s·ln 2 = 69.3147 s. */
    @Test
    void aLimitIsPassedWhenTheExponentialPassesIt() {
        Board board = new Given(List.of(coil(at(125, Harm.WINDING_PAST_CLASS, null))), h -> watts(50));

        Event event = Aftermath.of(board, EXACT).events().get(0);

        assertThat(event.middleSeconds()).isCloseTo(69.3147, within(0.1));
        assertThat(event.count()).isEqualTo(3);
    }

    /** What passes 100 K after 69.3147 s and is then open cools down: nothing more, and no second limit. */
    @Test
    void whatHappensChangesTheLoads() {
        Board board = new Given(
                List.of(coil(at(125, Harm.BURNS_OPEN, OPEN), at(175, Harm.TURNS_SHORT, null))),
                h -> watts(h.contains(OPEN) ? 0 : 50));

        Aftermath aftermath = Aftermath.of(board, EXACT);

        assertThat(aftermath.events()).extracting(Event::harm).containsExactly(Harm.BURNS_OPEN);
        assertThat(aftermath.stories()).hasSize(1);
        assertThat(aftermath.stories().get(0).end()).isEqualTo(Story.End.RESTS);
    }

    /**
     * A fuse that melts in 20 s at the first load and in 5 s at the second, to which the machine changes after 10 s: half of it is
     * gone, so it melts 2.5 s later (Miner's rule).
     */
    @Test
    void wearAddsUpOverLoads() {
        Fault change = new Fault("R9", "", FailureMode.SHORT, null);
        Board board = new Given(
                List.of(),
                h -> h.contains(BLOWN)
                        ? new Loads(Map.of(), Map.of(), List.of())
                        : new Loads(
                                Map.of(),
                                Map.of(),
                                List.of(wear("F1", BLOWN, h.contains(change) ? 5 : 20), wear("R9", change, 10))));

        Aftermath aftermath = Aftermath.of(board, EXACT);

        assertThat(aftermath.events()).extracting(Event::part).containsExactly("R9", "F1");
        assertThat(aftermath.events().get(1).middleSeconds()).isCloseTo(12.5, within(0.02));
    }

    private static Wear wear(String part, Fault then, double seconds) {
        return new Wear(part, "", Harm.FUSE_MELTS, then, new Melting(seconds, seconds), "by hand");
    }

    /**
     * Two that race, times drawn evenly in the logarithm from 1 to 100 s and from 10 to 1000 s. With x and y even from 0 to 2
     * and 1 to 3 in log10, y is first with probability ½·(1/2)² = 1/8.
     */
    @Test
    void whereTheOrderIsOpenMachinesPartIntoStories() {
        Board board = new Given(
                List.of(),
                h -> h.isEmpty()
                        ? new Loads(
                                Map.of(),
                                Map.of(),
                                List.of(
                                        new Wear("F1", "", Harm.FUSE_MELTS, BLOWN, new Melting(1, 100), "by hand"),
                                        new Wear("L1", "", Harm.BURNS_OPEN, OPEN, new Melting(10, 1000), "by hand")))
                        : new Loads(Map.of(), Map.of(), List.of()));
        int machines = 4000;

        Aftermath aftermath = Aftermath.of(board, new Aftermath.Settings(machines, 7, 3600, 25, 25));

        assertThat(aftermath.stories()).hasSize(2);
        Story first = aftermath.stories().get(0);
        assertThat(first.steps().get(0).part()).isEqualTo("F1");
        // three standard deviations of a share of 1/8 in 4000 draws are 0.0157
        assertThat((double) first.count() / machines).isCloseTo(7.0 / 8, within(0.016));
    }

    @Test
    void theSameSeedDrawsTheSameMachines() {
        Board board = new Given(
                List.of(coil(new Limit(80, 160, Harm.BURNS_OPEN, OPEN, "by hand"))),
                h -> watts(h.contains(OPEN) ? 0 : 50));
        Aftermath.Settings settings = new Aftermath.Settings(50, 3, 3600, 20, 40);

        Aftermath first = Aftermath.of(board, settings);

        assertThat(Aftermath.of(board, settings)).isEqualTo(first);
        assertThat(first.events().get(0).leastSeconds())
                .isLessThan(first.events().get(0).mostSeconds());
    }

    @Test
    void whatCannotBeSolvedEndsTheStoryAndSaysSo() {
        Board board = new Board() {
            @Override
            public List<Body> bodies() {
                return List.of(coil(at(125, Harm.BURNS_OPEN, OPEN)));
            }

            @Override
            public Solved<Loads> after(List<Fault> happened, Set<String> hot) {
                return happened.isEmpty()
                        ? new Solved.Found<>(watts(50))
                        : new Solved.Failed<>(
                                new NotSolved(NotSolved.Kind.NO_PERIODIC_STATE, List.of(), "no steady state"));
            }
        };

        assertThat(Aftermath.of(board, EXACT).stories()).extracting(Story::end).containsExactly(Story.End.UNKNOWN);
    }

    @Test
    void eachStateIsSolvedOnceHoweverManyMachinesComeToIt() {
        List<List<Fault>> asked = new ArrayList<>();
        Board board = new Given(List.of(coil(at(125, Harm.BURNS_OPEN, OPEN))), h -> {
            asked.add(List.copyOf(h));
            return watts(h.contains(OPEN) ? 0 : 50);
        });

        Aftermath.of(board, new Aftermath.Settings(40, 1, 3600, 25, 40));

        assertThat(asked).containsExactly(List.of(), List.of(OPEN));
    }

    @Test
    void damageWithinSomeTimeIsOnlyWhatIsLostByThen() {
        Board board = new Given(
                List.of(coil(at(125, Harm.WINDING_PAST_CLASS, null), at(175, Harm.BURNS_OPEN, OPEN))),
                h -> watts(h.contains(OPEN) ? 0 : 50));

        Aftermath aftermath = Aftermath.of(board, EXACT);

        // 150 K of 200 K: 100 s·ln 4 = 138.6 s
        assertThat(aftermath.damageWithin(138)).isEmpty();
        assertThat(aftermath.damageWithin(139)).extracting(Event::harm).containsExactly(Harm.BURNS_OPEN);
    }

    /** Of a hundred machines whose limits differ, the first to come to it is one in a hundred; the second makes one in fifty. */
    @Test
    void damageCountsWhenOneInFiftyHasComeToItByThen() {
        Limit spread = new Limit(125, 225, Harm.BURNS_OPEN, OPEN, "by hand");
        Board board = new Given(List.of(coil(spread)), h -> watts(h.contains(OPEN) ? 0 : 50));

        Aftermath aftermath = Aftermath.of(board, new Aftermath.Settings(100, 1, 3600, 25, 25));

        Event event = aftermath.events().get(0);
        double first = event.leastSeconds();
        double second = event.notedSeconds();
        assertThat(second).isGreaterThan(first);
        assertThat(aftermath.damageWithin((first + second) / 2)).isEmpty();
        assertThat(aftermath.damageWithin(second)).containsExactly(event);
    }

    /**
     * Four windings of 8 W, each 1 K/W to the core, and the core with 8 W of its own 1.5 K/W to the air: 8 + 1.5·40 = 68 K above the air. By
     * its own watts alone each would seem to stay at 8·2.5 = 20 K.
     */
    @Test
    void copperThatItsNeighboursWarmIsWarm() {
        ThermalNetwork network = new ThermalNetwork(
                List.of(new ThermalNetwork.Stage(1, 25, false), new ThermalNetwork.Stage(1.5, 1000, true)));
        List<String> places = List.of("primary", "a", "b", "c");
        List<Body> bodies = places.stream()
                .map(p -> new Body(
                        "T1",
                        p,
                        Nature.WINDING,
                        network,
                        new Body.Spread(1, 1),
                        List.of(at(500, Harm.BURNS_OPEN, OPEN))))
                .toList();
        Map<String, Double> watts = bodies.stream().collect(Collectors.toMap(Body::name, b -> 8.0));
        Set<String> warm = new TreeSet<>();
        Board board = new Board() {
            @Override
            public List<Body> bodies() {
                return bodies;
            }

            @Override
            public Solved<Loads> after(List<Fault> happened, Set<String> hot) {
                warm.addAll(hot);
                return new Solved.Found<>(new Loads(watts, Map.of("T1", 8.0), List.of()));
            }
        };

        Aftermath.of(board, EXACT);

        assertThat(warm).containsExactlyInAnyOrderElementsOf(watts.keySet());
    }
}
