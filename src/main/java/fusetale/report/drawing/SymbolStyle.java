package fusetale.report.drawing;

/** Whose shapes the symbols have. Both are drawn from memory of the standards. */
public enum SymbolStyle {
    /** IEC 60617: a resistor is a box, an electrolytic two boxes, a lamp a crossed circle. */
    IEC_60617("IEC 60617"),
    /** IEEE 315: a resistor is a zigzag, an electrolytic has a curved plate. */
    IEEE_315("IEEE 315");

    private final String words;

    SymbolStyle(String words) {
        this.words = words;
    }

    /** As the standard is called. */
    public String words() {
        return words;
    }
}
