package fusetale.desk.help;

/** Something on the screen that says in words what it shows, so that {@code ?} can explain them where it stands. */
public interface Explained {
    /** Its words: what the meter is set to, the failure, the sign it bears. */
    String words();
}
