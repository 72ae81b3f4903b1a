package fusetale.report;

import fusetale.explore.Words;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/**
 * A picture of an outcome whose question has changed since: says so across its top.
 *
 * @param picture what is out of date
 */
public record OutOfDatePicture(Picture picture) implements Picture {
    private static final int HEIGHT = 36;
    private static final Words WORDS = Words.of(OutOfDatePicture.class);

    @Override
    public int height() {
        return picture.height() + HEIGHT;
    }

    @Override
    public String sentence() {
        return picture.sentence();
    }

    @Override
    public String description() {
        return WORDS.say("picture.out-of-date") + "\n" + picture.description();
    }

    @Override
    public void paint(Graphics2D g) {
        Graphics2D below = (Graphics2D) g.create();
        below.translate(0, HEIGHT);
        picture.paint(below);
        below.dispose();
        g.setColor(Ink.DANGER_GROUND);
        g.fill(new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        Font font = Type.SHOUT.at(17);
        new Pen(g).write(WORDS.say("picture.out-of-date"), font, Ink.DANGER_TEXT, PictureHead.MARGIN, HEIGHT - 12);
    }
}
