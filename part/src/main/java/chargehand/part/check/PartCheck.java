package chargehand.part.check;

import chargehand.measure.LengthUnit;
import chargehand.part.Body;
import chargehand.part.GeneralTolerance;
import chargehand.part.Part;
import chargehand.part.shape.Solid;
import chargehand.trade.material.Materials;
import java.util.List;

/**
 * Judges whether a part can stand as it is described. Everything that can be told is told in one go: each feature by
 * itself, then features beside each other, and, once those are sound, walls and what lies across.
 */
public final class PartCheck {
    private static final int MOST_FEATURES = 100;
    private static final int MOST_BORES = 30;

    private final FeatureCheck features;
    private final Findings findings;

    private PartCheck(LengthUnit unit, GeneralTolerance general) {
        this.features = new FeatureCheck(unit, general);
        this.findings = features.findings();
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
        new IssueCheck(part, findings).judge();
        new LengthWishCheck(part, findings).judge();
        if (Materials.find(part.material()).isEmpty()) {
            findings.remark(
                    "material",
                    PartRemark.MATERIAL_UNKNOWN,
                    "'" + part.material()
                            + "' is not in the tables: speeds and strength cannot be worked out from it.");
        }
    }

    private void turned(Body.Turned body) {
        isTooMany("outside", body.outside(), MOST_FEATURES);
        isTooMany("inside", body.inside(), MOST_BORES);
        isTooMany("across", body.across(), MOST_FEATURES);
        isTooMany("in-bores", body.inBores(), MOST_BORES);
        isTooMany("on-ends", body.onEnds(), MOST_BORES);
        if (!findings.isSound()) {
            return;
        }
        alone(body);
        new NameCheck(findings).judge(body);
        if (findings.anyIs(PartFault.SIZE_TOO_LARGE)) {
            return;
        }
        new AlteredCheck(body, findings).judge();
        new OutsideCheck(body, findings).judge();
        new BoreCheck(features.sizes(), findings).judgeTogether(body);
        if (body.length().isMoreThan(SizeCheck.MOST)) {
            findings.fault(
                    "outside",
                    PartFault.SIZE_TOO_LARGE,
                    "The sections together are " + findings.say(body.length()) + " long, more than any part here.");
        }
        if (findings.isSound()) {
            new InBoreCheck(body, findings).judgeTogether();
        }
        if (findings.isSound()) {
            Solid solid = Solid.of(body);
            new WallCheck(body, solid, findings).judge();
            new AcrossCheck(findings).judgeTogether(body, solid);
            new OnEndCheck(body, solid, findings).judgeTogether();
        }
    }

    private void alone(Body.Turned body) {
        for (int i = 0; i < body.outside().size(); i++) {
            features.section(Paths.section(i), body.outside().get(i));
        }
        for (int i = 0; i < body.inside().size(); i++) {
            features.bore(Paths.bore(i), body.inside().get(i));
        }
        for (int i = 0; i < body.across().size(); i++) {
            features.across(Paths.across(i), body.across().get(i));
        }
        for (int i = 0; i < body.inBores().size(); i++) {
            features.inBore(Paths.inBore(i), body.inBores().get(i));
        }
        for (int i = 0; i < body.onEnds().size(); i++) {
            features.onEnd(Paths.onEnd(i), body.onEnds().get(i));
        }
    }

    private void block(Body.Block block) {
        boolean tooMany = isTooMany("holes", block.holes(), MOST_FEATURES);
        tooMany |= isTooMany("cuts", block.cuts(), MOST_BORES);
        if (!tooMany) {
            new NameCheck(findings).judge(block);
            new BlockCheck(block, findings).judge(features);
        }
    }

    private boolean isTooMany(String path, List<?> features, int most) {
        boolean tooMany = features.size() > most;
        if (tooMany) {
            findings.fault(
                    path,
                    PartFault.TOO_MANY_FEATURES,
                    features.size() + " are listed here: a part has no more than " + most + ".");
        }
        return tooMany;
    }
}
