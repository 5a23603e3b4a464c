package chargehand.trade.strength;

import chargehand.measure.Figures;
import chargehand.measure.Length;

/**
 * The shape of a shaft across its axis, and how it resists being twisted and bent.
 *
 * <p>A round or hollow shaft resists torsion exactly as its polar moment says. A square, hexagon or flat warps, and its
 * constants are those of St Venant's solution: the highest shear stress stands in the middle of a side, the corners carry
 * none.
 */
public sealed interface Section {
    /** Torsion modulus: torque over the highest shear stress (mm³). */
    double torsionModulusMm3();

    /** Torsion constant: torque over shear modulus and twist in radians per millimetre (mm⁴). */
    double torsionConstantMm4();

    /** Bending modulus about the weakest axis, since a shaft turns: moment over the highest bending stress (mm³). */
    double bendingModulusMm3();

    /** The torsion modulus in symbols. */
    String torsionFormula();

    /** The torsion modulus with the numbers in it. */
    String torsionNumbers();

    /**
     * A solid round shaft.
     *
     * @param diameter more than nothing
     */
    record Round(Length diameter) implements Section {
        @Override
        public double torsionModulusMm3() {
            return Math.PI * Math.pow(diameter.mm(), 3) / 16;
        }

        @Override
        public double torsionConstantMm4() {
            return Math.PI * Math.pow(diameter.mm(), 4) / 32;
        }

        @Override
        public double bendingModulusMm3() {
            return torsionModulusMm3() / 2;
        }

        @Override
        public String torsionFormula() {
            return "Wt = π d³ / 16";
        }

        @Override
        public String torsionNumbers() {
            return "π × " + Mm.say(diameter) + "³ / 16";
        }
    }

    /**
     * A round shaft with a round bore along its axis.
     *
     * @param outside more than {@code bore}
     * @param bore more than nothing
     */
    record Hollow(Length outside, Length bore) implements Section {
        public Hollow {
            if (!bore.isPositive() || !bore.isLessThan(outside)) {
                throw new IllegalArgumentException("a bore lies between nothing and the outside, not " + bore);
            }
        }

        @Override
        public double torsionModulusMm3() {
            return 2 * torsionConstantMm4() / outside.mm();
        }

        @Override
        public double torsionConstantMm4() {
            return Math.PI * (Math.pow(outside.mm(), 4) - Math.pow(bore.mm(), 4)) / 32;
        }

        @Override
        public double bendingModulusMm3() {
            return torsionModulusMm3() / 2;
        }

        @Override
        public String torsionFormula() {
            return "Wt = π (D⁴ − d⁴) / (16 D)";
        }

        @Override
        public String torsionNumbers() {
            return "π × (" + Mm.say(outside) + "⁴ − " + Mm.say(bore) + "⁴) / (16 × " + Mm.say(outside) + ")";
        }
    }

    /**
     * A square shaft.
     *
     * @param flats across flats
     */
    record Square(Length flats) implements Section {
        /** St Venant's torsion modulus of a square of side one; handbooks print 0.208. */
        static final double TORSION_MODULUS = 0.208165;

        /** St Venant's torsion constant of a square of side one; handbooks print 0.141. */
        static final double TORSION_CONSTANT = 0.140577;

        @Override
        public double torsionModulusMm3() {
            return TORSION_MODULUS * Math.pow(flats.mm(), 3);
        }

        @Override
        public double torsionConstantMm4() {
            return TORSION_CONSTANT * Math.pow(flats.mm(), 4);
        }

        @Override
        public double bendingModulusMm3() {
            return Math.pow(flats.mm(), 3) / (6 * Math.sqrt(2));
        }

        @Override
        public String torsionFormula() {
            return "Wt = 0.2082 s³";
        }

        @Override
        public String torsionNumbers() {
            return "0.2082 × " + Mm.say(flats) + "³";
        }
    }

    /**
     * A hexagonal shaft.
     *
     * @param flats across flats
     */
    record Hexagon(Length flats) implements Section {
        /** St Venant's torsion modulus of a hexagon of one across flats; handbooks print 0.188. */
        static final double TORSION_MODULUS = 0.187673;

        /** St Venant's torsion constant of a hexagon of one across flats; handbooks print 0.115. */
        static final double TORSION_CONSTANT = 0.115051;

        /** Second moment of area over the fourth power of across flats: 5√3/144. */
        private static final double SECOND_MOMENT = 5 * Math.sqrt(3) / 144;

        @Override
        public double torsionModulusMm3() {
            return TORSION_MODULUS * Math.pow(flats.mm(), 3);
        }

        @Override
        public double torsionConstantMm4() {
            return TORSION_CONSTANT * Math.pow(flats.mm(), 4);
        }

        @Override
        public double bendingModulusMm3() {
            return SECOND_MOMENT * Math.sqrt(3) * Math.pow(flats.mm(), 3);
        }

        @Override
        public String torsionFormula() {
            return "Wt = 0.1877 s³";
        }

        @Override
        public String torsionNumbers() {
            return "0.1877 × " + Mm.say(flats) + "³";
        }
    }

    /**
     * A flat bar, by St Venant's series for the rectangle.
     *
     * @param width its wider side, not less than {@code thickness}
     * @param thickness more than nothing
     */
    record Flat(Length width, Length thickness) implements Section {
        /** Terms of the series; they fall with the fifth power, or faster than any. */
        private static final int LAST_TERM = 39;

        private double slender() {
            return width.over(thickness);
        }

        /** Torsion constant over width and cube of thickness: 0.141 for a square, a third for a very thin flat. */
        double constantShare() {
            double sum = 0;
            for (int n = 1; n <= LAST_TERM; n += 2) {
                sum += Math.tanh(n * Math.PI * slender() / 2) / Math.pow(n, 5);
            }
            return 1.0 / 3 - 64 / Math.pow(Math.PI, 5) / slender() * sum;
        }

        /** Torsion modulus over width and square of thickness; the highest stress stands in the middle of the width. */
        double modulusShare() {
            double sum = 0;
            for (int n = 1; n <= LAST_TERM; n += 2) {
                sum += 1 / (n * n * Math.cosh(n * Math.PI * slender() / 2));
            }
            return constantShare() / (1 - 8 / (Math.PI * Math.PI) * sum);
        }

        @Override
        public double torsionModulusMm3() {
            return modulusShare() * width.mm() * Math.pow(thickness.mm(), 2);
        }

        @Override
        public double torsionConstantMm4() {
            return constantShare() * width.mm() * Math.pow(thickness.mm(), 3);
        }

        @Override
        public double bendingModulusMm3() {
            return width.mm() * Math.pow(thickness.mm(), 2) / 6;
        }

        @Override
        public String torsionFormula() {
            return "Wt = k b t²,  k by St Venant for b/t";
        }

        @Override
        public String torsionNumbers() {
            return Figures.four(modulusShare()) + " × " + Mm.say(width) + " × " + Mm.say(thickness) + "²";
        }
    }
}
