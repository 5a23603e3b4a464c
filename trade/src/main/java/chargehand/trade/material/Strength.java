package chargehand.trade.material;

import chargehand.measure.Pressure;
import chargehand.trade.sum.Source;
import java.util.Optional;

/**
 * How strong a material is at the least, in the weakest condition it is usually sold in under its name.
 *
 * @param tensile least tensile strength
 * @param yield least yield or 0.2 % proof strength; empty for cast iron and plastics, which have no yield point to go by
 * @param source where both come from
 */
public record Strength(Pressure tensile, Optional<Pressure> yield, Source source) {}
