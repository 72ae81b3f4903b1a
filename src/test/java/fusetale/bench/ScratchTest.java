package fusetale.bench;

import fusetale.circuit.*;
import fusetale.mna.*;
import java.nio.file.Path;
import java.util.*;
import org.junit.jupiter.api.Test;

class ScratchTest {
    static Circuit load(String n) {
        var f = CircuitReader.withShippedParts().read(Path.of("circuits/" + n + ".yaml"));
        return Objects.requireNonNull(f.circuit());
    }

    @Test
    void run() throws Exception {
        Circuit c = load("night-ferry");
        for (BenchSetting s : c.settings().subList(0, 1)) {
            Arrangement a = Arrangement.of(c, s);
            Bench b = Bench.of(c, a, Meter.trueRms4000());
            long ports = b.modelled().network().elements().stream()
                    .filter(e -> e instanceof Element.Ported)
                    .mapToLong(e -> ((Element.Ported) e).ports().size())
                    .sum();
            System.out.println("== " + s.name() + " nodes "
                    + b.modelled().network().nodes().size() + " elements "
                    + b.modelled().network().elements().size() + " flaws " + b.flaws() + " ports " + ports);
            Seen near = null;
            for (int k = 0; k < 1; k++) {
                long t0 = System.nanoTime();
                long end = t0 + 60_000_000_000L;
                Solved<Seen> r;
                try {
                    r = b.look(List.of(), near, () -> System.nanoTime() > end);
                } catch (IllegalStateException e) {
                    System.out.println(e);
                    break;
                }
                System.out.println("  ms " + (System.nanoTime() - t0) / 1e6 + " "
                        + (r instanceof Solved.Found<Seen> f ? f.value().work() : r));
                near = r instanceof Solved.Found<Seen> f ? f.value() : null;
            }
            if (near == null) {
                continue;
            }
            for (Check x : Check.all(c, a.powerOn())) {
                long t0 = System.nanoTime();
                long end = t0 + 20_000_000_000L;
                Solved<Seen> r;
                try {
                    r = b.look(List.of(x), near, () -> System.nanoTime() > end);
                } catch (IllegalStateException e) {
                    System.out.println(e);
                    continue;
                }
                System.out.println("  ms " + (System.nanoTime() - t0) / 1e6 + " "
                        + (r instanceof Solved.Found<Seen> f
                                ? f.value().readings() + " " + f.value().remarks()
                                : r));
            }
        }
    }
}
