package fusetale.aftermath;

import static fusetale.aftermath.FuseGate.holds;
import static fusetale.aftermath.FuseGate.melts;

import fusetale.circuit.FuseLink;
import java.util.ArrayList;
import java.util.List;

/**
 * The gates of the standards as data, by rising current.
 *
 * <p>IEC 60127-2: sheet 2 (quick-acting, low breaking capacity) and sheet 3 (time-lag, low breaking capacity); ratings from 8 A
 * up are the makers' extension of those sheets.
 *
 * <p>UL/CSA 248-14: carries 100 %, older sheets 110 % for 4 h; melts within 1 h at 135 % and within 2 min (above 30 A: 4 min)
 * at 200 %; a time-delay link holds 5 s (above 3 A: 12 s) at 200 %. It sets no shortest time elsewhere. What stands in for it
 * is a smallest melting I²t as a multiple of the rating squared, from makers' tables and rounded down: time-delay 5·In² s (5.6
 * to 19 over 0.25 to 4 A), quick 0.5·In² s (0.57 at 0.25 A), and 0.1·In² s for smaller ones (0.10 to 0.17 at 0.1 A).
 */
record FuseGates(List<FuseGate> gates, List<String> assumptions) {
    private static final double HOUR = 3600;

    /** Shorter than this [s] a link has no time to lose heat: melting I²t no longer depends on the current. */
    private static final double ADIABATIC_SECONDS = 0.010;

    /** Copies the lists. */
    FuseGates {
        gates = List.copyOf(gates);
        assumptions = List.copyOf(assumptions);
    }

    static FuseGates of(FuseLink link) {
        double amps = link.ratedAmps().si();
        boolean slow = link.speed() == FuseLink.Speed.SLOW;
        return switch (link.standard()) {
            case IEC_60127 -> slow ? sheet3(amps) : sheet2(amps);
            case UL_248_14 -> ul(amps, slow);
        };
    }

    private static FuseGates sheet2(double amps) {
        List<String> notes = new ArrayList<>();
        notes.add("gates of IEC 60127-2 sheet 2 (quick-acting)");
        notes.add("shortest times above 4 times the rating by constant I²t");
        List<FuseGate> gates;
        if (amps <= 0.1) {
            gates = List.of(
                    holds(1.5, HOUR),
                    melts(2.1, HOUR / 2),
                    new FuseGate(2.75, 0.010, 0.5),
                    new FuseGate(4, 0.003, 0.1),
                    melts(10, 0.020));
        } else if (amps <= 6.3) {
            gates = List.of(
                    holds(1.5, HOUR),
                    melts(2.1, HOUR / 2),
                    new FuseGate(2.75, 0.050, 2),
                    new FuseGate(4, 0.010, 0.3),
                    melts(10, 0.020));
        } else {
            notes.add(beyond(amps, 10, "above 6.3 A a maker's extension of the sheet"));
            gates = List.of(
                    holds(1.5, HOUR / 2),
                    melts(2.1, HOUR / 2),
                    new FuseGate(2.75, 0.050, 2),
                    new FuseGate(4, 0.010, 0.4),
                    melts(10, 0.040));
        }
        return new FuseGates(gates, notes);
    }

    private static FuseGates sheet3(double amps) {
        List<String> notes = new ArrayList<>();
        notes.add("gates of IEC 60127-2 sheet 3 (time-lag)");
        List<FuseGate> gates;
        if (amps <= 0.1) {
            gates = List.of(
                    holds(1.5, HOUR),
                    melts(2.1, 120),
                    new FuseGate(2.75, 0.2, 10),
                    new FuseGate(4, 0.040, 3),
                    new FuseGate(10, 0.010, 0.3));
        } else {
            if (amps > 6.3) {
                notes.add(beyond(amps, 16, "above 6.3 A a maker's extension of the sheet"));
            }
            gates = List.of(
                    holds(1.5, amps > 6.3 ? HOUR / 2 : HOUR),
                    melts(2.1, 120),
                    new FuseGate(2.75, 0.6, 10),
                    new FuseGate(4, 0.150, 3),
                    new FuseGate(10, 0.020, 0.3));
        }
        return new FuseGates(gates, notes);
    }

    private static String beyond(double amps, double last, String otherwise) {
        return amps > last
                ? "no link of this standard is listed above " + last + " A: taken as at " + last + " A"
                : otherwise;
    }

    private static FuseGates ul(double amps, boolean slow) {
        List<String> notes = new ArrayList<>();
        notes.add("gates of UL/CSA 248-14, " + (slow ? "time-delay" : "quick"));
        notes.add("longest times above twice the rating by constant I²t");
        List<FuseGate> gates = new ArrayList<>();
        gates.add(holds(1.10, 4 * HOUR));
        double smallest = slow ? 5 : amps < 0.25 ? 0.1 : 0.5; // I²t over In² [s]
        if (!slow) {
            // nothing is promised from here on: straight down to what the wire needs to melt
            gates.add(new FuseGate(1.10, smallest / (1.10 * 1.10), Double.POSITIVE_INFINITY));
        }
        gates.add(melts(1.35, HOUR));
        double longest = amps > 30 ? 240 : 120;
        if (slow) {
            gates.add(new FuseGate(2, amps > 3 ? 12 : 5, longest));
            gates.add(holds(Math.sqrt(smallest / ADIABATIC_SECONDS), ADIABATIC_SECONDS));
        } else {
            gates.add(melts(2, longest));
        }
        notes.add("shortest times "
                + (slow ? "above twice the rating " : "")
                + "from makers' melting I²t, not from the standard, which sets none");
        if (amps > 60) {
            notes.add("no link of this standard is listed above 60 A: taken as at 60 A");
        }
        return new FuseGates(gates, notes);
    }
}
