package chargehand.part.yaml;

import chargehand.part.LengthWish;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Puts other wishes about lengths into a part's file and leaves all else of it as it was written, remarks too. */
final class WishesInText {
    private static final Pattern KEY = Pattern.compile("lengths\\s*:.*");

    /** What begins at the edge and is neither a remark nor an entry of a list is another key. */
    private static final Pattern OTHER_KEY = Pattern.compile("[^\\s#-].*");

    private WishesInText() {}

    static String with(String text, Part part, List<LengthWish> wishes) {
        Part wanted = part.with(part.drafting().with(wishes));
        String patched = patched(text, wishes);
        return PartFile.read(patched) instanceof PartReading.Read read
                        && read.part().equals(wanted)
                ? patched
                : PartFile.write(wanted);
    }

    private static String patched(String text, List<LengthWish> wishes) {
        List<String> kept = new ArrayList<>();
        boolean within = false;
        int at = -1;
        for (String line : text.stripTrailing().split("\n", -1)) {
            boolean begins = KEY.matcher(line).matches();
            within = begins || (within && !OTHER_KEY.matcher(line).matches());
            at = begins ? kept.size() : at;
            if (!within || line.strip().startsWith("#")) {
                kept.add(line);
            }
        }
        var lines = new YamlLines();
        LengthWishForm.write(wishes, lines);
        String written = lines.text().stripTrailing();
        if (!written.isEmpty()) {
            kept.add(at < 0 ? kept.size() : at, written);
        }
        return String.join("\n", kept) + "\n";
    }
}
