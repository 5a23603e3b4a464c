package chargehand.trade.thread;

import chargehand.measure.LengthUnit;

/** A family of threads that share a form and a standard. */
public enum ThreadSeries {
    METRIC_COARSE("ISO metric coarse", ThreadForm.ISO_METRIC, LengthUnit.MILLIMETRE, "metric-coarse", "ISO 261"),
    METRIC_FINE("ISO metric fine", ThreadForm.ISO_METRIC, LengthUnit.MILLIMETRE, "metric-fine", "ISO 261"),
    UNC("Unified coarse", ThreadForm.UNIFIED, LengthUnit.INCH, "unc", "ASME B1.1"),
    UNF("Unified fine", ThreadForm.UNIFIED, LengthUnit.INCH, "unf", "ASME B1.1"),
    UN("Unified form, other pitch", ThreadForm.UNIFIED, LengthUnit.INCH, "", "ASME B1.1"),
    BSW("British Standard Whitworth", ThreadForm.WHITWORTH, LengthUnit.INCH, "bsw", "BS 84"),
    BSF("British Standard Fine", ThreadForm.WHITWORTH, LengthUnit.INCH, "bsf", "BS 84"),
    WHITWORTH("Whitworth form, other pitch", ThreadForm.WHITWORTH, LengthUnit.INCH, "", "BS 84"),
    BSP("British Standard Pipe, parallel", ThreadForm.WHITWORTH_PIPE, LengthUnit.MILLIMETRE, "bsp", "ISO 228-1"),
    BSP_TAPER_OUTSIDE(
            "British Standard Pipe, taper outside",
            ThreadForm.WHITWORTH_PIPE,
            LengthUnit.MILLIMETRE,
            "bspt",
            "ISO 7-1"),
    BSP_TAPER_INSIDE(
            "British Standard Pipe, taper inside", ThreadForm.WHITWORTH_PIPE, LengthUnit.MILLIMETRE, "bspt", "ISO 7-1"),
    BSP_PARALLEL_INSIDE(
            "British Standard Pipe, parallel inside for a taper outside",
            ThreadForm.WHITWORTH_PIPE,
            LengthUnit.MILLIMETRE,
            "bspt",
            "ISO 7-1"),
    BA("British Association", ThreadForm.BRITISH_ASSOCIATION, LengthUnit.MILLIMETRE, "", "BS 93"),
    TRAPEZOIDAL("ISO trapezoidal", ThreadForm.TRAPEZOIDAL, LengthUnit.MILLIMETRE, "trapezoidal", "ISO 2902"),
    ACME("Acme, general purpose", ThreadForm.ACME, LengthUnit.INCH, "acme", "ASME B1.5"),
    SQUARE("Square", ThreadForm.SQUARE, LengthUnit.INCH, "square", "Sellers series"),
    BRASS("British Standard Brass", ThreadForm.WHITWORTH, LengthUnit.INCH, "brass", "common practice"),
    CYCLE("Cycle", ThreadForm.CYCLE, LengthUnit.INCH, "cycle", "BS 811"),
    MODEL_ENGINEER("Model Engineer", ThreadForm.WHITWORTH, LengthUnit.INCH, "model-engineer", "common practice"),
    CONDUIT("Electric conduit", ThreadForm.WHITWORTH, LengthUnit.INCH, "conduit", "BS 31");

    private final String title;
    private final ThreadForm form;
    private final LengthUnit unit;
    private final String table;
    private final String standard;

    ThreadSeries(String title, ThreadForm form, LengthUnit unit, String table, String standard) {
        this.title = title;
        this.form = form;
        this.unit = unit;
        this.table = table;
        this.standard = standard;
    }

    /** What a person calls it. */
    public String title() {
        return title;
    }

    public ThreadForm form() {
        return form;
    }

    /** The unit its sizes are published in. */
    public LengthUnit unit() {
        return unit;
    }

    /** The standard or practice that lists its sizes. */
    public String standard() {
        return standard;
    }

    /** Whether its diameters change along the thread, 1 in 16. */
    public boolean isTaper() {
        return this == BSP_TAPER_OUTSIDE || this == BSP_TAPER_INSIDE;
    }

    /** The resource that lists its sizes, without its ending; empty where a rule or the person gives them. */
    String table() {
        return table;
    }
}
