package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Reading;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.explore.Foretelling;
import fusetale.explore.Foretold;
import fusetale.explore.Specimen;
import fusetale.fault.Supposition;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts that were not worked out, since the next ones below and above read alike, against what is worked out of them. */
class BorrowedTest {
    /** Share of a reading, beside the meter's accuracy, by which an amount between may differ from both. */
    private static final double NEARLY = 0.01;

    private static final Meter METER = Meter.trueRms4000();

    @ParameterizedTest
    @CsvSource({"first-light, true, 1", "first-light, false, 1", "fog-bell, true, 5"})
    void amountsBetweenReadLikeTheirNeighbours(String name, boolean powered, int oneIn) throws Exception {
        Circuit circuit = Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits/" + name + ".yaml"))
                .circuit());
        Workbench bench = new Workbench(circuit, METER, 2, 2, 1, someOf(Hypotheses.of(circuit), oneIn));
        Arrangement arrangement = powered ? bench.dictionary().asFound() : Arrangement.unpowered();
        List<Check> checks = powered ? bench.asks().powerOn() : Check.all(circuit, /* powered= */ false);
        Case nothing = Case.of(Findings.of(List.of()));
        bench.prepare(nothing, () -> false);
        bench.dictionary().prepare(arrangement, checks, () -> false);
        bench.work(bench.boards().all(), List.of(arrangement), nothing, () -> false);

        Foretelling foretelling = Foretelling.of(Specimen.nominal(circuit), arrangement, METER, checks, () -> false);
        List<Boards.Board> borrowed = borrowed(bench, Dictionary.key(arrangement));
        assertThat(borrowed).isNotEmpty();
        for (Boards.Board board : borrowed) {
            Trial.Shows told =
                    bench.trial(board).in(Dictionary.key(arrangement)).orElseThrow();
            Trial trial = bench.trial(board);
            // once it has been on, what blew then stands on the bench
            Supposition now = powered ? trial.supposition() : trial.after(trial.blown(key(bench)));
            Foretold whole = foretelling.under(now, () -> false).orElseThrow();
            assertThat(whole.melted()).as("%s", board.supposition()).isEqualTo(told.melted());
            for (Reading reading : whole.readings()) {
                Reading here = Objects.requireNonNull(told.readings().get(reading.check()));
                boolean alike = here.overRange() == reading.overRange()
                        && (here.overRange()
                                || Math.abs(here.value() - reading.value())
                                        <= reading.halfWidth() + NEARLY * Math.abs(reading.value()));
                assertThat(alike)
                        .as(
                                "%s, %s: %s, worked out %s",
                                board.supposition(), reading.check().words(), here.shows(), reading.shows())
                        .isTrue();
            }
        }
    }

    /** The first, which is that nothing is wrong, and one in so many of the others. */
    private static List<Hypothesis> someOf(List<Hypothesis> all, int oneIn) {
        return IntStream.range(0, all.size())
                .filter(k -> k % oneIn == 0)
                .mapToObj(all::get)
                .toList();
    }

    private static String key(Workbench bench) {
        return Dictionary.key(bench.dictionary().asFound());
    }

    /** Those that show to the last bit what the next lower amount shows, though they are another amount. */
    private static List<Boards.Board> borrowed(Workbench bench, String key) {
        List<Boards.Board> all = new ArrayList<>();
        for (Boards.Board board : bench.boards().all()) {
            if (board.between()) {
                Boards.Board below = bench.boards().of(board.hypothesis()).get(board.place() - 1);
                if (bench.trial(board).in(key).equals(bench.trial(below).in(key))) {
                    all.add(board);
                }
            }
        }
        return all;
    }
}
