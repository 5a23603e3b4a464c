package chargehand.book.use;

import static chargehand.book.use.Shopfloor.done;
import static chargehand.book.use.Shopfloor.fieldsRefused;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.Changed;
import chargehand.book.job.JobNumber;
import chargehand.book.shop.Shop;
import chargehand.book.shop.ShopAsWritten;
import chargehand.book.shop.ShopTexts;
import chargehand.measure.LengthUnit;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class KeepShopTest {
    private final Shopfloor shop = new Shopfloor();
    private final KeepShop keep = shop.desk.keepShop();
    private final KeepTexts texts = shop.desk.keepTexts();

    @Test
    void shop_keptFieldByField_staysAsItWasElsewhere() {
        done(keep.keep(new ShopAsWritten(Map.of(ShopAsWritten.NAME, " Kelderhaven ", ShopAsWritten.UNIT, "in"))));
        done(keep.keep(new ShopAsWritten(Map.of(ShopAsWritten.FIRST_JOB, "201"))));
        assertThat(keep.shop()).isEqualTo(new Shop("Kelderhaven", LengthUnit.INCH, new JobNumber(201)));
    }

    @Test
    void shop_writtenWrongly_isRefusedWithEveryField() {
        Shop before = keep.shop();
        assertThat(fieldsRefused(keep.keep(new ShopAsWritten(Map.of(
                        ShopAsWritten.NAME, "", ShopAsWritten.UNIT, "ell", ShopAsWritten.FIRST_JOB, "2000000")))))
                .containsExactly(ShopAsWritten.NAME, ShopAsWritten.UNIT, ShopAsWritten.FIRST_JOB);
        assertThat(keep.shop()).isEqualTo(before);
    }

    @Test
    void text_written_makesANewEdition() {
        ShopTexts next = done(texts.write("kit/lathe.yaml", "swing: 13 in", 1, "lead hand"));
        assertThat(next.edition()).isEqualTo(2);
        assertThat(next.kit()).containsExactly(Map.entry("lathe.yaml", "swing: 13 in"));
        assertThat(next.rack()).contains("a bar");
        assertThat(texts.texts(1).orElseThrow().kit()).isEmpty();
        assertThat(done(texts.write("kit/lathe.yaml", "swing: 13 in", 2, "lead hand")))
                .isEqualTo(next);
    }

    @Test
    void text_writtenByTwo_keepsTheFirst() {
        ShopTexts first = done(texts.write(ShopTexts.RACK, "two bars", 1, "lead hand"));
        assertThat(texts.write(ShopTexts.RACK, "no bars", 1, "helper")).isEqualTo(new Changed.Overtaken<>(first));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "kit", "kit/", "kit/../rack.yaml", "/etc/passwd", "kit/a b.yaml", "Rack.yaml", "kit/x.txt"})
    void file_ofAnotherName_isRefused(String name) {
        assertThat(fieldsRefused(texts.write(name, "x", 1, "lead hand"))).containsExactly("name");
    }

    @Test
    void text_thatIsNone_isRefused() {
        assertThat(fieldsRefused(texts.write(ShopTexts.RACK, "", 1, ""))).containsExactly("who", ShopTexts.RACK);
        assertThat(texts.texts().edition()).isEqualTo(1);
    }
}
