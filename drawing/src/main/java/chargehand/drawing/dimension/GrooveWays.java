package chargehand.drawing.dimension;

import chargehand.drawing.sign.Label;
import chargehand.drawing.sign.Wording;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gives the diameters of grooves: those alike by one leader that says how many. */
final class GrooveWays {
    private static final double LEADER = 6;
    private static final List<Double> MIDDLE = List.of(0.5, 0.3, 0.7);

    private final Subject subject;
    private final Map<String, List<Integer>> alike = new LinkedHashMap<>();

    GrooveWays(Subject subject) {
        this.subject = subject;
        for (int i = 0; i < subject.body().outside().size(); i++) {
            if (subject.body().outside().get(i) instanceof Section.Groove groove) {
                String says = subject.text().diameter(groove.diameter()).toString();
                alike.computeIfAbsent(says, key -> new ArrayList<>()).add(i);
            }
        }
    }

    /** One list of ways for each kind of groove. */
    List<List<Placing>> all() {
        return alike.values().stream().map(this::ways).toList();
    }

    private List<Placing> ways(List<Integer> sections) {
        if (sections.size() == 1) {
            return new SectionWays(subject, sections.getFirst()).all().getFirst();
        }
        Section.Groove first = (Section.Groove) subject.body().outside().get(sections.getFirst());
        Wording wording = Wording.of(sections.size() + "× ").then(subject.text().diameter(first.diameter()));
        Label label = Subject.inscription(wording);
        return sections.stream()
                .flatMap(index -> new SectionWays(subject, index).leaders(label, LEADER, MIDDLE).stream())
                .toList();
    }
}
