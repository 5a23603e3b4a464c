package chargehand.method.setting;

import chargehand.measure.Limits;
import chargehand.method.kit.Kit;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.Size;
import chargehand.trade.material.Material;

/**
 * A block that is being made, of what, with what.
 *
 * @param part the part, whose body is {@code body}
 * @param body its shape
 * @param material what it is cut from
 * @param kit what the shop has
 */
public record BlockMaking(Part part, Body.Block body, Material material, Kit kit) {
    Limits limits(Size size) {
        return size.limits(part.general());
    }
}
