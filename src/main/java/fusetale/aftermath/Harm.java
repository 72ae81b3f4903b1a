package fusetale.aftermath;

/** What can happen to a part that is left to it. */
public enum Harm {
    /** A fuse does its work. */
    FUSE_MELTS("melts", Gravity.RELIEF),
    /** Still works; lives shorter. */
    JUNCTION_PAST_RATING("passes its rated junction temperature", Gravity.WARNING),
    /** Silicon is lost, and stays a short. */
    FAILS_SHORT("overheats and fails short", Gravity.DAMAGE),
    /** More in one half-cycle than a junction stands. */
    SURGE("is shorted by the surge", Gravity.DAMAGE),
    /** A regulator that looks after itself. */
    SHUTS_DOWN("shuts itself down when hot and comes back: its rail comes and goes", Gravity.WARNING),
    /** Smells; ages in hours instead of years. */
    WINDING_PAST_CLASS("passes the class of its insulation: it smells", Gravity.WARNING),
    /** Enamel softens, turns touch. */
    TURNS_SHORT("burns through its insulation: turns short", Gravity.DAMAGE),
    /** Copper, solder or a lead parts. */
    BURNS_OPEN("burns open", Gravity.DAMAGE),
    /** Browns the board under it. */
    RESISTOR_PAST_RATING("passes its rated temperature: it browns the board", Gravity.WARNING),
    /** Film or wire parts. */
    RESISTOR_OPENS("burns open", Gravity.DAMAGE),
    /** Plastic of a connector. */
    HOUSING_SOFTENS("gets hotter than its housing stands", Gravity.WARNING),
    /** Contact spring and plating are gone. */
    CONTACT_BURNS("burns: a resistance from now on", Gravity.DAMAGE),
    /** Bronze loses its spring. */
    CLIP_TIRES("gets so hot that its clips lose their spring", Gravity.WARNING),
    /** Solder that holds clips on a board. */
    CLIP_UNSOLDERS("gets so hot that its clips unsolder themselves", Gravity.DAMAGE),
    /** Plastic round a wire. */
    WIRE_PAST_CLASS("gets hotter than its insulation stands", Gravity.WARNING),
    /** Copper melts. */
    WIRE_MELTS("melts", Gravity.DAMAGE),
    /** Filament. */
    LAMP_BURNS_OUT("burns out", Gravity.DAMAGE),
    /** Electrolyte boils off. */
    VENTS("vents: electrolyte sprays out", Gravity.DAMAGE),
    /** Nothing left. */
    BATTERY_EMPTIES("is empty", Gravity.WARNING),
    /** Charged beyond full, or not made to be charged. */
    BATTERY_OVERCHARGED("is charged beyond what it stands: it leaks or bursts", Gravity.DAMAGE);

    /** How grave. */
    public enum Gravity {
        /** Ends what goes wrong. */
        RELIEF,
        /** Past a rating; still there. */
        WARNING,
        /** Lost. */
        DAMAGE
    }

    private final String words;
    private final Gravity gravity;

    Harm(String words, Gravity gravity) {
        this.words = words;
        this.gravity = gravity;
    }

    /** What is said after the part's name. */
    public String words() {
        return words;
    }

    /** How grave it is. */
    public Gravity gravity() {
        return gravity;
    }
}
