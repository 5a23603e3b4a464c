package chargehand.method.setting;

import chargehand.trade.material.Material;

/** What to run on the cut, by family of material. Common practice. */
final class Coolant {
    private Coolant() {}

    static String forCut(Material material) {
        return switch (material.group()) {
            case CARBON_STEEL, ALLOY_STEEL, TOOL_STEEL -> "soluble oil";
            case STAINLESS -> "soluble oil, plenty, and keep it cutting";
            case CAST_IRON -> "dry";
            case BRASS, BRONZE, COPPER, PLASTIC -> "dry";
            case ALUMINIUM -> "paraffin or soluble oil";
            case TITANIUM -> "soluble oil, plenty; fine chips can burn: no dust left lying";
        };
    }

    static String forThread(Material material) {
        return switch (material.group()) {
            case CAST_IRON, BRASS, PLASTIC -> "dry";
            case BRONZE, COPPER, ALUMINIUM -> "a little light oil";
            case CARBON_STEEL, ALLOY_STEEL, TOOL_STEEL, STAINLESS, TITANIUM -> "tapping oil or lard oil";
        };
    }
}
