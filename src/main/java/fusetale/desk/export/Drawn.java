package fusetale.desk.export;

/** The drawing as files. */
public interface Drawn {
    /**
     * As PNG.
     *
     * @param scale pixels each way in a pixel of the drawing's own measure
     */
    byte[] png(int scale);

    /** As SVG, its sentence in title and description. */
    byte[] svg();
}
