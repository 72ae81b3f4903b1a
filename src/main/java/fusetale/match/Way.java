package fusetale.match;

/**
 * How the fuses of a board have come out, where that is not certain. A new fuse in the same place is in doubt like the one
 * before it: it may hold though that one has melted.
 */
enum Way {
    /** As they were taken to: a fuse that may melt has held. */
    AS_TAKEN,
    /** As found the other way, {@link Workbench#blownOtherwise}; what was new since as it was taken to. */
    OTHERWISE,
    /** The other way as found and once more with what was new since. */
    OTHERWISE_AGAIN
}
