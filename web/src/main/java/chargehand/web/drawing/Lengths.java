package chargehand.web.drawing;

import chargehand.drawing.dimension.GivenLengths;
import chargehand.drawing.dimension.GivenLengths.Circle;
import chargehand.drawing.dimension.GivenLengths.Given;
import chargehand.part.Body;
import chargehand.part.LengthWish.Giving;
import chargehand.part.LengthWish.LengthSide;
import chargehand.part.LengthWish.Tier;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The lengths of a drawing, each with what may be done to it.
 *
 * @param rows one for each length
 * @param faces the names of the faces from end A on; a length to be added is asked for by their numbers
 * @param clashes what was asked for and follows from other lengths
 * @param chosen the faces that stand chosen for another length
 */
public record Lengths(List<Row> rows, List<String> faces, List<Clash> clashes, Ends chosen) {
    /** Where nothing can be drawn, and of a block. */
    static final Lengths NONE = new Lengths(List.of(), List.of(), List.of(), new Ends("", ""));

    /** Two faces as a form sends them, by their numbers. */
    public record Ends(String from, String to) {}

    public Lengths {
        rows = List.copyOf(rows);
        faces = List.copyOf(faces);
        clashes = List.copyOf(clashes);
    }

    /**
     * A length.
     *
     * @param mark its name on the page, such as {@code length-0-3}
     * @param says as it is printed
     * @param between the names of its faces
     * @param changed whether somebody wanted it otherwise than the rules have it
     */
    public record Row(String mark, String says, String between, boolean changed, List<Choice> choices) {}

    /** Something that may be done: what the key says and what it sends. */
    public record Choice(String label, String sends) {}

    /** A length that closes a circle with others: what is said of it, and the ways out. */
    public record Clash(String say, List<Choice> ways) {}

    static Lengths of(Part part) {
        return switch (part.body()) {
            case Body.Turned body -> of(body, GivenLengths.of(part));
            case Body.Block block -> NONE;
        };
    }

    private static Lengths of(Body.Turned body, GivenLengths given) {
        List<String> faces = IntStream.rangeClosed(0, body.outside().size())
                .mapToObj(face -> face(body, face))
                .toList();
        return new Lengths(
                given.lengths().stream().map(length -> row(faces, length)).toList(),
                faces,
                given.circles().stream().map(circle -> clash(faces, circle)).toList(),
                new Ends("0", Integer.toString(faces.size() - 1)));
    }

    /** The same with what was asked for just now and cannot be, the faces as they were chosen. */
    Lengths with(List<Clash> others, Ends asked) {
        return new Lengths(rows, faces, others, asked);
    }

    private static String face(Body.Turned body, int face) {
        if (face == 0) {
            return "end A";
        }
        if (face == body.outside().size()) {
            return "end B";
        }
        return body.outside().get(face - 1).name() + " / "
                + body.outside().get(face).name();
    }

    static String mark(Given length) {
        return "length-" + length.from() + "-" + length.to();
    }

    private static String between(List<String> faces, Given length) {
        return "from " + faces.get(length.from()) + " to " + faces.get(length.to());
    }

    private static Row row(List<String> faces, Given length) {
        return new Row(
                mark(length),
                length.says(),
                between(faces, length),
                !length.wish().isEmpty(),
                choices(length));
    }

    private static List<Choice> choices(Given length) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("Nearer the part", Wanted.sends(Tier.NEARER, length)));
        choices.add(new Choice("Farther out", Wanted.sends(Tier.FARTHER, length)));
        choices.add(new Choice("Above the view", Wanted.sends(LengthSide.ABOVE, length)));
        choices.add(new Choice("Below the view", Wanted.sends(LengthSide.BELOW, length)));
        if (length.bracketed()) {
            choices.add(new Choice("Without brackets", Wanted.sends(Giving.PLAIN, length)));
        } else if (!length.limited()) {
            choices.add(new Choice("In brackets", Wanted.sends(Giving.BRACKETED, length)));
        }
        if (!length.limited()) {
            choices.add(new Choice("Leave it out", Wanted.sends(Giving.LEFT_OUT, length)));
        }
        if (!length.wish().isEmpty()) {
            choices.add(new Choice("As it was chosen", Wanted.usual(length)));
        }
        return choices;
    }

    private static String bare(Given length) {
        return length.says().replaceAll("^\\(|\\)$", "");
    }

    static Clash clash(List<String> faces, Circle circle) {
        Given wanted = circle.wanted();
        String others = circle.others().stream()
                .map(other -> bare(other) + " " + between(faces, other))
                .collect(Collectors.joining(", and "));
        List<Choice> ways = new ArrayList<>();
        ways.add(new Choice("Give " + bare(wanted) + " in brackets", Wanted.sends(Giving.BRACKETED, wanted)));
        for (Given other : circle.others()) {
            if (!other.limited()) {
                String add = Wanted.sends(Giving.PLAIN, wanted) + Wanted.AND;
                ways.add(new Choice(bare(other) + " in brackets", add + Wanted.sends(Giving.BRACKETED, other)));
                ways.add(new Choice(bare(other) + " left out", add + Wanted.sends(Giving.LEFT_OUT, other)));
            }
        }
        return new Clash(
                bare(wanted) + " " + between(faces, wanted) + " closes a circle with " + others
                        + ": each of them follows from the rest, so all cannot be given. Take one out of the circle.",
                ways);
    }
}
