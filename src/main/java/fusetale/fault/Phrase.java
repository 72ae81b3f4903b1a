package fusetale.fault;

/**
 * How a sentence says a failure, behind the part's name.
 *
 * @param plain without an amount: {@code is dried out}
 * @param measured with {@code {}} where the amount stands: {@code is dried out to {} left}
 */
public record Phrase(String plain, String measured) {}
