package stillroom.desk.demonstration;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Lot;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/**
 * One delivery to the invented shelf, its days counted from today.
 *
 * @param grams that came in, and that were paid for together
 * @param daysAgo when it came
 * @param keepsDays from today; negative where it has expired
 */
record Delivery(String code, String material, String supplier, String grams, String paid, int daysAgo, int keepsDays) {
    private static final String CURLEW = "Curlew Ingredients (invented)";
    private static final String DUNEWOOD = "Dunewood Oils (invented)";
    private static final String OWN_TAP = "own still";

    static final List<Delivery> ALL = List.of(
            new Delivery("WAT-06", "water-purified", OWN_TAP, "8000", "1.00", 14, -5),
            new Delivery("WAT-07", "water-purified", OWN_TAP, "10000", "1.20", 2, 5),
            new Delivery("GLY-03", "glycerin-99", CURLEW, "5000", "24.00", 80, 560),
            new Delivery("SLE-02", "sles-27", CURLEW, "5000", "17.50", 60, 400),
            new Delivery("COC-05", "cocamidopropyl-betaine-30", CURLEW, "2000", "11.00", 60, 320),
            new Delivery("GLU-01", "sodium-gluconate", CURLEW, "500", "7.90", 140, 500),
            new Delivery("BEN-02", "sodium-benzoate", CURLEW, "500", "8.40", 140, 420),
            new Delivery("SOR-01", "potassium-sorbate", CURLEW, "250", "6.20", 330, 38),
            new Delivery("PER-04", "perfume-low-allergen", CURLEW, "250", "21.00", 50, 500),
            new Delivery("CIT-06", "citric-acid-50", CURLEW, "500", "5.60", 40, 320),
            new Delivery("SAL-01", "sodium-chloride", CURLEW, "1000", "3.10", 200, 1500),
            new Delivery("TRI-01", "sodium-citrate", CURLEW, "500", "5.90", 120, 600),
            new Delivery("ALL-01", "allantoin", CURLEW, "100", "6.80", 120, 480),
            new Delivery("XAN-02", "xanthan-gum", CURLEW, "250", "9.70", 120, 330),
            new Delivery("SUN-01", "sunflower-oil", DUNEWOOD, "1000", "6.50", 370, -6),
            new Delivery("SUN-02", "sunflower-oil", DUNEWOOD, "5000", "29.00", 30, 330),
            new Delivery("CAP-01", "coco-caprylate", DUNEWOOD, "1000", "19.80", 90, 540),
            new Delivery("SHE-02", "shea-butter", DUNEWOOD, "1000", "14.50", 90, 420),
            new Delivery("GLS-01", "glyceryl-stearate", CURLEW, "500", "6.70", 150, 560),
            new Delivery("CET-01", "cetearyl-alcohol", CURLEW, "1000", "10.20", 150, 700),
            new Delivery("GMS-01", "glyceryl-stearate-peg-100", CURLEW, "1000", "15.40", 150, 560),
            new Delivery("TOC-01", "tocopherol", DUNEWOOD, "100", "9.90", 100, 260),
            new Delivery("PHE-02", "phenoxyethanol-ethylhexylglycerin", CURLEW, "250", "12.60", 70, 600),
            new Delivery("PRO-01", "propanediol", CURLEW, "1000", "13.90", 110, 620),
            new Delivery("PEN-01", "pentylene-glycol", CURLEW, "500", "18.30", 110, 620),
            new Delivery("TMG-01", "betaine-anhydrous", CURLEW, "250", "11.40", 110, 290),
            new Delivery("NAL-01", "sodium-lactate-60", CURLEW, "500", "7.20", 110, 480),
            new Delivery("LAC-02", "lactic-acid-80", CURLEW, "250", "5.40", 110, 400),
            new Delivery("HEC-01", "hydroxyethylcellulose", CURLEW, "250", "10.90", 160, 500),
            new Delivery("BTM-01", "behentrimonium-methosulfate-25", CURLEW, "80", "4.90", 210, 250),
            new Delivery("CTL-01", "cetyl-alcohol", CURLEW, "500", "6.10", 210, 640),
            new Delivery("BAD-01", "benzyl-alcohol-dehydroacetic-acid", CURLEW, "100", "8.80", 90, 450),
            new Delivery("WAX-01", "beeswax-white", DUNEWOOD, "500", "12.70", 170, 900),
            new Delivery("CAL-03", "calendula-oil-extract", DUNEWOOD, "500", "16.20", 45, 210),
            new Delivery("JOJ-01", "jojoba-oil", DUNEWOOD, "500", "17.90", 130, 560));

    Price price() {
        return new Price(Money.of(paid), Grams.of(grams));
    }

    boolean isWater() {
        return material.equals("water-purified");
    }

    Lot lot(LocalDate today) {
        LocalDate received = today.minusDays(daysAgo);
        return new Lot(
                code,
                material,
                isWater() ? "" : "X" + (4000 + daysAgo) + "-" + code.substring(0, 2),
                supplier,
                Grams.of(grams),
                received,
                Optional.of(received.plusDays(1)).filter(day -> day.isBefore(today)),
                Optional.of(today.plusDays(keepsDays)),
                Optional.of(price()),
                Lot.State.RELEASED,
                isWater() ? "Conductivity 1.4 µS/cm. Treated: demineralised, heated to 85 °C for 20 min." : "");
    }
}
