package fusetale.aftermath;

/** What can happen to a part that is left to it. */
public enum Harm {
    /** A fuse does its work. */
    FUSE_MELTS("melts", Gravity.RELIEF),
    /** Still works; lives shorter. */
    JUNCTION_PAST_RATING("past the rated junction temperature", Gravity.WARNING),
    /** Silicon is lost, and stays a short. */
    FAILS_SHORT("too hot, shorted from now on", Gravity.DAMAGE),
    /** More in one half-cycle than a junction stands. */
    SURGE("shorted by the surge", Gravity.DAMAGE),
    /** A regulator that looks after itself. */
    SHUTS_DOWN("shuts itself down and comes back: the rail comes and goes", Gravity.WARNING),
    /** Smells; ages in hours instead of years. */
    WINDING_PAST_CLASS("past the class of its insulation: smells", Gravity.WARNING),
    /** Enamel softens, turns touch. */
    TURNS_SHORT("insulation burnt through, turns short", Gravity.DAMAGE),
    /** Copper, solder or a lead parts. */
    BURNS_OPEN("burnt open", Gravity.DAMAGE),
    /** Browns the board under it. */
    RESISTOR_PAST_RATING("past its rated temperature: browns the board", Gravity.WARNING),
    /** Film or wire parts. */
    RESISTOR_OPENS("burnt open", Gravity.DAMAGE),
    /** Plastic of a connector. */
    HOUSING_SOFTENS("hotter than the housing stands", Gravity.WARNING),
    /** Contact spring and plating are gone. */
    CONTACT_BURNS("burnt, a resistance from now on", Gravity.DAMAGE),
    /** Bronze loses its spring. */
    CLIP_TIRES("clips so hot that they lose their spring", Gravity.WARNING),
    /** Solder that holds clips on a board. */
    CLIP_UNSOLDERS("clips so hot that they unsolder themselves: open", Gravity.DAMAGE),
    /** Plastic round a wire. */
    WIRE_PAST_CLASS("hotter than its insulation stands", Gravity.WARNING),
    /** Copper melts. */
    WIRE_MELTS("melted", Gravity.DAMAGE),
    /** Filament. */
    LAMP_BURNS_OUT("burnt out", Gravity.DAMAGE),
    /** Electrolyte boils off. */
    VENTS("vents, electrolyte sprays out", Gravity.DAMAGE),
    /** Nothing left. */
    BATTERY_EMPTIES("empty", Gravity.WARNING),
    /** Charged beyond full, or not made to be charged. */
    BATTERY_OVERCHARGED("charged beyond what it stands: leaks or bursts", Gravity.DAMAGE);

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
