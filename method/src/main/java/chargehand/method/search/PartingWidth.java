package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.kit.LatheTool;
import chargehand.method.setting.PartingTools;
import chargehand.method.stock.Candidate;

/** How wide the slot is in which a candidate is parted off. */
final class PartingWidth {
    private PartingWidth() {}

    static Length of(Kit kit, Candidate candidate) {
        return PartingTools.pick(kit.tooling(), candidate.raw().largestAcross())
                .map(LatheTool.Parting::width)
                .orElse(candidate.allowances().slot());
    }
}
