package chargehand.trade.material;

/** What a cutting edge is made of. */
public enum ToolMaterial {
    HSS("high-speed steel"),
    CARBIDE("carbide");

    private final String title;

    ToolMaterial(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
