package chargehand.drawing.dxf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A DXF file as it is read: split into groups, sections, tables and entities by the rules of the format for release 12 and
 * by nothing of the writer. What breaks a rule throws.
 *
 * @param header the first value of each variable
 * @param lineTypes the names defined
 * @param layers the names defined with their kind of line
 * @param styles the names defined
 * @param entities in order
 */
record Reading(
        Map<String, String> header,
        Set<String> lineTypes,
        Map<String, String> layers,
        Set<String> styles,
        List<Entity> entities) {
    private static final Map<String, List<Integer>> REQUIRED = Map.of(
            "LINE", List.of(8, 10, 20, 11, 21),
            "CIRCLE", List.of(8, 10, 20, 40),
            "ARC", List.of(8, 10, 20, 40, 50, 51),
            "TEXT", List.of(8, 10, 20, 40, 1),
            "SOLID", List.of(8, 10, 20, 11, 21, 12, 22, 13, 23),
            "POLYLINE", List.of(8, 66),
            "VERTEX", List.of(8, 10, 20),
            "SEQEND", List.of(8));

    /** A code and its value. */
    record Group(int code, String value) {}

    /** One entity: its kind and its groups by code, the last of each. */
    record Entity(String kind, Map<Integer, String> groups) {
        String layer() {
            return groups.getOrDefault(8, "");
        }

        double number(int code) {
            String value = groups.get(code);
            if (value == null || !value.matches("-?\\d+(\\.\\d+)?")) {
                throw new IllegalStateException(kind + ": group " + code + " is no number but " + value);
            }
            return Double.parseDouble(value);
        }

        boolean has(int code) {
            return groups.containsKey(code);
        }
    }

    static Reading of(String text) {
        return new Reader(groups(text)).read();
    }

    private static List<Group> groups(String text) {
        if (!StandardCharsets.US_ASCII.newEncoder().canEncode(text)) {
            throw new IllegalStateException("not ASCII");
        }
        String[] lines = text.split("\r\n", -1);
        if (!lines[lines.length - 1].isEmpty() || lines.length % 2 == 0) {
            throw new IllegalStateException("a code without its value");
        }
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i + 1 < lines.length; i += 2) {
            if (!lines[i].matches("[ \\d]{2}\\d") || lines[i + 1].contains("\n")) {
                throw new IllegalStateException("no code on line " + (i + 1) + ": " + lines[i]);
            }
            Group group = new Group(Integer.parseInt(lines[i].strip()), lines[i + 1]);
            if (group.code != 999) {
                groups.add(group);
            }
        }
        return groups;
    }

    /** Goes through the groups from first to last. */
    private static final class Reader {
        private final List<Group> groups;
        private int at;
        private final Reading reading = new Reading(
                new LinkedHashMap<>(),
                new LinkedHashSet<>(),
                new LinkedHashMap<>(),
                new LinkedHashSet<>(),
                new ArrayList<>());

        Reader(List<Group> groups) {
            this.groups = groups;
        }

        Reading read() {
            for (String section : List.of("HEADER", "TABLES", "BLOCKS", "ENTITIES")) {
                take(0, "SECTION");
                take(2, section);
                while (!isNext("ENDSEC")) {
                    switch (section) {
                        case "HEADER" -> variable();
                        case "TABLES" -> table();
                        case "ENTITIES" -> entity();
                        default -> throw new IllegalStateException("something in " + section);
                    }
                }
                take(0, "ENDSEC");
            }
            take(0, "EOF");
            if (at != groups.size()) {
                throw new IllegalStateException("something after the end");
            }
            return reading;
        }

        private boolean isNext(String word) {
            return groups.get(at).equals(new Group(0, word));
        }

        private void take(int code, String value) {
            if (at >= groups.size() || !groups.get(at).equals(new Group(code, value))) {
                throw new IllegalStateException("wanted " + code + " " + value + " at group " + at);
            }
            at++;
        }

        private String take(int code) {
            Group group = groups.get(at++);
            if (group.code != code) {
                throw new IllegalStateException("wanted code " + code + ", found " + group);
            }
            return group.value;
        }

        private void variable() {
            String name = take(9);
            reading.header.put(name, groups.get(at).value);
            while (groups.get(at).code != 9 && groups.get(at).code != 0) {
                at++;
            }
        }

        private void table() {
            take(0, "TABLE");
            String name = take(2);
            int entries = Integer.parseInt(take(70));
            for (int i = 0; i < entries; i++) {
                take(0, name);
                Map<Integer, String> entry = values();
                switch (name) {
                    case "LTYPE" -> reading.lineTypes.add(entry.get(2));
                    case "LAYER" -> reading.layers.put(entry.get(2), entry.get(6));
                    case "STYLE" -> reading.styles.add(entry.get(2));
                    default -> throw new IllegalStateException("a table " + name);
                }
            }
            take(0, "ENDTAB");
        }

        private void entity() {
            String kind = take(0);
            List<Integer> required = REQUIRED.get(kind);
            if (required == null) {
                throw new IllegalStateException("release 12 has no " + kind + " here");
            }
            Entity entity = new Entity(kind, values());
            if (!entity.groups.keySet().containsAll(required)) {
                throw new IllegalStateException(kind + " lacks one of " + required + ": " + entity.groups);
            }
            reading.entities.add(entity);
        }

        private Map<Integer, String> values() {
            Map<Integer, String> values = new LinkedHashMap<>();
            while (groups.get(at).code != 0) {
                values.put(groups.get(at).code, groups.get(at).value);
                at++;
            }
            return values;
        }
    }
}
