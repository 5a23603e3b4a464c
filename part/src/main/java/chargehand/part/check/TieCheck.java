package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Tie;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Judges the ties between features. */
final class TieCheck {
    private static final int MOST_NAMED = 12;
    private static final Length LEAST_RUN_OUT = Length.mm(0.0001);

    private final Findings findings;
    private final Set<String> round = new HashSet<>();
    private final Set<String> others = new HashSet<>();

    TieCheck(Body body, Findings findings) {
        this.findings = findings;
        switch (body) {
            case Body.Turned turned -> {
                turned.outside().stream()
                        .filter(s -> !(s instanceof Section.Polygon))
                        .map(Section::name)
                        .forEach(round::add);
                turned.inside().stream().map(Bore::name).forEach(round::add);
                turned.outside().stream()
                        .filter(Section.Polygon.class::isInstance)
                        .map(Section::name)
                        .forEach(others::add);
                turned.across().stream().map(Across::name).forEach(others::add);
                turned.inBores().stream().map(InBore::name).forEach(others::add);
                turned.onEnds().stream().map(OnEnd::name).forEach(others::add);
            }
            case Body.Block block -> {
                block.holes().forEach(hole -> others.add(hole.name()));
                block.cuts().forEach(cut -> others.add(cut.name()));
            }
        }
    }

    void judge(Part part) {
        List<Tie> ties = part.ties();
        for (int i = 0; i < ties.size(); i++) {
            judge(Paths.tie(i), ties.get(i));
        }
    }

    private void judge(String path, Tie tie) {
        name(path + ".of", tie.of());
        name(path + ".to", tie.to());
        if (tie.of().equals(tie.to())) {
            findings.fault(path + ".to", PartFault.TIE_NAME, "A feature is tied to another one, not to itself.");
        }
        if (tie.runOut().length().isLessThan(LEAST_RUN_OUT)
                || tie.runOut().length().isMoreThan(SizeCheck.MOST)) {
            findings.fault(
                    path + ".run-out",
                    PartFault.TIE_RUN_OUT,
                    "A run-out is more than nothing, such as .001 in or 0.02 mm, not "
                            + findings.say(tie.runOut().length()) + ".");
        }
    }

    private void name(String path, String name) {
        if (others.contains(name)) {
            findings.fault(
                    path,
                    PartFault.TIE_NOT_ROUND,
                    "'" + name + "' does not turn about the axis: run-out is read on a round section or a bore.");
        } else if (!round.contains(name)) {
            String known = round.stream().sorted().limit(MOST_NAMED).collect(Collectors.joining(", "));
            findings.fault(
                    path,
                    PartFault.TIE_NAME,
                    "No feature is named '" + name + "'"
                            + (known.isEmpty() ? "." : ": the names here are " + known + "."));
        }
    }
}
