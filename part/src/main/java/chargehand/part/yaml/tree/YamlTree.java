package chargehand.part.yaml.tree;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Reads a YAML text into {@link Twig}s. */
public final class YamlTree {
    /** The longest text that is read (characters). */
    public static final int MOST_CHARACTERS = 200_000;

    private static final int MOST_LEVELS = 12;
    /** How YAML itself writes nothing. */
    private static final Set<String> NOTHING = Set.of("~", "null", "Null", "NULL");

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setLabel("file")
            .setCodePointLimit(MOST_CHARACTERS)
            .build();

    private final Iterator<Event> events;
    private final Faults faults;
    private final List<String> lines;

    private YamlTree(String text, Faults faults) {
        this.events = new Parse(SETTINGS).parseString(text).iterator();
        this.faults = faults;
        this.lines = text.lines().toList();
    }

    /**
     * Reads a text as far as it can be read.
     *
     * @param faults takes what is wrong with it
     * @return the tree, or nothing when the text is not laid out as YAML or holds nothing
     */
    public static Optional<Twig> read(String text, Faults faults) {
        if (text.length() > MOST_CHARACTERS) {
            faults.add(
                    Place.START,
                    ReadingFault.TOO_LONG,
                    "This file has " + text.length() + " characters: no more than " + MOST_CHARACTERS + " are read.");
            return Optional.empty();
        }
        try {
            return new YamlTree(text, faults).document();
        } catch (YamlEngineException e) {
            Layout.refuse(e, text, faults);
            return Optional.empty();
        } catch (TooDeep e) {
            faults.add(e.place, ReadingFault.TOO_DEEP, "Keys and lists lie more than " + MOST_LEVELS + " deep here.");
            return Optional.empty();
        }
    }

    private Optional<Twig> document() {
        Optional<Twig> first = Optional.empty();
        int documents = 0;
        while (events.hasNext()) {
            Event event = events.next();
            if (event.getEventId() == Event.ID.DocumentStart) {
                documents++;
                refuseSecond(documents, event);
                Twig twig = twig(events.next(), "", 0);
                first = first.or(() -> Optional.of(twig));
            }
        }
        if (documents == 0) {
            faults.add(Place.START, ReadingFault.NOTHING_WRITTEN, "Nothing is written in this file.");
        }
        return first;
    }

    private void refuseSecond(int documents, Event event) {
        if (documents == 2) {
            faults.add(place(event, ""), ReadingFault.NOT_PLAIN, "A second document begins here: a file holds one.");
        }
    }

    private Twig twig(Event event, String path, int level) {
        Place place = place(event, path);
        if (level > MOST_LEVELS) {
            throw new TooDeep(place);
        }
        refuseUnplain(event, place);
        return switch (event) {
            case ScalarEvent scalar -> leaf(scalar, place);
            case MappingStartEvent start -> branch(place, level);
            case CollectionStartEvent start -> row(place, level);
            default -> new Twig.Leaf(place, "", false);
        };
    }

    private Twig.Leaf leaf(ScalarEvent scalar, Place place) {
        String value = scalar.isPlain() && NOTHING.contains(scalar.getValue())
                ? ""
                : scalar.getValue().strip();
        return new Twig.Leaf(place, value, value.isEmpty() && isRemarkAt(place));
    }

    /** Whether a remark begins on the line of a place, at it or after it. */
    private boolean isRemarkAt(Place place) {
        String line = lines.size() < place.line() ? "" : lines.get(place.line() - 1);
        return line.indexOf('#', Math.min(place.column() - 1, line.length())) >= 0;
    }

    private void refuseUnplain(Event event, Place place) {
        boolean anchored = event instanceof NodeEvent node && node.getAnchor().isPresent();
        if (anchored || event instanceof AliasEvent) {
            faults.add(
                    place,
                    ReadingFault.NOT_PLAIN,
                    "An anchor or a reference (& or *) stands here: write the value out, or in quotes.");
        }
        Optional<String> tag = switch (event) {
            case ScalarEvent scalar -> scalar.getTag();
            case CollectionStartEvent start -> start.getTag();
            default -> Optional.empty();
        };
        tag.ifPresent(name -> faults.add(
                place, ReadingFault.NOT_PLAIN, "A tag (!) stands here: write the value without it, or in quotes."));
    }

    private Twig.Row row(Place place, int level) {
        List<Twig> items = new ArrayList<>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            items.add(twig(event, place.pathOf(items.size() + 1), level + 1));
            event = events.next();
        }
        return new Twig.Row(place, items);
    }

    private Twig.Branch branch(Place place, int level) {
        Map<String, Twig.Entry> entries = new LinkedHashMap<>();
        Event event = events.next();
        while (event.getEventId() != Event.ID.MappingEnd) {
            entry(event, place, level, entries);
            event = events.next();
        }
        return new Twig.Branch(place, entries);
    }

    private void entry(Event keyEvent, Place place, int level, Map<String, Twig.Entry> entries) {
        Twig key = twig(keyEvent, place.path(), level + 1);
        String name = key instanceof Twig.Leaf leaf ? leaf.text() : "";
        Place keyPlace =
                new Place(place.pathOf(name), key.place().line(), key.place().column());
        Twig value = twig(events.next(), keyPlace.path(), level + 1);
        if (name.isEmpty()) {
            faults.add(key.place(), ReadingFault.WRONG_KIND, "A key is a word: " + key.kind() + " stands here.");
        } else if (entries.containsKey(name)) {
            faults.add(
                    keyPlace,
                    ReadingFault.KEY_TWICE,
                    again(name, entries.get(name).key(), place));
        } else {
            entries.put(name, new Twig.Entry(keyPlace, value));
        }
    }

    private static String again(String name, Place first, Place branch) {
        String hint = branch.path().endsWith("]") ? " A new entry begins with a dash." : "";
        return "'" + name + "' stands here again: it is in line " + first.line() + "." + hint;
    }

    private static Place place(Event event, String path) {
        return event.getStartMark().map(mark -> place(mark, path)).orElse(Place.START);
    }

    static Place place(Mark mark, String path) {
        return new Place(path, mark.getLine() + 1, mark.getColumn() + 1);
    }

    /** Ends the reading of a file that nests too deep. */
    private static final class TooDeep extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Place place;

        TooDeep(Place place) {
            super(place.path());
            this.place = place;
        }
    }
}
