package fusetale.seeded.explore;

/** Stands for the service that solves. */
public final class Explorer {}
