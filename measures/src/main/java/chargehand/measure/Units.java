package chargehand.measure;

import static chargehand.measure.UnitOf.unit;

import java.util.List;

/**
 * The units of every quantity that is written as one number and one unit. The factors are those of the quantities
 * themselves; here are only names, and the multiples that have no factory.
 *
 * <p>Two words have more than one meaning and are taken the British way: a {@code ton} is the long ton of 2240 lb, a
 * {@code cwt} is 112 lb. A {@code tonne} is 1000 kg.
 */
final class Units {
    private static final double POUNDS_PER_TON = 2240;
    private static final double POUNDS_PER_CWT = 112;
    private static final double OUNCES_PER_POUND = 16;
    private static final double STANDARD_GRAVITY = 9.80665;
    private static final double KGF_METRES_PER_SECOND_PER_PS = 75;
    private static final double ABSOLUTE_ZERO = -273.15;
    private static final double MM_PER_METRE = 1000;
    private static final double MPA_PER_KGF_PER_CM2 = STANDARD_GRAVITY / 100;

    private Units() {}

    static UnitTable<Force> force() {
        UnitOf<Force> newton = unit(Force::newtons, Force::newtons, "N");
        UnitOf<Force> pound = unit(Force::pounds, Force::pounds, "lbf", "lb");
        return UnitTable.of(List.of(newton, newton.times(1000, "kN")))
                .beside(List.of(pound, pound.times(POUNDS_PER_TON, "tonf", "ton")))
                .alsoRead(List.of(
                        newton.times(STANDARD_GRAVITY, "kgf", "kg"),
                        newton.times(1000 * STANDARD_GRAVITY, "tonne-force", "tonne")));
    }

    static UnitTable<Torque> torque() {
        UnitOf<Torque> newtonMetre = unit(Torque::newtonMetres, Torque::newtonMetres, "N·m");
        UnitOf<Torque> poundFoot = unit(Torque::poundFeet, Torque::poundFeet, "lbf ft", "lb ft", "ft lbf", "ft lb");
        return UnitTable.of(List.of(newtonMetre))
                .beside(List.of(poundFoot))
                .alsoRead(List.of(
                        newtonMetre.times(0.001, "N·mm"),
                        newtonMetre.times(1000, "kN·m"),
                        newtonMetre.times(STANDARD_GRAVITY, "kgf m", "kg m"),
                        poundFoot.times(1 / 12.0, "lbf in", "lb in", "in lbf", "in lb")));
    }

    static UnitTable<Pressure> pressure() {
        UnitOf<Pressure> megapascal =
                unit(Pressure::megapascals, Pressure::megapascals, "MPa", "N/mm2", "MN/m2", "N/sq mm");
        UnitOf<Pressure> bar = unit(Pressure::bar, Pressure::bar, "bar");
        UnitOf<Pressure> psi = unit(Pressure::psi, Pressure::psi, "psi", "lbf/in2", "lb/in2", "lbf/sq in", "lb/sq in");
        return UnitTable.of(List.of(bar, megapascal))
                .beside(List.of(psi))
                .alsoRead(List.of(
                        megapascal.times(0.001, "kPa", "kN/m2"),
                        megapascal.times(1000, "GPa", "kN/mm2"),
                        psi.times(1000, "ksi"),
                        psi.times(POUNDS_PER_TON, "tonf/in2", "ton/in2", "tonf/sq in", "ton/sq in"),
                        megapascal.times(MPA_PER_KGF_PER_CM2, "kgf/cm2", "kg/cm2")));
    }

    static UnitTable<PressureRate> pressureRate() {
        UnitOf<PressureRate> barPerMm = unit(PressureRate::barPerMm, PressureRate::barPerMm, "bar/mm");
        UnitOf<PressureRate> psiPerThou = unit(PressureRate::psiPerThou, PressureRate::psiPerThou, "psi/thou");
        return UnitTable.of(List.of(barPerMm))
                .beside(List.of(psiPerThou))
                .alsoRead(List.of(barPerMm.times(10, "MPa/mm"), psiPerThou.times(0.001, "psi/in")));
    }

    static UnitTable<SpringRate> springRate() {
        UnitOf<SpringRate> newtonsPerMm = unit(SpringRate::newtonsPerMm, SpringRate::newtonsPerMm, "N/mm", "kN/m");
        UnitOf<SpringRate> poundsPerInch =
                unit(SpringRate::poundsPerInch, SpringRate::poundsPerInch, "lbf/in", "lb/in");
        return UnitTable.of(List.of(newtonsPerMm))
                .beside(List.of(poundsPerInch))
                .alsoRead(List.of(
                        newtonsPerMm.times(0.001, "N/m"), newtonsPerMm.times(STANDARD_GRAVITY, "kgf/mm", "kg/mm")))
                .atLeast(0);
    }

    static UnitTable<Speed> speed() {
        UnitOf<Speed> metresPerMinute = unit(Speed::metresPerMinute, Speed::metresPerMinute, "m/min");
        UnitOf<Speed> feetPerMinute = unit(Speed::feetPerMinute, Speed::feetPerMinute, "ft/min", "fpm", "sfm");
        return UnitTable.of(List.of(metresPerMinute))
                .beside(List.of(feetPerMinute))
                .alsoRead(List.of(metresPerMinute.times(60, "m/s"), feetPerMinute.times(60, "ft/s")))
                .atLeast(0);
    }

    static UnitTable<SpindleSpeed> spindleSpeed() {
        UnitOf<SpindleSpeed> rpm = unit(SpindleSpeed::rpm, SpindleSpeed::rpm, "rpm", "rev/min", "r/min", "rev");
        return UnitTable.of(List.of(rpm))
                .alsoRead(List.of(rpm.times(60, "rev/s", "rps")))
                .withBare(UnitTable.Bare.FIRST)
                .atLeast(0);
    }

    static UnitTable<Power> power() {
        UnitOf<Power> watt = unit(Power::watts, Power::watts, "W");
        UnitOf<Power> horsepower = unit(Power::horsepower, Power::horsepower, "hp", "bhp", "horsepower");
        return UnitTable.of(List.of(watt, watt.times(1000, "kW")))
                .beside(List.of(horsepower))
                .alsoRead(List.of(watt.times(KGF_METRES_PER_SECOND_PER_PS * STANDARD_GRAVITY, "PS")))
                .atLeast(0);
    }

    static UnitTable<Mass> mass() {
        UnitOf<Mass> kilogram = unit(Mass::kilograms, Mass::kilograms, "kg");
        UnitOf<Mass> pound = unit(Mass::pounds, Mass::pounds, "lb");
        return UnitTable.of(List.of(kilogram))
                .beside(List.of(pound))
                .alsoRead(List.of(
                        kilogram.times(0.001, "g"),
                        kilogram.times(1000, "tonne", "t"),
                        pound.times(1 / OUNCES_PER_POUND, "oz"),
                        pound.times(POUNDS_PER_CWT, "cwt"),
                        pound.times(POUNDS_PER_TON, "ton")))
                .atLeast(0);
    }

    static UnitTable<Temperature> temperature() {
        UnitOf<Temperature> celsius =
                unit(Temperature::celsius, Temperature::celsius, "°C", "C", "deg C", "°", "deg", "celsius");
        UnitOf<Temperature> fahrenheit =
                unit(Temperature::fahrenheit, Temperature::fahrenheit, "°F", "F", "deg F", "fahrenheit");
        UnitOf<Temperature> kelvin =
                unit(k -> Temperature.celsius(k + ABSOLUTE_ZERO), t -> t.celsius() - ABSOLUTE_ZERO, "K", "kelvin");
        return UnitTable.of(List.of(celsius))
                .beside(List.of(fahrenheit))
                .alsoRead(List.of(kelvin))
                .withBare(UnitTable.Bare.FIRST)
                .atLeast(ABSOLUTE_ZERO);
    }

    static UnitTable<Area> area() {
        UnitOf<Area> squareMm = unit(Area::squareMm, Area::squareMm, "mm²", "sq mm");
        UnitOf<Area> squareInch = unit(Area::squareInches, Area::squareInches, "in²", "sq in");
        return UnitTable.of(List.of(squareMm))
                .beside(List.of(squareInch))
                .alsoRead(List.of(
                        squareMm.times(100, "cm²", "sq cm"),
                        squareMm.times(MM_PER_METRE * MM_PER_METRE, "m²", "sq m"),
                        squareInch.times(144, "ft²", "sq ft")))
                .withBare(UnitTable.Bare.AS_LENGTHS)
                .atLeast(0);
    }

    static UnitTable<Volume> volume() {
        UnitOf<Volume> cubicMm = unit(Volume::cubicMm, Volume::cubicMm, "mm³", "cu mm");
        UnitOf<Volume> cubicInch = unit(Volume::cubicInches, Volume::cubicInches, "in³", "cu in");
        return UnitTable.of(List.of(cubicMm))
                .beside(List.of(cubicInch))
                .alsoRead(List.of(
                        cubicMm.times(1e3, "cm³", "cc", "ml", "cu cm"),
                        cubicMm.times(1e6, "litre"),
                        cubicMm.times(1e9, "m³", "cu m"),
                        cubicInch.times(1728, "ft³", "cu ft")))
                .withBare(UnitTable.Bare.AS_LENGTHS)
                .atLeast(0);
    }
}
