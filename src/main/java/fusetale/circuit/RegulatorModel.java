package fusetale.circuit;

/**
 * A three-terminal series regulator.
 *
 * @param name the model's name in the part files
 * @param outputVolts regulated voltage
 * @param outputToleranceRatio its tolerance, ±
 * @param outputOhms differential output resistance in regulation
 * @param dropoutVolts what input must exceed output by
 * @param quiescentAmps current into the ground pin
 * @param limitAmps current limit
 * @param rippleRejectionRatio input ripple over output ripple, in regulation
 * @param ratings what it stands
 */
public record RegulatorModel(
        String name,
        double outputVolts,
        double outputToleranceRatio,
        double outputOhms,
        double dropoutVolts,
        double quiescentAmps,
        double limitAmps,
        double rippleRejectionRatio,
        Ratings ratings) {
    /** The same regulator with another output voltage. */
    public RegulatorModel withOutputVolts(double volts) {
        return new RegulatorModel(
                name,
                volts,
                outputToleranceRatio,
                outputOhms,
                dropoutVolts,
                quiescentAmps,
                limitAmps,
                rippleRejectionRatio,
                ratings);
    }
}
