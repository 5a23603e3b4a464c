package chargehand.part.check;

import chargehand.measure.LengthUnit;
import chargehand.part.Across;
import chargehand.part.BlockCut;
import chargehand.part.Bore;
import chargehand.part.GeneralTolerance;
import chargehand.part.Hole;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Section;

/** Judges features one by one, each by itself, whether or not the rest of the part is known yet. */
public final class FeatureCheck {
    private final Findings findings;
    private final SizeCheck sizes;

    /**
     * A check for the features of one part.
     *
     * @param unit the unit in which sentences give sizes
     * @param general what holds for sizes without a tolerance of their own
     */
    public FeatureCheck(LengthUnit unit, GeneralTolerance general) {
        this.findings = new Findings(unit);
        this.sizes = new SizeCheck(general, findings);
    }

    /** What was found so far. */
    public Findings findings() {
        return findings;
    }

    SizeCheck sizes() {
        return sizes;
    }

    public void section(String path, Section section) {
        new SectionCheck(sizes, findings).judge(path, section);
    }

    public void bore(String path, Bore bore) {
        new BoreCheck(sizes, findings).judge(path, bore);
    }

    public void across(String path, Across across) {
        new AcrossCheck(findings).judge(path, across, sizes);
    }

    public void inBore(String path, InBore feature) {
        InBoreCheck.judge(path, feature, sizes);
    }

    public void onEnd(String path, OnEnd feature) {
        OnEndCheck.judge(path, feature, sizes, findings);
    }

    public void cut(String path, BlockCut cut) {
        BlockCutCheck.judge(path, cut, sizes);
    }

    public void hole(String path, Hole hole) {
        BlockCheck.judge(path, hole, sizes);
    }
}
