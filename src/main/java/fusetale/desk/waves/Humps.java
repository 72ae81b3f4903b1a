package fusetale.desk.waves;

import fusetale.signal.Waveform;

/** How often a waveform goes up and down again in its cycle. */
final class Humps {
    /** A hump stands out by this part of the whole height, or it is a wrinkle. */
    private static final double LEAST_SHARE = 0.1;

    private Humps() {}

    /** Humps in one cycle that repeats; 0 of what never changes. */
    static int in(Waveform wave) {
        double height = wave.peakToPeak();
        double least = LEAST_SHARE * height;
        int size = wave.size();
        if (!(height > 0)) {
            return 0;
        }
        int lowest = 0;
        for (int k = 1; k < size; k++) {
            lowest = wave.value(k) < wave.value(lowest) ? k : lowest;
        }
        int humps = 0;
        boolean rising = false;
        double turn = wave.value(lowest);
        // once round, from the lowest sample back to it
        for (int k = 1; k <= size; k++) {
            double value = wave.value((lowest + k) % size);
            if (rising) {
                turn = Math.max(turn, value);
                if (value < turn - least) {
                    humps++;
                    rising = false;
                    turn = value;
                }
            } else {
                turn = Math.min(turn, value);
                if (value > turn + least) {
                    rising = true;
                    turn = value;
                }
            }
        }
        return humps;
    }
}
