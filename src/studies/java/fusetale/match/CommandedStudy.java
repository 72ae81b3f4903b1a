package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.explore.Commanded;
import fusetale.explore.Foretelling;
import fusetale.explore.Foretold;
import fusetale.explore.Specimen;
import fusetale.fault.Supposition;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How much of what coils and lamps do when commanded is told without solving, and how often that is wrong: every supposition in
 * the middle of its amount, under every command, told and solved beside each other.
 *
 * <pre>CommandedStudy CIRCUIT.yaml EVERY</pre>
 */
public final class CommandedStudy {
    private CommandedStudy() {}

    /** Runs; EVERY 1 takes all suppositions, 10 each tenth. */
    public static void main(String[] args) throws Exception {
        Circuit circuit = Objects.requireNonNull(
                CircuitReader.withShippedParts().read(Path.of(args[0])).circuit());
        int every = Integer.parseInt(args[1]);
        Meter meter = Meter.trueRms4000();
        Workbench bench = new Workbench(circuit, meter, 2, 2, 1, Hypotheses.of(circuit));
        Case nothing = Case.of(Findings.NONE);
        bench.prepare(nothing, () -> false);
        List<Boards.Board> all = bench.boards().all().stream()
                .filter(Boards.Board::middle)
                .filter(b -> b.hypothesis() % every == 0)
                .toList();
        bench.work(all, List.of(), nothing, () -> false);
        String asFound = Dictionary.key(bench.dictionary().asFound());
        Foretelling plain =
                Foretelling.of(Specimen.nominal(circuit), bench.dictionary().asFound(), meter, List.of(), () -> false);
        Foretold built = bench.dictionary().healthy().in(asFound).orElseThrow().foretold();
        Map<String, Foretelling> solving = new LinkedHashMap<>();
        Map<String, Commanded> telling = new LinkedHashMap<>();
        for (Map.Entry<String, Arrangement> command : Intake.commands(circuit).entrySet()) {
            Foretelling f =
                    Foretelling.of(Specimen.nominal(circuit), command.getValue(), meter, List.of(), () -> false);
            solving.put(command.getKey(), f);
            telling.put(command.getKey(), Commanded.of(plain, built, f).orElseThrow());
        }
        int untouched = 0;
        int together = 0;
        int twin = 0;
        int solved = 0;
        int wrong = 0;
        for (Boards.Board board : all) {
            Trial.Shows found = bench.trial(board).in(asFound).orElse(Trial.Shows.UNSOLVED);
            Supposition now = bench.trial(board).after(bench.trial(board).blown(asFound));
            Map<String, Foretold> shown = new LinkedHashMap<>();
            for (String driven : solving.keySet()) {
                Foretold whole = solving.get(driven).under(now, () -> false).orElse(null);
                if (whole == null) {
                    continue;
                }
                Commanded command = Objects.requireNonNull(telling.get(driven));
                Optional<Foretold> told = whole.untouched() ? Optional.of(whole) : command.under(now, found.foretold());
                untouched += whole.untouched() ? 1 : 0;
                together += !whole.untouched() && told.isPresent() ? 1 : 0;
                if (told.isEmpty()) {
                    told = likeTwin(command, now, found, shown, telling);
                    twin += told.isPresent() ? 1 : 0;
                    solved += told.isPresent() ? 0 : 1;
                }
                shown.put(driven, whole);
                if (told.isPresent() && sight(told.get(), driven) != sight(whole, driven)) {
                    wrong++;
                    System.out.printf(
                            "%s, %s commanded: told %s, solved %s%n",
                            board.supposition(), driven, sight(told.get(), driven), sight(whole, driven));
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s, %d suppositions, %d commands: %d untouched, %d put together, %d by twins, %d to solve; told wrongly %d%n",
                circuit.name(),
                all.size(),
                solving.size(),
                untouched,
                together,
                twin,
                solved,
                wrong);
    }

    private static Optional<Foretold> likeTwin(
            Commanded command,
            Supposition now,
            Trial.Shows found,
            Map<String, Foretold> shown,
            Map<String, Commanded> telling) {
        List<String> known = new ArrayList<>(shown.keySet());
        return known.stream()
                .flatMap(d -> command
                        .like(
                                now,
                                found.foretold(),
                                Objects.requireNonNull(telling.get(d)),
                                Objects.requireNonNull(shown.get(d)))
                        .stream())
                .findFirst();
    }

    private static Observation.Sight sight(Foretold foretold, String part) {
        return foretold.observations().stream()
                .filter(o -> o.part().equals(part) && o.sight().aspect() != Observation.Aspect.HEAT)
                .findFirst()
                .orElseThrow()
                .sight();
    }
}
