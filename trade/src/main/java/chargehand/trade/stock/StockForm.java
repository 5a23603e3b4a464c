package chargehand.trade.stock;

/** What the rough piece is. */
public enum StockForm {
    BLACK_BAR("black bar", true),
    BRIGHT_BAR("bright bar", true),
    CASTING("casting", false),
    SAWN("sawn", false),
    FLAME_CUT("flame-cut", false),
    FORGING("forging", false);

    private final String word;
    private final boolean bar;

    StockForm(String word, boolean bar) {
        this.word = word;
        this.bar = bar;
    }

    /** The words it is asked by. */
    public String word() {
        return word;
    }

    /** Whether the part is parted off a bar held in the chuck, so that the bar must be longer by grip and parting. */
    public boolean isBar() {
        return bar;
    }
}
