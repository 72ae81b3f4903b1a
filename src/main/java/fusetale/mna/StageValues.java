package fusetale.mna;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The numbers one implicit stage works on, shared by those who work on it: {@link PortStage}, {@link Sleepers}, {@link
 * AwakePorts} and {@link StageSlopes}. Made once for a layout and used again for every stage, so that stepping allocates
 * nothing; one thread.
 */
final class StageValues {
    final Layout layout;
    /** Index of the first port among the inputs of a reduction. */
    final int firstPortInput;
    /** By device. */
    final PortLaw[] laws;

    final int[] firstPort;
    final int[] firstState;
    /** Where each device's law was evaluated last, and what came out. */
    final PortPoint[] points;
    /** Port voltages [V]. */
    final double[] volts;
    /** Port currents [A]. */
    final double[] amps;
    /** Outputs of the reduction: states, then voltages of the ports without a state. */
    final double[] out;
    /** x*, u, i: what the reduction is multiplied with. */
    final double[] input;
    /** Predicted own states of the devices before the stage. */
    final double[] ownStart;
    /** Their own states after it. */
    final double[] ownEnd;
    /** By port: its device. */
    final int[] deviceOf;
    /** Devices with states of their own. */
    final int[] stateful;
    /** End of the stage [s], and how long it is [s], infinite at rest. */
    double seconds;

    double stepSeconds;

    StageValues(Layout layout) {
        this.layout = layout;
        this.firstPortInput = layout.states + layout.sources.size();
        int devices = layout.devices.size();
        this.laws = new PortLaw[devices];
        this.firstPort = new int[devices];
        this.firstState = new int[devices];
        this.points = new PortPoint[devices];
        for (int d = 0; d < devices; d++) {
            Layout.Device device = layout.devices.get(d);
            laws[d] = device.law();
            firstPort[d] = device.firstPort();
            firstState[d] = device.firstState();
            points[d] = new PortPoint(laws[d].ports(), laws[d].states());
        }
        this.volts = new double[layout.ports];
        this.amps = new double[layout.ports];
        this.out = new double[layout.states + layout.ports];
        this.input = new double[firstPortInput + layout.ports];
        this.ownStart = new double[layout.deviceStates];
        this.ownEnd = new double[layout.deviceStates];
        this.deviceOf = new int[layout.ports];
        for (int d = 0; d < devices; d++) {
            Arrays.fill(deviceOf, firstPort[d], firstPort[d] + laws[d].ports(), d);
        }
        this.stateful =
                IntStream.range(0, devices).filter(d -> laws[d].states() > 0).toArray();
    }

    /** Evaluates a device's law at the present port voltages and predicted states. */
    void evaluate(int d) {
        PortPoint at = points[d];
        int first = firstPort[d];
        at.seconds = seconds;
        at.stepSeconds = stepSeconds;
        for (int k = 0; k < at.start.length; k++) {
            at.start[k] = ownStart[firstState[d] + k];
        }
        for (int k = 0; k < at.volts.length; k++) {
            at.volts[k] = volts[first + k];
        }
        laws[d].evaluate(at);
    }

    /** Largest slope of a device times the resistance its own port sees. */
    double slopeRatio(Reduction reduction, int d) {
        PortPoint at = points[d];
        int n = at.amps.length;
        if (n == 1) {
            return Math.abs(at.siemens[0] * reduction.ownOhms[firstPort[d]]);
        }
        double most = 0;
        for (int k = 0; k < n; k++) {
            double row = 0;
            for (int j = 0; j < n; j++) {
                row = Math.max(row, Math.abs(at.siemens[k * n + j]));
            }
            most = Math.max(most, row * Math.abs(reduction.ownOhms[firstPort[d] + k]));
        }
        return most;
    }
}
