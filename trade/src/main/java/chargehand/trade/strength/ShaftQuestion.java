package chargehand.trade.strength;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Torque;
import chargehand.trade.material.Material;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Working;
import java.util.Optional;

/** Settles what is asked of a shaft: its section, what loads it and what it may bear. */
final class ShaftQuestion {
    /** Shear modulus taken where only a stress is given, so that the twist is that of a steel shaft. */
    private static final Pressure STEEL_STIFFNESS = Pressure.megapascals(79_300);

    private static final double HOPELESS = 100;
    private static final double MOST_MPA_PER_MM = 1_000;

    private final Asked asked;
    private final Working working;

    ShaftQuestion(Asked asked, Working working) {
        this.asked = asked;
        this.working = working;
    }

    Section section() {
        Length size = asked.get(ShaftSum.SIZE);
        Optional<Length> bore = asked.find(ShaftSum.BORE);
        ShaftShape shape = asked.get(ShaftSum.SHAPE);
        boolean flatted = shape != ShaftShape.ROUND && shape != ShaftShape.HOLLOW;
        if (bore.isPresent() && flatted) {
            throw Refusal.of(
                    ShaftSum.BORE,
                    "a bored square, hexagon or flat has no simple rule: reckon it as a hollow round of"
                            + " the same size across flats.");
        }
        if (asked.has(ShaftSum.WIDTH) && shape != ShaftShape.FLAT) {
            throw Refusal.of(ShaftSum.WIDTH, "only a flat has a width beside its size: leave it out.");
        }
        return switch (shape) {
            case ROUND -> bore.isPresent() ? hollow(size, bore.get()) : new Section.Round(size);
            case HOLLOW ->
                hollow(size, bore.orElseThrow(() -> Refusal.of(ShaftSum.BORE, "a hollow shaft needs its bore.")));
            case SQUARE -> new Section.Square(size);
            case HEXAGON -> new Section.Hexagon(size);
            case FLAT -> flat(size);
        };
    }

    private Section flat(Length thickness) {
        Length width = asked.find(ShaftSum.WIDTH)
                .orElseThrow(() -> Refusal.of(ShaftSum.WIDTH, "a flat needs its width beside its thickness."));
        if (width.isLessThan(thickness)) {
            throw Refusal.of(
                    ShaftSum.WIDTH, "the width of a flat is its wider side: it may not be less than the size.");
        }
        return new Section.Flat(width, thickness);
    }

    private static Section hollow(Length size, Length bore) {
        if (!bore.isLessThan(size)) {
            throw Refusal.of(ShaftSum.BORE, "the bore must be smaller than the outside.");
        }
        return new Section.Hollow(size, bore);
    }

    ShaftLoad load() {
        ShaftLoad load = ShaftLoad.of(torque());
        return asked.find(ShaftSum.BENDING).map(load::withBending).orElse(load);
    }

    private Torque torque() {
        boolean byPower = asked.has(ShaftSum.POWER) || asked.has(ShaftSum.RPM);
        boolean byLever = asked.has(ShaftSum.EFFORT) || asked.has(ShaftSum.LEVER);
        if (asked.has(ShaftSum.TORQUE)) {
            if (byPower || byLever) {
                throw Refusal.of(
                        ShaftSum.TORQUE, "the torque is given and could also be worked out: give one or the other.");
            }
            return asked.get(ShaftSum.TORQUE);
        }
        if (byPower && byLever) {
            throw Refusal.of(ShaftSum.POWER, "give power and speed, or effort and lever, not both.");
        }
        if (byPower) {
            return ShaftLoad.torque(both(ShaftSum.POWER, "rpm"), both(ShaftSum.RPM, "power"), working);
        }
        if (byLever) {
            return ShaftLoad.torque(both(ShaftSum.EFFORT, "lever"), both(ShaftSum.LEVER, "effort"), working);
        }
        throw Refusal.of(ShaftSum.TORQUE, "give the torque, or power and speed, or effort and lever.");
    }

    private <T> T both(Field<T> field, String partner) {
        return asked.find(field)
                .orElseThrow(() ->
                        Refusal.of(field, field.label() + " is needed with the " + partner + ": " + field.hint()));
    }

    Pressure allowable() {
        Optional<Material> material = asked.find(ShaftSum.MATERIAL);
        Optional<Pressure> stated = asked.find(ShaftSum.ALLOWABLE);
        if (stated.isEmpty() && material.isEmpty()) {
            throw Refusal.of(ShaftSum.MATERIAL, "give the material or the stress that is allowed.");
        }
        Pressure plain = stated.orElseGet(() -> AllowableShear.of(material.orElseThrow(), working));
        return asked.get(ShaftSum.KEYED) ? AllowableShear.keyed(plain, working) : plain;
    }

    /** The shear modulus: of the material, or of steel where it is not named. */
    Pressure stiffness() {
        Optional<Material> material = asked.find(ShaftSum.MATERIAL);
        if (material.isEmpty()) {
            working.caution("The material is not named: the twist is that of a steel shaft.");
            return STEEL_STIFFNESS;
        }
        var physical = material.get().physical();
        return Pressure.megapascals(physical.elasticModulus().megapascals() / (2 * (1 + physical.poissonRatio())));
    }

    /** Refuses a shaft so far too small that figures about it would mean nothing. */
    void refuseHopeless(Section section, ShaftLoad load, Pressure allowable) {
        double torsion = ShaftStress.torsionAlone(section, load);
        double twist = torsion * section.torsionModulusMm3() / section.torsionConstantMm4();
        if (torsion > HOPELESS * allowable.megapascals() || twist > MOST_MPA_PER_MM) {
            throw Refusal.of(
                    ShaftSum.SIZE,
                    "this is far too small: the stress would be more than a hundred times what is allowed. Check the size"
                            + " and the load.");
        }
    }

    void refuseBendingAlone(Section section, ShaftLoad load, Pressure allowable) {
        if (ShaftStress.bendingAlone(section, load) >= allowable.megapascals()) {
            throw Refusal.of(
                    ShaftSum.BENDING, "this alone takes up all the stress that is allowed: the shaft must be larger.");
        }
    }
}
