package chargehand.trade.cutting;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.measure.Power;
import chargehand.measure.SpindleSpeed;
import chargehand.trade.material.Material;
import chargehand.trade.material.ToolMaterial;
import java.util.List;
import java.util.Optional;

/**
 * A cut to be set up. Made with {@link #of} and refined with the other methods; whatever is not given is taken from common
 * practice.
 *
 * @param operation how it is cut
 * @param material what is cut
 * @param tool what the edge is made of
 * @param diameter of the work in turning, facing, parting and screw-cutting; of the hole in boring, drilling, reaming and
 *     tapping; of the cutter in milling
 * @param depth metal to take off, on the radius (for milling, down the cutter's axis)
 * @param width of the tool in parting, of the cut in milling
 * @param teeth of a milling cutter
 * @param length of the cut along the feed; of a hole, its depth
 * @param pitch of a thread to tap or cut
 * @param finish roughness Ra that is wanted
 * @param nose radius of the tool's nose
 * @param machine what the machine can be set to
 */
public record Cut(
        Operation operation,
        Material material,
        ToolMaterial tool,
        Length diameter,
        Optional<Length> depth,
        Optional<Length> width,
        Optional<Integer> teeth,
        Optional<Length> length,
        Optional<Pitch> pitch,
        Optional<Length> finish,
        Optional<Length> nose,
        Machine machine) {
    /**
     * What a machine can be set to.
     *
     * @param speeds of the spindle as on its plate; none for any speed
     * @param feeds for one turn of the spindle, or in a minute for a milling table; none for any feed
     * @param power of its motor
     */
    public record Machine(List<SpindleSpeed> speeds, List<Length> feeds, Optional<Power> power) {
        /** A machine that can be set to anything. */
        public static final Machine ANY = new Machine(List.of(), List.of(), Optional.empty());

        public Machine {
            speeds = speeds.stream().sorted().distinct().toList();
            feeds = feeds.stream().sorted().distinct().toList();
        }
    }

    /** A cut with everything else left to common practice. */
    public static Cut of(Operation operation, Material material, ToolMaterial tool, Length diameter) {
        return new Cut(
                operation,
                material,
                tool,
                diameter,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Machine.ANY);
    }

    /** The same, so deep. */
    public Cut withDepth(Length deep) {
        return new Cut(
                operation,
                material,
                tool,
                diameter,
                Optional.of(deep),
                width,
                teeth,
                length,
                pitch,
                finish,
                nose,
                machine);
    }

    /** The same, so long. */
    public Cut withLength(Length along) {
        return new Cut(
                operation,
                material,
                tool,
                diameter,
                depth,
                width,
                teeth,
                Optional.of(along),
                pitch,
                finish,
                nose,
                machine);
    }

    /** The same with a finish to be reached, Ra. */
    public Cut withFinish(Length roughness) {
        return new Cut(
                operation,
                material,
                tool,
                diameter,
                depth,
                width,
                teeth,
                length,
                pitch,
                Optional.of(roughness),
                nose,
                machine);
    }

    /** The same for a thread of this pitch. */
    public Cut withPitch(Pitch thread) {
        return new Cut(
                operation,
                material,
                tool,
                diameter,
                depth,
                width,
                teeth,
                length,
                Optional.of(thread),
                finish,
                nose,
                machine);
    }

    /** The same for a milling cutter of so many teeth taking this width. */
    public Cut withMilling(int cutterTeeth, Length cut) {
        return new Cut(
                operation,
                material,
                tool,
                diameter,
                depth,
                Optional.of(cut),
                Optional.of(cutterTeeth),
                length,
                pitch,
                finish,
                nose,
                machine);
    }

    /** The same on this machine. */
    public Cut on(Machine settings) {
        return new Cut(operation, material, tool, diameter, depth, width, teeth, length, pitch, finish, nose, settings);
    }

    Practice practice() {
        return Practice.of(operation, tool);
    }

    /** Whether the cut is a finishing one: a finish is asked for. */
    boolean finishing() {
        return finish.isPresent();
    }
}
