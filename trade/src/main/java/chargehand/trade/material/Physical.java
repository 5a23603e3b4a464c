package chargehand.trade.material;

import chargehand.measure.Pressure;

/**
 * How heavy and springy a material is and how it grows with heat.
 *
 * @param kilogramsPerCubicMetre density (kg/m³)
 * @param elasticModulus Young's modulus
 * @param poissonRatio sideways over lengthways strain, no unit
 * @param expansionPerKelvin growth in length per degree (1/K), 20 to 100 °C
 */
public record Physical(
        double kilogramsPerCubicMetre, Pressure elasticModulus, double poissonRatio, double expansionPerKelvin) {}
