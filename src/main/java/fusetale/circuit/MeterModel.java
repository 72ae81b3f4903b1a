package fusetale.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A multimeter as its sheet describes it.
 *
 * @param name what to call it
 * @param display how it shows a figure
 * @param autoRange whether it picks its ranges by itself
 * @param alternating what it makes of a.c. volts
 * @param directVolts d.c. volts
 * @param alternatingVolts a.c. volts
 * @param ohms ohms
 * @param diodeTest the diode test; null where it has none
 * @param continuity the buzzer; null where it has none
 * @param directAmps ranges of d.c. amperes, rising; empty where it has none
 * @param leadOhms both test leads together
 * @param sources where each figure is from
 */
public record MeterModel(
        String name,
        Display display,
        boolean autoRange,
        Alternating alternating,
        Volts directVolts,
        Volts alternatingVolts,
        Ohms ohms,
        @Nullable DiodeTest diodeTest,
        @Nullable Continuity continuity,
        List<AmpsRange> directAmps,
        double leadOhms,
        List<String> sources) {
    /** Copies the lists. */
    public MeterModel {
        directAmps = List.copyOf(directAmps);
        sources = List.copyOf(sources);
    }

    /** How a figure is shown. */
    public enum Display {
        /** By figures. */
        DIGITAL,
        /** By a needle before scales. */
        ANALOGUE
    }

    /** What a.c. volts are made of; each shows a sine's r.m.s. value. */
    public enum Detector {
        /** True r.m.s. */
        TRUE_RMS,
        /** Rectified mean of both halves of the wave, times π/(2√2). */
        AVERAGE_RESPONDING,
        /** Mean of the positive half alone, times π/√2. */
        HALF_WAVE
    }

    /**
     * The a.c. function.
     *
     * @param detector what it makes of the wave
     * @param coupled whether a capacitor keeps steady voltage out
     */
    public record Alternating(Detector detector, boolean coupled) {}

    /**
     * A function of volts.
     *
     * @param input what it loads the circuit with
     * @param ranges rising
     */
    public record Volts(Input input, List<Range> ranges) {
        /** Copies the list. */
        public Volts {
            ranges = List.copyOf(ranges);
        }
    }

    /**
     * Input resistance: one part that is always there and one that grows with the range's full scale.
     *
     * @param fixedOhms the same on every range
     * @param perVoltOhms per volt of full scale
     */
    public record Input(double fixedOhms, double perVoltOhms) {
        /** On a range of so many volts. */
        public double ohms(double fullScaleVolts) {
            return fixedOhms + perVoltOhms * fullScaleVolts;
        }
    }

    /**
     * One range and its accuracy, ±(share of reading + share of full scale + counts).
     *
     * @param fullScaleSi most it shows
     * @param resolutionSi last digit, or what an eye reads between two marks
     * @param readingRatio share of the reading in the accuracy
     * @param fullScaleRatio share of full scale in the accuracy
     * @param counts counts of the last digit in the accuracy
     */
    public record Range(
            double fullScaleSi, double resolutionSi, double readingRatio, double fullScaleRatio, int counts) {}

    /**
     * The ohms function.
     *
     * @param ranges rising
     * @param redPositive whether the red lead is the positive one
     * @param standsVolts voltage between the leads that it survives
     */
    public record Ohms(List<OhmsRange> ranges, boolean redPositive, double standsVolts) {
        /** Copies the list. */
        public Ohms {
            ranges = List.copyOf(ranges);
        }
    }

    /**
     * One range of ohms. On a scale before a needle the accuracy's share of full scale and the resolution, divided by full
     * scale, are shares of the arc; the middle of the arc is {@code openVolts/shortAmps}.
     *
     * @param display range and accuracy
     * @param openVolts voltage of the open leads
     * @param shortAmps current through shorted leads
     */
    public record OhmsRange(Range display, double openVolts, double shortAmps) {}

    /**
     * The diode test.
     *
     * @param display range and accuracy
     * @param openVolts voltage of the open leads
     * @param shortAmps current through shorted leads
     */
    public record DiodeTest(Range display, double openVolts, double shortAmps) {}

    /**
     * The buzzer.
     *
     * @param belowOhms it sounds below this
     * @param openVolts voltage of the open leads
     * @param shortAmps current through shorted leads
     */
    public record Continuity(double belowOhms, double openVolts, double shortAmps) {}

    /**
     * One range of amperes.
     *
     * @param display range and accuracy
     * @param burdenOhms shunt and the meter's own fuse
     */
    public record AmpsRange(Range display, double burdenOhms) {}

    /** The same with another a.c. function. */
    public MeterModel with(Alternating other) {
        return new MeterModel(
                name,
                display,
                autoRange,
                other,
                directVolts,
                alternatingVolts,
                ohms,
                diodeTest,
                continuity,
                directAmps,
                leadOhms,
                sources);
    }
}
