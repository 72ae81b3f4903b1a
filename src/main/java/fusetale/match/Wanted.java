package fusetale.match;

/**
 * An ask with the keys under which what it shows is kept.
 *
 * @param bench of its arrangement
 * @param sight of what is looked at; empty for a reading
 */
record Wanted(Ask ask, String bench, String sight) {
    static Wanted of(Ask ask) {
        String sight = ask instanceof Ask.Noticed n ? Trial.Shows.key(n.part(), n.aspect()) : "";
        return new Wanted(ask, Dictionary.key(ask.arrangement()), sight);
    }
}
