package chargehand.trade.material;

import java.util.List;
import java.util.Optional;

/**
 * A material as the trade knows it.
 *
 * @param name what it is called in full, such as "EN8 medium carbon steel"
 * @param aliases other ways of writing it: grade numbers, standards' names, the shop's short words
 * @param group the family it belongs to
 * @param strength how strong it is at the least
 * @param physical density, modulus, expansion
 * @param kienzle the law of its cutting force; empty where none is published for its group
 * @param hss turning speeds with a high-speed steel tool
 * @param carbide turning speeds with a carbide tool
 * @param steam whether it is usual for steam and hot water
 */
public record Material(
        String name,
        List<String> aliases,
        MaterialGroup group,
        Strength strength,
        Physical physical,
        Optional<Kienzle> kienzle,
        SpeedBand hss,
        SpeedBand carbide,
        SteamFitness steam) {
    public Material {
        aliases = List.copyOf(aliases);
    }

    /** The speeds for turning it with this kind of tool. */
    public SpeedBand speeds(ToolMaterial tool) {
        return switch (tool) {
            case HSS -> hss;
            case CARBIDE -> carbide;
        };
    }

    /** The same material, its cutting force by another law. */
    public Material cutBy(Kienzle law) {
        return new Material(name, aliases, group, strength, physical, Optional.of(law), hss, carbide, steam);
    }

    /** The short grade by which a sheet names it, such as "EN8". */
    public String grade() {
        return aliases.getFirst();
    }
}
