package fusetale.circuit;

import org.jspecify.annotations.Nullable;

/**
 * An operational amplifier. Offset, bias current, slew rate and current limit are not part of it.
 *
 * @param name the model's name in the part files
 * @param gainRatio open-loop gain at d.c.
 * @param inputOhms differential input resistance
 * @param outputOhms open-loop output resistance
 * @param headroomVolts how far from either rail the output stops
 * @param unityGainHertz frequency at which the gain has fallen to 1; null for a gain that does not fall
 */
public record OpAmpModel(
        String name,
        double gainRatio,
        double inputOhms,
        double outputOhms,
        double headroomVolts,
        @Nullable Double unityGainHertz) {
    /** The same with so much of its gain left; what is left is there at all frequencies. */
    public OpAmpModel withGainLeft(double ratio) {
        Double hertz = unityGainHertz;
        return new OpAmpModel(
                name,
                gainRatio * ratio,
                inputOhms,
                outputOhms,
                headroomVolts,
                hertz == null ? null : Double.valueOf(hertz * ratio));
    }
}
