package fusetale.fault;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How often a failure happens: a rate of the part times the share that this failure takes of it.
 *
 * @param rateRatio failures of the part in 10⁶ hours of a machine of that age; only ratios mean something
 * @param shareRatio how much of that is this failure
 * @param rateKey text that says where the rate is from
 * @param shareKey text that says where the share is from; empty until the part's kind is known
 */
public record Prior(double rateRatio, double shareRatio, String rateKey, String shareKey) {
    /** Text of a share that stands in no handbook. */
    static final String JUDGEMENT = "share.judgement";

    private static final MathContext THREE_DIGITS = new MathContext(3);

    /** Relative weight: rate times share. */
    public double ratio() {
        return rateRatio * shareRatio;
    }

    /** Where both are from, as a line to read. */
    public String source() {
        return Texts.say("prior", figure(rateRatio), Texts.say(rateKey), figure(shareRatio), Texts.say(shareKey));
    }

    /** The same as a failure of a kind: a share that is not judged is from the kind's source. */
    Prior within(String kind, FailureMode mode) {
        return shareKey.isEmpty()
                ? new Prior(
                        rateRatio,
                        shareRatio,
                        rateKey,
                        Texts.first("", "share." + Texts.key(kind) + "." + mode.compact(), "share." + Texts.key(kind)))
                : this;
    }

    private static String figure(double value) {
        return new BigDecimal(value).round(THREE_DIGITS).stripTrailingZeros().toPlainString();
    }
}
