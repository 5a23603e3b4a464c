package chargehand.trade.bolt;

import chargehand.measure.Area;
import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Ratio;
import chargehand.measure.Torque;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialKind;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadKinds;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;

/** What a bolt carries and how tight it goes. */
@AutoService(Sum.class)
public final class BoltSum implements Sum {
    private static final Source AREA =
            Source.published("ISO 898-1 nominal stress area; Machinery's Handbook for Unified");
    private static final Source TIGHTENING = Source.published("T = K F d, K 0.2 for plain bolts lightly oiled");
    private static final Source STRIPPING = Source.published("FED-STD-H28, length of engagement");

    private static final Source CARRIED =
            Source.published("FED-STD-H28, length of engagement, carried to this form's flanks by geometry");

    /** K for a friction: 0.2 goes with about 0.15, as bolts are found (common practice). */
    private static final double K_OVER_FRICTION = 0.2 / 0.15;

    private static final Field<ScrewThread> THREAD =
            Field.required("thread", "Thread", ThreadKinds.THREAD, "M12, 1/2 BSW, 1/2-13 UNC");
    private static final Field<BoltGrade> GRADE =
            Field.optional("grade", "Grade", BoltGrade.KIND, "8.8, 10.9, A4-80; or give the material");
    private static final Field<BoltGrade> MATERIAL =
            Field.optional("material", "Material", BoltGrade.KIND, "EN8, 316; or give the grade");
    private static final Field<Force> LOAD = Field.optional(
            "load",
            "Load along the bolt",
            Kinds.where(
                    Kinds.FORCE, force -> force.newtons() > 0 && force.newtons() <= 1e9, "must be more than nothing"),
            "20 kN");
    private static final Field<Ratio> PRELOAD = Field.optional(
            "preload",
            "Preload, share of proof load",
            Kinds.where(
                    Kinds.PERCENT, share -> share.value() > 0 && share.value() <= 1, "must lie between 0 and 100 %"),
            "75 %",
            "75 %, for joints taken apart again");
    private static final Field<Material> NUT = Field.optional(
            "nutMaterial",
            "Nut or tapped hole",
            MaterialKind.MATERIAL,
            "cast iron, LG2; left out, as strong as the bolt");
    private static final Field<Length> ENGAGED = Field.optional(
            "engaged",
            "Length of thread engaged",
            Kinds.where(
                    Kinds.SIZE,
                    length -> length.isPositive() && !length.isMoreThan(Length.mm(2_000)),
                    "must be more than nothing, and at most 2 m"),
            "10 mm; tells the pull that strips so short a thread");
    private static final Field<Ratio> FRICTION = Field.optional(
            "friction",
            "Friction",
            Kinds.where(Kinds.NUMBER, mu -> mu.value() >= 0.02 && mu.value() <= 0.6, "must lie between 0.02 and 0.6"),
            "0.15 as found, 0.1 well greased; left out, K = 0.2");

    @Override
    public String name() {
        return "bolt";
    }

    @Override
    public String title() {
        return "Bolt";
    }

    @Override
    public String purpose() {
        return "Gives the load a bolt bears, its tightening torque, and how deep it must be engaged not to strip.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(THREAD, GRADE, MATERIAL, LOAD, PRELOAD, NUT, FRICTION, ENGAGED);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("tensileArea", "Tensile area"),
                Result.always("capacity", "Proof load"),
                Result.always("breaking", "Least breaking load"),
                Result.always("preload", "Preload"),
                Result.always("torque", "Tightening torque"),
                Result.sometimes("factor", "Proof load over load"),
                Result.sometimes("strippingArea", "Area of the engaged thread in shear"),
                Result.sometimes("strippingLoad", "Pull that strips it, by the simple rule"),
                Result.always("engagement", "Engagement that breaks the bolt before it strips"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a high-tensile bolt", Map.of("thread", "M12", "grade", "8.8", "load", "20 kN")),
                new Example(
                        "a stud in a thin flange",
                        Map.of("thread", "M10x1.5", "grade", "8.8", "nutMaterial", "LG2", "engaged", "10 mm")),
                new Example(
                        "a stud in cast iron",
                        Map.of(
                                "thread",
                                "1/2-13 UNC",
                                "material",
                                "EN8",
                                "nutMaterial",
                                "cast iron",
                                "friction",
                                "0.12")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        if (asked.has(GRADE) == asked.has(MATERIAL)) {
            throw Refusal.of(GRADE, "give the grade or the material of the bolt, one of the two.");
        }
        BoltGrade grade = asked.find(GRADE).orElseGet(() -> asked.get(MATERIAL));
        ScrewThread thread = asked.get(THREAD);
        var strength = new BoltStrength(thread);
        Force proof = proof(strength, grade, working);
        var breaking = Force.newtons(grade.tensile(thread.major()).megapascals() * strength.tensileAreaMm2());
        Force preload = preload(asked, proof, working);
        var answer = new Answer()
                .with("tensileArea", Figure.of(Area.squareMm(strength.tensileAreaMm2())))
                .with("capacity", Figure.of(proof))
                .with("breaking", Figure.of(breaking))
                .with("preload", Figure.of(preload))
                .with("torque", Figure.of(torque(asked, preload, working)));
        asked.find(LOAD).ifPresent(load -> answer.with("factor", Figure.of(factor(proof, load, working))));
        answer.with("engagement", Figure.of(engagement(strength, grade, asked, working)));
        asked.find(ENGAGED)
                .ifPresent(length ->
                        strip(new ShortThread(thread, length, weakest(grade, thread, asked)), proof, working, answer));
        working.caution(
                "Torque tells the preload to a quarter either way at best. Where a joint holds pressure, lifts or"
                        + " carries people, the competent person decides.");
        return answer;
    }

    private static Force proof(BoltStrength strength, BoltGrade grade, Working working) {
        ScrewThread thread = strength.thread();
        double area = strength.tensileAreaMm2();
        working.step(
                "Tensile area",
                "As = π/4 × (mean of effective and root diameter)²",
                "π/4 × " + Figures.four(2 * Math.sqrt(area / Math.PI)) + "²",
                Figures.four(area) + " mm²",
                AREA);
        double stress = grade.proof(thread.major()).megapascals();
        var proof = Force.newtons(stress * area);
        working.step(
                "Proof load of " + grade.name(),
                "Fp = proof stress × As",
                Figures.four(stress) + " × " + Figures.four(area),
                Figures.four(proof.newtons()) + " N",
                grade.source());
        return proof;
    }

    private static Force preload(Asked asked, Force proof, Working working) {
        double share = asked.get(PRELOAD).value();
        var preload = Force.newtons(share * proof.newtons());
        working.step(
                "Preload",
                "F = share × Fp",
                Figures.four(share) + " × " + Figures.four(proof.newtons()),
                Figures.four(preload.newtons()) + " N",
                Source.COMMON_PRACTICE);
        return preload;
    }

    private static Torque torque(Asked asked, Force preload, Working working) {
        double k = asked.find(FRICTION).map(mu -> K_OVER_FRICTION * mu.value()).orElse(0.2);
        Length diameter = asked.get(THREAD).major();
        var torque = Torque.newtonMetres(k * preload.newtons() * diameter.mm() / 1000);
        working.step(
                "Tightening torque",
                asked.has(FRICTION) ? "T = K F d,  K = 0.2 × friction / 0.15" : "T = K F d,  K = 0.2",
                Figures.four(k) + " × " + Figures.four(preload.newtons()) + " N × "
                        + LengthText.mm(diameter, LengthText.MICROMETRE),
                Figures.four(torque.newtonMetres()) + " N·m",
                TIGHTENING);
        return torque;
    }

    private static double factor(Force proof, Force load, Working working) {
        double factor = proof.newtons() / load.newtons();
        working.step(
                "Proof load over the load",
                "Fp / F",
                Figures.four(proof.newtons()) + " / " + Figures.four(load.newtons()),
                Figures.four(factor),
                Source.COMMON_PRACTICE);
        if (factor < 1) {
            working.caution("The load is more than the bolt bears.");
        }
        return factor;
    }

    private static Length engagement(BoltStrength strength, BoltGrade grade, Asked asked, Working working) {
        if (!strength.isStrippingPrinted()) {
            working.caution(
                    "The rule for stripping is printed for 60° threads and carried here to other flanks by geometry:"
                            + " engage no less than the diameter in steel, one and a half in iron and bronze, twice in aluminium"
                            + " (common practice).");
        }
        double area = strength.tensileAreaMm2();
        double equal = 2 * area / strength.boltShearAreaMm2();
        working.step(
                "Engagement in a nut as strong as the bolt",
                "Le = 2 As / (shear area of the bolt's thread for each mm)",
                "2 × " + Figures.four(area) + " / " + Figures.four(strength.boltShearAreaMm2()),
                Figures.four(equal) + " mm",
                strength.isStrippingPrinted() ? STRIPPING : CARRIED);
        return Length.mm(equal * weaker(strength, grade, asked, working));
    }

    /** How much longer the engagement must be in a weaker nut. */
    private static double weaker(BoltStrength strength, BoltGrade grade, Asked asked, Working working) {
        if (!asked.has(NUT)) {
            return 1;
        }
        double bolt = grade.tensile(strength.thread().major()).megapascals();
        double nut = asked.get(NUT).strength().tensile().megapascals();
        double j = strength.boltShearAreaMm2() * bolt / (strength.nutShearAreaMm2() * nut);
        working.step(
                "A weaker nut or hole strips first where J is more than one, and is engaged J times as deep",
                "J = (bolt's shear area × its strength) / (nut's × its)",
                Figures.four(strength.boltShearAreaMm2()) + " × " + Figures.four(bolt) + " / ("
                        + Figures.four(strength.nutShearAreaMm2()) + " × " + Figures.four(nut) + ")",
                Figures.four(j),
                strength.isStrippingPrinted() ? STRIPPING : CARRIED);
        return Math.max(1, j);
    }

    /** Tensile strength of the bolt, or of the nut where that is named and weaker (MPa). */
    private static double weakest(BoltGrade grade, ScrewThread thread, Asked asked) {
        double bolt = grade.tensile(thread.major()).megapascals();
        return asked.find(NUT)
                .map(nut -> Math.min(bolt, nut.strength().tensile().megapascals()))
                .orElse(bolt);
    }

    private static void strip(ShortThread engaged, Force proof, Working working, Answer answer) {
        engaged.write(working);
        if (engaged.load().newtons() < proof.newtons()) {
            working.caution(
                    "So short a thread strips before the bolt is at its proof load: engage more of it, or load it"
                            + " less.");
        }
        answer.with("strippingArea", Figure.of(Area.squareMm(engaged.areaMm2())))
                .with("strippingLoad", Figure.of(engaged.load()));
    }
}
