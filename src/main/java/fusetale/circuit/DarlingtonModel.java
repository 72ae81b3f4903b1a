package fusetale.circuit;

/**
 * Two transistors in one case with their base-emitter resistors and the diode across the output.
 *
 * @param name the model's name in the part files
 * @param first the transistor whose base is brought out
 * @param second the output transistor
 * @param firstShuntOhms base to emitter of the first
 * @param secondShuntOhms base to emitter of the second
 * @param across diode from emitter to collector
 * @param ratings what the whole stands
 */
public record DarlingtonModel(
        String name,
        TransistorModel first,
        TransistorModel second,
        double firstShuntOhms,
        double secondShuntOhms,
        DiodeModel across,
        Ratings ratings) {}
