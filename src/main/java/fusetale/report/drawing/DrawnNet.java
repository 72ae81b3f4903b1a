package fusetale.report.drawing;

import java.util.List;

/**
 * A net on the sheet.
 *
 * @param net its name
 * @param wires its wires
 * @param joints where three or more wires meet: a dot of radius {@value #JOINT_RADIUS} px
 * @param flags where it ends in a name or a ground sign
 */
public record DrawnNet(String net, List<Segment> wires, List<Spot> joints, List<Flag> flags) {
    /** Radius of the dot of a joint [px]. */
    public static final double JOINT_RADIUS = 3.2;

    /** Copies the lists. */
    public DrawnNet {
        wires = List.copyOf(wires);
        joints = List.copyOf(joints);
        flags = List.copyOf(flags);
    }

    DrawnNet moved(double byX, double byY) {
        return new DrawnNet(
                net,
                wires.stream().map(w -> w.moved(byX, byY)).toList(),
                joints.stream().map(j -> j.moved(byX, byY)).toList(),
                flags.stream().map(f -> f.moved(byX, byY)).toList());
    }
}
