package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import java.util.Optional;

/**
 * A thread form at one pitch. Drops are measured on diameter, from the basic major diameter inwards.
 *
 * @param triangle height of the sharp triangle that the flanks meet in; zero for a square thread, which has none
 * @param clearance room between crest and root, on radius; zero where the form has none
 * @param depth of the external thread, crest to root, as a tool cuts it, on radius
 * @param effectiveDrop major less effective diameter
 * @param minorDrop major less minor diameter of the external thread, as the standard lists it
 * @param minorInternalDrop major less minor diameter of the internal thread
 * @param majorInternalRise how much larger than the basic major diameter the internal thread is at its root
 * @param fullEngagement what counts as all of the thread when a hole is drilled for tapping: major diameter less that of the
 *     hole; trade practice takes 1.299 p for 60° threads, a little more than the form itself
 * @param crestRadius rounding of the crest, where the form has one
 * @param rootRadius rounding of the root, where the form has one
 * @param crestFlat width of the flat at the crest, where the form has one
 * @param rootFlat width of the flat at the root, where the form has one
 */
public record ThreadProfile(
        Length triangle,
        Length clearance,
        Length depth,
        Length effectiveDrop,
        Length minorDrop,
        Length minorInternalDrop,
        Length majorInternalRise,
        Length fullEngagement,
        Optional<Length> crestRadius,
        Optional<Length> rootRadius,
        Optional<Length> crestFlat,
        Optional<Length> rootFlat) {

    static ThreadProfile of(ThreadForm form, Pitch pitch) {
        FormRules rules = FormRules.of(form);
        Proportion.Basis basis = basis(form, pitch);
        return new ThreadProfile(
                Length.mm(basis.triangleMm()),
                Length.mm(basis.clearanceMm()),
                Length.mm(basis.depthMm()),
                Length.mm(rules.effective().mm(basis)),
                Length.mm(rules.minor().mm(basis)),
                Length.mm(rules.minorInternal().mm(basis)),
                Length.mm(rules.majorInternal().mm(basis)),
                Length.mm(rules.engagement().mm(basis)),
                rules.crestRadius().map(rule -> Length.mm(rule.mm(basis))),
                rules.rootRadius().map(rule -> Length.mm(rule.mm(basis))),
                rules.crestFlat().map(rule -> Length.mm(rule.mm(basis))),
                rules.rootFlat().map(rule -> Length.mm(rule.mm(basis))));
    }

    private static Proportion.Basis basis(ThreadForm form, Pitch pitch) {
        FormRules rules = FormRules.of(form);
        double tangent = form.includedAngle().half().tan();
        double triangle = tangent > 0 ? pitch.inMm() / (2 * tangent) : 0;
        var basis = new Proportion.Basis(
                triangle, pitch.inMm(), Clearance.of(form, pitch).mm(), 0);
        double depth = rules.depth().mm(basis);
        double step = rules.depthRoundedToMm();
        Length rounded = Length.mm(step > 0 ? Math.round(depth / step) * step : depth);
        return basis.withDepth(rounded.mm());
    }
}
