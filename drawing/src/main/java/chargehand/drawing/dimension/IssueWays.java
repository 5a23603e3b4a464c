package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.IssueMark;
import chargehand.drawing.view.Cut;
import chargehand.part.Bore;
import chargehand.part.DrawingIssue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** The letters of issues at the sections and bores that they changed, the latest where several changed one. */
record IssueWays(Subject subject) {
    private static final double HEIGHT = 2.5;
    private static final double BASE = 4;
    private static final List<Double> PARTS = List.of(0.35, 0.65, 0.2, 0.8);

    /** One list of ways for each feature that an issue changed and that is seen from the side. */
    List<List<Placing>> all() {
        Map<String, String> letters = new LinkedHashMap<>();
        for (DrawingIssue issue : subject.part().drafting().issues()) {
            issue.at().ifPresent(feature -> letters.put(feature, issue.letter()));
        }
        List<List<Placing>> all = new ArrayList<>();
        letters.forEach((feature, letter) ->
                ways(feature, new IssueMark(letter, HEIGHT)).ifPresent(all::add));
        return all;
    }

    private Optional<List<Placing>> ways(String feature, IssueMark mark) {
        Optional<List<Placing>> section = IntStream.range(
                        0, subject.body().outside().size())
                .filter(i -> subject.body().outside().get(i).name().equals(feature))
                .mapToObj(i -> new SectionWays(subject, i).leaders(mark, BASE, PARTS))
                .findFirst();
        return section.isPresent() ? section : bore(feature).map(bore -> ways(bore, mark));
    }

    private Optional<Bore> bore(String name) {
        return subject.look().cut() == Cut.NONE
                ? Optional.empty()
                : subject.body().inside().stream()
                        .filter(bore -> bore.name().equals(name))
                        .findFirst();
    }

    private List<Placing> ways(Bore bore, IssueMark mark) {
        Point mouth = new Point(subject.x(bore.from()), subject.size(BoreWays.radius(bore)));
        return new LeaderWays(mark, BASE).beyond(mouth, Subject.out(bore.from()));
    }
}
