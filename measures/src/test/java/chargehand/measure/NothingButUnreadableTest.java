package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever is written, a reader answers or refuses plainly; it throws nothing else and its sentences hold no code. */
class NothingButUnreadableTest {
    private static final int TRIES = 10_000;
    private static final List<String> SEEDS = List.of(
            "1 3/8",
            "1-3/8 in",
            ".8125\"",
            "20,6 mm",
            "5 thou",
            "10 - 1/64",
            "2' 3 1/2\"",
            "25 µm",
            "±0.1",
            "+0.02/-0.01",
            "5° 30' 15\"",
            "11 1/2 tpi",
            "450 N",
            "40 N·m",
            "250 N/mm²",
            "1:50",
            "1 h 50",
            "1 in 48",
            "75 %",
            "1⅜",
            "-0.02",
            "3/4 in per ft",
            "1e308",
            "NaN",
            "Infinity",
            "0x1F",
            "1/0",
            "999999999999999999",
            "1,500");
    private static final String PIECES =
            "0123456789../,-+±'\"°%:;()x×·µ⅜½²³⁄₈−–′″ \u00A0\u200B\u0000\n\ud83dabdfhiklmnoprstuNMPWØ∞٣";

    @Test
    void read_mutatedText_throwsNothingElse() {
        var random = new Random(51);
        int answered = 0;
        for (int i = 0; i < TRIES; i++) {
            answered += triesAll(mutated(SEEDS.get(random.nextInt(SEEDS.size())), random)) ? 1 : 0;
        }
        assertThat(answered).as("some mutations still read").isBetween(TRIES / 20, TRIES);
    }

    @Test
    void read_randomText_throwsNothingElse() {
        var random = new Random(52);
        for (int i = 0; i < TRIES; i++) {
            var text = new StringBuilder();
            for (int length = random.nextInt(12); length > 0; length--) {
                text.append(piece(random));
            }
            triesAll(text.toString());
        }
    }

    @Test
    void read_veryLongText_throwsNothingElse() {
        for (String seed : SEEDS) {
            triesAll(seed.repeat(20));
            triesAll(seed.repeat(10_000));
        }
    }

    private static boolean triesAll(String text) {
        boolean any = reads(text, () -> Deviations.read(text, LengthUnit.INCH));
        any |= reads(text, () -> Notations.count(0, 1000).read(text, LengthUnit.INCH));
        for (Notation<?> notation : AllNotations.LIST) {
            any |= reads(text, () -> shown(notation, text));
        }
        return any;
    }

    private static <Q> String shown(Notation<Q> notation, String text) {
        return notation.text(notation.read(text, LengthUnit.INCH), LengthUnit.INCH);
    }

    private static boolean reads(String text, Runnable reading) {
        try {
            reading.run();
            return true;
        } catch (Unreadable refused) {
            if (!isPlain(refused.say())) {
                throw new AssertionError("'" + text + "' is refused by: " + refused.say(), refused);
            }
            return false;
        } catch (RuntimeException other) {
            throw new AssertionError("'" + text + "' brought " + other, other);
        }
    }

    private static boolean isPlain(String say) {
        return say.endsWith(".") && say.length() < 400 && say.chars().noneMatch(Character::isISOControl);
    }

    private static String mutated(String seed, Random random) {
        var text = new StringBuilder(seed);
        for (int changes = random.nextInt(4); changes > 0 && !text.isEmpty(); changes--) {
            int at = random.nextInt(text.length());
            switch (random.nextInt(4)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.setCharAt(at, piece(random));
                case 2 -> text.insert(at, SEEDS.get(random.nextInt(SEEDS.size())));
                default -> text.insert(at, piece(random));
            }
        }
        return text.toString();
    }

    private static char piece(Random random) {
        return PIECES.charAt(random.nextInt(PIECES.length()));
    }
}
