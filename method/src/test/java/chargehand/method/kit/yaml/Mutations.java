package chargehand.method.kit.yaml;

import java.util.Random;

/** Changes a text as a slip of the hand would, by a seeded choice. */
public final class Mutations {
    private static final String SLIPS = "0123456789-/.:,{}[]\"'#&*!|>%@`~\t\n eEµ°½";

    private final Random random;

    public Mutations(long seed) {
        this.random = new Random(seed);
    }

    /** The text with one to four slips in it. */
    public String of(String text) {
        StringBuilder changed = new StringBuilder(text);
        int slips = 1 + random.nextInt(4);
        for (int i = 0; i < slips && !changed.isEmpty(); i++) {
            slip(changed);
        }
        return changed.toString();
    }

    private void slip(StringBuilder text) {
        int at = random.nextInt(text.length());
        int end = Math.min(text.length(), at + 1 + random.nextInt(12));
        switch (random.nextInt(6)) {
            case 0 -> text.deleteCharAt(at);
            case 1 -> text.setCharAt(at, slipped());
            case 2 -> text.insert(at, slipped());
            case 3 -> text.delete(at, end);
            case 4 -> text.insert(at, text.substring(at, end));
            default -> swapLines(text, at);
        }
    }

    private char slipped() {
        return SLIPS.charAt(random.nextInt(SLIPS.length()));
    }

    /** Takes the line at a place out and puts it in again elsewhere. */
    private void swapLines(StringBuilder text, int at) {
        int begin = text.lastIndexOf("\n", at) + 1;
        int end = text.indexOf("\n", at);
        if (end > begin) {
            String line = text.substring(begin, end + 1);
            text.delete(begin, end + 1);
            int to = text.lastIndexOf("\n", random.nextInt(Math.max(1, text.length()))) + 1;
            text.insert(to, line);
        }
    }
}
