package fusetale.match;

/**
 * One reading or observation.
 *
 * @param ask what was asked
 * @param shown what came
 * @param note a remark; may be empty
 */
public record Evidence(Ask ask, Shown shown, String note) {
    /** Without a remark. */
    public Evidence(Ask ask, Shown shown) {
        this(ask, shown, "");
    }
}
