package chargehand.part.check;

import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.DrawingIssue;
import chargehand.part.Feature;
import chargehand.part.Hole;
import chargehand.part.Part;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Judges the table of issues: every letter once, the last one that of the drawing, and only features that are there. */
final class IssueCheck {
    private static final int MOST_NAMED = 12;

    private final Part part;
    private final Findings findings;
    private final Set<String> names;

    IssueCheck(Part part, Findings findings) {
        this.part = part;
        this.findings = findings;
        this.names = names(part.body()).collect(Collectors.toSet());
    }

    private static Stream<String> names(Body body) {
        return switch (body) {
            case Body.Turned turned -> turned.features().stream().map(Feature::name);
            case Body.Block block ->
                Stream.concat(
                        block.holes().stream().map(Hole::name),
                        block.cuts().stream().map(BlockCut::name));
        };
    }

    void judge() {
        List<DrawingIssue> issues = part.drafting().issues();
        Set<String> letters = new HashSet<>();
        for (int i = 0; i < issues.size(); i++) {
            letter(Paths.issue(i), issues.get(i), letters);
            at(Paths.issue(i), issues.get(i));
        }
        if (!issues.isEmpty() && !issues.getLast().letter().equals(part.issue())) {
            findings.fault(
                    Paths.issue(issues.size() - 1) + ".letter",
                    PartFault.ISSUE_NOT_LAST,
                    "The table ends with issue " + issues.getLast().letter() + " and the drawing is at issue "
                            + part.issue() + ": the last entry is the issue of the drawing.");
        }
    }

    private void letter(String path, DrawingIssue issue, Set<String> letters) {
        if (!letters.add(issue.letter())) {
            findings.fault(
                    path + ".letter",
                    PartFault.ISSUE_TWICE,
                    "Issue " + issue.letter() + " is in the table already: each letter is used once.");
        }
    }

    private void at(String path, DrawingIssue issue) {
        issue.at().filter(name -> !names.contains(name)).ifPresent(name -> {
            String known = names.stream().sorted().limit(MOST_NAMED).collect(Collectors.joining(", "));
            findings.fault(
                    path + ".at",
                    PartFault.ISSUE_AT,
                    "No feature is named '" + name + "'"
                            + (known.isEmpty() ? "." : ": the names here are " + known + "."));
        });
    }
}
