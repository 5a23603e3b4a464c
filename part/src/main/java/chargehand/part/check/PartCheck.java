package chargehand.part.check;

import chargehand.measure.LengthUnit;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.GeneralTolerance;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.shape.Solid;
import chargehand.trade.material.Materials;
import java.util.List;

/**
 * Judges whether a part can stand as it is described. Everything that can be told is told in one go: each feature by
 * itself, then features beside each other, and, once those are sound, walls and what lies across.
 */
public final class PartCheck {
    private static final int MOST_FEATURES = 100;

    private final Findings findings;
    private final SizeCheck sizes;

    private PartCheck(LengthUnit unit, GeneralTolerance general) {
        this.findings = new Findings(unit);
        this.sizes = new SizeCheck(general, findings);
    }

    /** What is to be said about a part; it can stand when the findings are sound. */
    public static Findings of(Part part) {
        var check = new PartCheck(part.unit(), part.general());
        check.judge(part);
        return check.findings;
    }

    private void judge(Part part) {
        switch (part.body()) {
            case Body.Turned turned -> turned(turned);
            case Body.Block block -> block(block);
        }
        new TieCheck(part.body(), findings).judge(part);
        if (Materials.find(part.material()).isEmpty()) {
            findings.remark(
                    "material",
                    PartRemark.MATERIAL_UNKNOWN,
                    "'" + part.material()
                            + "' is not in the tables: speeds and strength cannot be worked out from it.");
        }
    }

    private void turned(Body.Turned body) {
        isTooMany("outside", body.outside());
        isTooMany("inside", body.inside());
        isTooMany("across", body.across());
        if (!findings.isSound()) {
            return;
        }
        alone(body);
        new NameCheck(findings).judge(body);
        new OutsideCheck(body, findings).judge();
        new BoreCheck(sizes, findings).judgeTogether(body);
        if (body.length().isMoreThan(SizeCheck.MOST)) {
            findings.fault(
                    "outside",
                    PartFault.SIZE_TOO_LARGE,
                    "The sections together are " + findings.say(body.length()) + " long, more than any part here.");
        }
        if (findings.isSound()) {
            Solid solid = Solid.of(body);
            new WallCheck(body, solid, findings).judge();
            new AcrossCheck(findings).judgeTogether(body, solid);
        }
    }

    private void alone(Body.Turned body) {
        var sectionCheck = new SectionCheck(sizes, findings);
        List<Section> sections = body.outside();
        for (int i = 0; i < sections.size(); i++) {
            sectionCheck.judge(Paths.section(i), sections.get(i));
        }
        var boreCheck = new BoreCheck(sizes, findings);
        List<Bore> bores = body.inside();
        for (int i = 0; i < bores.size(); i++) {
            boreCheck.judge(Paths.bore(i), bores.get(i));
        }
        List<Across> across = body.across();
        for (int i = 0; i < across.size(); i++) {
            new AcrossCheck(findings).judge(Paths.across(i), across.get(i), sizes);
        }
    }

    private void block(Body.Block block) {
        if (!isTooMany("holes", block.holes())) {
            new NameCheck(findings).judge(block);
            new BlockCheck(block, findings).judge(sizes);
        }
    }

    private boolean isTooMany(String path, List<?> features) {
        boolean tooMany = features.size() > MOST_FEATURES;
        if (tooMany) {
            findings.fault(
                    path,
                    PartFault.TOO_MANY_FEATURES,
                    features.size() + " are listed here: a part has no more than " + MOST_FEATURES + ".");
        }
        return tooMany;
    }
}
