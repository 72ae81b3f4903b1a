package fusetale.mna;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Where the ports of the next stage are to be expected: where they were at the same stage of the last cycle over the same
 * steps, moved by what has changed since; or, where no such cycle is known, where the last two stages lead. Only speed
 * depends on it. One thread.
 */
final class Foresight {
    private final int ports;
    /** The last two stages solved. */
    private final double[] lastVolts;

    private final double[] earlierVolts;
    private double lastSeconds;
    private double earlierSeconds;
    private int stagesKnown;

    /** Port voltages [V] of every stage of the cycle under way; of the one before from the present stage on. */
    private float[] volts = new float[0];
    /** Where the cycle before is read from: {@link #volts}, or what a neighbour has kept and nobody writes to. */
    private float[] known = new float[0];
    /** The steps that {@link #known} is of; null where nothing is. */
    private @Nullable Mesh knownMesh;
    /** What the last stage differed by from the same one of the cycle before [V]. */
    private final double[] shift;

    private boolean follows;
    private boolean keeps;
    private int stage;

    Foresight(int ports) {
        this.ports = ports;
        this.lastVolts = new double[ports];
        this.earlierVolts = new double[ports];
        this.shift = new double[ports];
    }

    /** Forgets all: an answer must not depend on what was solved before. */
    void forget() {
        stagesKnown = 0;
        knownMesh = null;
        follows = false;
        keeps = false;
    }

    /** The next stage does not follow from the last ones. */
    void breakOff() {
        stagesKnown = 0;
    }

    /** Starts from the cycle that a neighbour took over some steps. {@code cycle}: Not modified. */
    void startFrom(Mesh mesh, float[] cycle) {
        known = cycle;
        knownMesh = mesh;
    }

    /** A cycle over some steps begins. */
    void begin(Mesh mesh) {
        int size = 2 * mesh.size() * ports;
        follows = knownMesh == mesh;
        if (volts.length < size) {
            volts = new float[size];
        }
        keeps = true;
        knownMesh = null;
        stage = 0;
        Arrays.fill(shift, 0);
    }

    /** It was completed. */
    void end(Mesh mesh) {
        known = volts;
        knownMesh = mesh;
        keeps = false;
        follows = false;
    }

    /** A copy of the last cycle's voltages, for {@link #startFrom}; empty where none was completed over these steps. */
    float[] cycle(Mesh mesh) {
        return knownMesh == mesh ? Arrays.copyOf(known, 2 * mesh.size() * ports) : new float[0];
    }

    /** Whether anything is to be expected of a stage at this time [s]. */
    boolean sees(double seconds) {
        return follows || (stagesKnown == 2 && seconds > lastSeconds);
    }

    /**
     * Where a device's ports are to be expected, as far as its law lets a step go.
     *
     * @param at its {@code proposed} gets the voltages. Modified.
     * @param present port voltages now. Not modified.
     */
    void expect(PortLaw law, PortPoint at, int firstPort, double seconds, double[] present) {
        int n = at.proposed.length;
        if (follows) {
            int from = stage * ports + firstPort;
            for (int k = 0; k < n; k++) {
                at.present[k] = known[from + k];
                at.proposed[k] = known[from + k] + shift[firstPort + k];
            }
        } else {
            double part = (seconds - lastSeconds) / (lastSeconds - earlierSeconds);
            for (int k = 0; k < n; k++) {
                double now = present[firstPort + k];
                at.present[k] = now;
                at.proposed[k] = now + part * (now - earlierVolts[firstPort + k]);
            }
        }
        law.limit(at.present, at.proposed);
    }

    /** A stage was solved. {@code now}: port voltages; not modified. */
    void remember(double seconds, double[] now) {
        if (keeps) {
            int from = stage * ports;
            for (int p = 0; p < ports; p++) {
                if (follows) {
                    shift[p] = now[p] - known[from + p];
                }
                volts[from + p] = (float) now[p];
            }
            stage++;
        }
        if (stagesKnown > 0 && !(seconds > lastSeconds)) {
            stagesKnown = 0;
        }
        System.arraycopy(lastVolts, 0, earlierVolts, 0, ports);
        System.arraycopy(now, 0, lastVolts, 0, ports);
        earlierSeconds = lastSeconds;
        lastSeconds = seconds;
        stagesKnown = Math.min(2, stagesKnown + 1);
    }
}
