package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;

/** Helical springs. */
final class SpringRows {
    private SpringRows() {}

    static Topic add(Topic topic) {
        return topic.asks("wahl", SpringRows::wahl)
                .asks("spring_rate", SpringRows::rate)
                .asks("spring_turns", SpringRows::turns)
                .asks("spring_design", SpringRows::design);
    }

    private static Query spring(Object wire, Object mean, Object coils) {
        return Query.of("spring")
                .with("wire", wire + " mm")
                .with("mean", mean + " mm")
                .with("coils", coils);
    }

    private static Query wahl(PublishedRow row) {
        return spring(10, 10 * row.number("C"), 5)
                .gives("index", row.number("C"), within(1e-9))
                .gives("wahl", row, "K");
    }

    private static Query rate(PublishedRow row) {
        return spring(row.given("d"), row.given("D"), row.given("active"))
                .with("stiffness", row.text("G") + " MPa")
                .with("load", row.text("F") + " N")
                .gives("rate.NPerMm", row, "k_N_mm")
                .gives("wahl", row, "K_wahl")
                .gives("stress.MPa", row, "tau_MPa")
                .gives("deflection.mm", row, "deflection");
    }

    private static Query turns(PublishedRow row) {
        return spring(row.given("d"), row.given("D"), row.want("N"))
                .with("stiffness", row.text("G") + " MPa")
                .gives("rate.NPerMm", row.number("k"), within(row.number("k") * 1e-6));
    }

    /** Bhandari 10.1: 7 mm wire on 42 mm, 8 active coils, squared and ground; he leaves a millimetre between coils at rest. */
    private static Query design(PublishedRow row) {
        double load = row.number("P");
        return spring(row.wanted("d"), row.wanted("D"), row.wanted("N"))
                .with("stiffness", row.text("G") + " MPa")
                .with("ends", row.text("ends").replace("+", " and "))
                .with("load", load + " N")
                .gives("index", row.number("C"), within(1e-9))
                .gives("solid.mm", row.want("Nt") * row.want("d"), within(1e-9))
                .holds(reply -> {
                    double gaps = (row.want("Nt") - 1) * row.number("gap");
                    double free = reply.number("solid.mm") + gaps + reply.number("deflection.mm");
                    assertThat(free).isCloseTo(row.want("free_len"), row.within("free_len"));
                    assertThat(free / (row.want("Nt") - 1)).isCloseTo(row.want("pitch"), row.within("pitch"));
                    // The wire reckoned is the one whose stress would be just what is allowed; he takes the next size
                    // up.
                    double allowed = row.number("Sut") * row.number("tau_fraction");
                    double least = Math.sqrt(8 * load * row.number("C") * reply.number("wahl") / (Math.PI * allowed));
                    assertThat(least).isCloseTo(row.want("d_calc"), row.within("d_calc"));
                    assertThat(reply.number("stress.MPa")).isLessThan(allowed);
                });
    }
}
