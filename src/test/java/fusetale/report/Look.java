package fusetale.report;

import java.nio.file.*;
import java.util.List;

class Look {
    public static void main(String[] a) throws Exception {
        SupposePicture p = new SupposePicture(
                Made.shortedLeg(),
                List.of("BR201 leg 1 is shorted", "F201 holds a 25 A fuse"),
                "Made Up. Power on, mains 120 V, as found. Digital meter, 10 Mohm, true rms.");
        Files.write(Path.of("/tmp/look.png"), PictureFile.PNG.bytes(p));
        Files.write(Path.of("/tmp/look.svg"), PictureFile.SVG.bytes(p));
        Files.write(
                Path.of("/tmp/look-off.png"),
                PictureFile.PNG.bytes(
                        new SupposePicture(Made.powerOff(), List.of("D1 is shorted"), "Made Up. Power off.")));
    }
}
