package fusetale.explore;

/** Told how far a longer piece of work has come; may be called from any thread. */
@FunctionalInterface
public interface Progress {
    /** Tells nobody. */
    Progress SILENT = (done, of) -> {};

    /**
     * Called whenever a piece is done.
     *
     * @param done pieces done
     * @param of pieces in all
     */
    void at(int done, int of);
}
