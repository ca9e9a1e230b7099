package stillroom.science.meter;

import java.util.List;

/** Published tables of calibration buffers. */
public final class ReferenceBuffers {

    private static final String JIS = "JIS Z 8802 (confirmed 2011), read";
    private static final String BOTTLE =
            "technical buffers named by their pH at 25 °C, from the buffer tables of a pH analyser's manual, read; the "
                    + "table on the bottle goes before";
    private static final List<Double> TO_50 = List.of(0., 5., 10., 15., 20., 25., 30., 35., 40., 45., 50.);

    public static final BufferTable OXALATE = new BufferTable(
            "oxalate", JIS, TO_50, List.of(1.67, 1.67, 1.67, 1.67, 1.68, 1.68, 1.69, 1.69, 1.70, 1.70, 1.71));
    public static final BufferTable PHTHALATE = new BufferTable(
            "phthalate", JIS, TO_50, List.of(4.01, 4.01, 4.00, 4.00, 4.00, 4.01, 4.01, 4.02, 4.03, 4.04, 4.06));
    public static final BufferTable NEUTRAL_PHOSPHATE = new BufferTable(
            "neutral phosphate", JIS, TO_50, List.of(6.98, 6.95, 6.92, 6.90, 6.88, 6.86, 6.85, 6.84, 6.84, 6.83, 6.83));
    public static final BufferTable BORATE = new BufferTable(
            "borate", JIS, TO_50, List.of(9.46, 9.39, 9.33, 9.27, 9.22, 9.18, 9.14, 9.10, 9.07, 9.04, 9.01));
    /** Ends at 38 °C. */
    public static final BufferTable CARBONATE = new BufferTable(
            "carbonate",
            JIS,
            List.of(0., 5., 10., 15., 20., 25., 30., 35., 38.),
            List.of(10.32, 10.25, 10.18, 10.12, 10.07, 10.02, 9.97, 9.93, 9.91));
    /** The usual bottle named 4.00 or 4.01. */
    public static final BufferTable BOTTLE_4 = new BufferTable(
            "buffer 4.01", BOTTLE, TO_50, List.of(4.00, 4.00, 4.00, 4.00, 4.00, 4.00, 4.01, 4.02, 4.03, 4.04, 4.06));
    /** The usual bottle named 7.00. */
    public static final BufferTable BOTTLE_7 = new BufferTable(
            "buffer 7.00", BOTTLE, TO_50, List.of(7.12, 7.09, 7.06, 7.04, 7.02, 7.00, 6.99, 6.99, 6.98, 6.98, 6.97));
    /** The usual bottle named 10.01. */
    public static final BufferTable BOTTLE_10 = new BufferTable(
            "buffer 10.01",
            BOTTLE,
            TO_50,
            List.of(10.32, 10.25, 10.18, 10.12, 10.06, 10.01, 9.97, 9.93, 9.89, 9.86, 9.83));

    private ReferenceBuffers() {}

    /** All of them. */
    public static List<BufferTable> all() {
        return List.of(OXALATE, PHTHALATE, NEUTRAL_PHOSPHATE, BORATE, CARBONATE, BOTTLE_4, BOTTLE_7, BOTTLE_10);
    }
}
