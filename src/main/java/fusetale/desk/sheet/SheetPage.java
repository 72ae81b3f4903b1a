package fusetale.desk.sheet;

import java.util.function.DoubleFunction;

/**
 * One page as the printer will have it.
 *
 * @param png its picture at a number of pixels in a pixel of 1/96 inch, as PNG
 * @param spoken what it says, for whoever cannot see it
 */
public record SheetPage(DoubleFunction<byte[]> png, String spoken) {}
