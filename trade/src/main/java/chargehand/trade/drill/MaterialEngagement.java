package chargehand.trade.drill;

import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialGroup;

/** How much thread to leave in a tapped hole, by what it is tapped in. Common practice: tougher material, less thread. */
final class MaterialEngagement {
    private MaterialEngagement() {}

    static double of(Material material) {
        return of(material.group());
    }

    private static double of(MaterialGroup group) {
        return switch (group) {
            case STAINLESS, TITANIUM, TOOL_STEEL -> 0.65;
            case ALLOY_STEEL, COPPER -> 0.70;
            case CARBON_STEEL, CAST_IRON, BRONZE -> 0.75;
            case BRASS, ALUMINIUM, PLASTIC -> 0.80;
        };
    }
}
