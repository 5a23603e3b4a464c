package chargehand.trade.screwcutting;

import chargehand.measure.Speed;
import chargehand.measure.SpindleSpeed;
import chargehand.trade.material.Material;
import chargehand.trade.material.ToolMaterial;
import chargehand.trade.thread.ScrewThread;

/**
 * How fast to run for screw-cutting with a high-speed steel tool: a third of the roughing speed for turning, and never so
 * fast that the carriage runs away from the hand on the nut. Common practice.
 *
 * @param surface the speed at the crests
 * @param bySurface what that is in turns
 * @param byCarriage the most turns at which the nut is opened in time
 */
public record ScrewSpeed(Speed surface, SpindleSpeed bySurface, SpindleSpeed byCarriage) {
    private static final double PART_OF_TURNING = 1 / 3.0;
    private static final double CARRIAGE_MM_PER_MINUTE = 300;
    private static final double MM_PER_METRE = 1000;

    public static ScrewSpeed of(ScrewThread thread, Material material) {
        double surface = material.speeds(ToolMaterial.HSS).low().metresPerMinute() * PART_OF_TURNING;
        return new ScrewSpeed(
                Speed.metresPerMinute(surface),
                SpindleSpeed.rpm(
                        surface * MM_PER_METRE / (Math.PI * thread.major().mm())),
                SpindleSpeed.rpm(CARRIAGE_MM_PER_MINUTE / thread.lead().inMm()));
    }

    /** The slower of the two. */
    public SpindleSpeed rpm() {
        return bySurface.compareTo(byCarriage) <= 0 ? bySurface : byCarriage;
    }
}
