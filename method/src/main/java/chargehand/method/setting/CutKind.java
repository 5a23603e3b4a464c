package chargehand.method.setting;

import chargehand.measure.Speed;
import chargehand.trade.material.Material;
import chargehand.trade.material.ToolMaterial;
import chargehand.trade.sum.Source;

/**
 * The kinds of cut, each with its share of the material's turning speed. The shares are common practice for high-speed
 * steel on elderly machines.
 */
enum CutKind {
    ROUGHING(1.0, false),
    FINISHING(1.0, true),
    FACING(1.0, false),
    BORING(0.8, false),
    DRILLING(0.8, false),
    CENTRING(0.8, false),
    REAMING(0.4, false),
    GROOVING(0.5, false),
    PARTING(0.5, false),
    CHAMFERING(0.6, false),
    SCREW_CUTTING(0.3, false),
    DIE_CUTTING(0.15, false),
    TAPPING(0.15, false),
    MILLING(0.9, false),
    FORM_MILLING(0.6, false);

    static final Source SOURCE = Source.COMMON_PRACTICE;

    private final double share;
    private final boolean fine;

    CutKind(double share, boolean fine) {
        this.share = share;
        this.fine = fine;
    }

    /** The surface speed wanted for this kind of cut in a material, with a high-speed steel tool. */
    Speed speed(Material material) {
        var band = material.speeds(ToolMaterial.HSS);
        Speed base = fine ? band.high() : band.low();
        return Speed.metresPerMinute(base.metresPerMinute() * share);
    }

    double share() {
        return share;
    }
}
