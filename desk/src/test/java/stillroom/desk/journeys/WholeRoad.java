package stillroom.desk.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The road from an empty workshop to a released batch, on a hand wash of the test's own, with whatever hands it is
 * given. Everything typed here is invented.
 */
final class WholeRoad {
    static final String WATER = "Water, purified";
    static final String GLYCERIN = "Glycerin 86 %";
    static final String PRESERVATIVE = "Sodium benzoate";
    static final String BETAINE = "Cocamidopropyl betaine, 30 % active";
    static final String GLUCOSIDE = "Coco-glucoside, 52 % active";
    static final String ACID = "Citric acid 50 % solution";
    static final String LOT = "CB-1";
    static final String BATCH = "MW-1";
    static final String PRODUCT = "Moor hand wash";

    private static final String WATER_PHASE = "Water phase";
    private static final String SURFACTANTS = "Surfactants";
    private static final String ADJUSTING = "Adjusting";

    private final Page page;
    private final Hands hands;
    private final Sight sight;

    WholeRoad(Page page, Hands hands, Sight sight) {
        this.page = page;
        this.hands = hands;
        this.sight = sight;
        page.onDialog(question -> question.accept());
    }

    /** First start to a plan that was begun and a batch that rests. */
    void firstDay() {
        namesTheWorkshop();
        booksALot();
        writesABrief();
        writesTheFormula();
        seesConsequencesAtOnce();
        keepsTheVersion();
        plansABatch();
        readiesTheVessels();
        weighsTheWaterPhase();
        weighsTheSurfactants();
        combines();
        bringsThePhDown();
        leavesItToRest();
    }

    /** The check that was due, to the release. */
    void nextDay() {
        looksAgain();
        fills();
        carriesWhatWasMade();
        takesTheSheets();
        releases();
    }

    private void open(String path) {
        page.navigate(path);
        sight.calm();
    }

    private void namesTheWorkshop() {
        open("/");
        sight.see("A new workshop");
        hands.type("Name of your workshop", "Hill bench");
        hands.press("Begin");
        sight.see("Nothing is due and nothing is in work", "Hill bench");
    }

    private void booksALot() {
        hands.press("Shelf");
        sight.see("New material");
        hands.type("Look for", "cocamidopropyl betaine");
        sight.see("1 of");
        hands.press(BETAINE + "…");
        sight.see("No lot of this stands in the book");
        hands.press("New lot");
        sight.see("Came in");
        hands.type("Lot code", LOT);
        hands.type("Came in", "400");
        hands.date("Best before", "", LocalDate.of(2027, 6, 30));
        hands.press("Book this lot");
        sight.see("Lot " + LOT, "400 g", "30 Jun 2027");
    }

    private void writesABrief() {
        hands.press("Products");
        sight.see("No product yet");
        hands.press("New product");
        sight.see("What it is meant to be");
        hands.type("Name", PRODUCT);
        hands.choose("Kind of product", "", "hand wash");
        hands.type("Pack", "pump bottle, 250 ml");
        hands.type("pH band, lower end", "4.5");
        hands.type("pH band, upper end", "5.5");
        hands.type("pH aimed at", "5");
        hands.press("Begin the formula");
        sight.see("Version 1", "What it amounts to");
    }

    private void writesTheFormula() {
        hands.type("Why this version", "a wash for the moor");
        phase("First phase", WATER_PHASE);
        line(WATER_PHASE, WATER, "q.s.");
        line(WATER_PHASE, GLYCERIN, "4");
        line(WATER_PHASE, PRESERVATIVE, "0.5");
        step(WATER_PHASE, "Stir until clear", "40", "10");
        hands.press("Add a phase");
        phase("Phase 2", SURFACTANTS);
        line(SURFACTANTS, BETAINE, "20");
        line(SURFACTANTS, GLUCOSIDE, "8");
        step(SURFACTANTS, "Stir slowly, without foam", "25", "15");
        hands.press("Add a phase");
        phase("Phase 3", ADJUSTING);
        line(ADJUSTING, ACID, "0.4");
        hands.choose("How it is meant", ACID, "q.s. to pH");
        sight.see("The expected amount is kept free");
        hands.type("From", ACID, "0.1");
        hands.type("to", ACID, "0.9");
        hands.leave();
        sight.see("All of it is saved.");
    }

    private void phase(String first, String name) {
        sight.waitFor(named(first));
        hands.type("Phase", first, name);
        hands.leave();
        sight.waitFor(named(name));
    }

    private static String named(String phase) {
        return ".phase:has(h2:text-is('" + phase + "'))";
    }

    private void line(String phase, String material, String amount) {
        hands.type("Add a material", phase, material);
        hands.type("Amount", material, amount);
        hands.leave();
    }

    private void step(String phase, String doing, String celsius, String minutes) {
        hands.type("Add a step", phase, doing);
        hands.leave();
        sight.waitFor(named(phase) + " .step-details");
        hands.type("Temperature", phase, celsius);
        hands.type("Time", phase, minutes);
    }

    /** What is typed shows what it means without the page being loaded again. */
    private void seesConsequencesAtOnce() {
        page.evaluate("() => { window.sameAsBefore = true; }");
        Locator breach = page.locator("#amounts .finding-breach");
        sight.see("#amounts", Pattern.compile("Total\\s+100\\.00"));
        sight.see(".lines", Pattern.compile("67\\.10"));
        sight.gone(breach);

        hands.type("Amount", PRESERVATIVE, "4");
        sight.see("#amounts .finding-breach", Pattern.compile("[Bb]enzo"));
        sight.see(".lines", Pattern.compile("63\\.60"));

        hands.type("Amount", PRESERVATIVE, "0.5");
        sight.gone(breach);
        sight.see(".lines", Pattern.compile("67\\.10"));
        assertThat(page.evaluate("() => window.sameAsBefore")).isEqualTo(true);
    }

    private void keepsTheVersion() {
        hands.press("Keep this version");
        sight.see("New version from this", "as stated");
        hands.press("Plan a batch");
        sight.see("How much");
    }

    private void plansABatch() {
        hands.type("Batch size", "500");
        hands.type("Smallest step it shows", "0.01");
        hands.type("Most it can hold", "3000");
        sight.see("335.50");
        sight.see("By the book, this is short");
        hands.type("Batch code", BATCH);
        hands.type("Who plans", "Ada");
        hands.press("Begin this batch");
        sight.see("Make a vessel ready for " + WATER_PHASE, "Name of the vessel");
    }

    private void readiesTheVessels() {
        ready("Kettle", "812.4");
        sight.see("Weigh into Kettle");
        hands.press("Another vessel");
        sight.see("Make a vessel ready for " + SURFACTANTS, "Into Kettle");
        ready("Beaker", "204.1");
        sight.see("Weigh into Beaker");
    }

    private void ready(String vessel, String tare) {
        hands.type("Name of the vessel", vessel);
        hands.type("Empty, stirrer included", tare);
        hands.type("How it was cleaned", "washed, rinsed, alcohol 70 %, dry");
        hands.press("The vessel is ready");
    }

    private void weighsTheWaterPhase() {
        hands.press("Kettle…");
        sight.see("Weigh into Kettle", WATER);
        pour("300");
        sight.see("35.50 g more", "300.00 g are in");
        pour("35.5");
        sight.see("Weigh into Kettle", "20.00 g", GLYCERIN);
        pour("23");
        sight.see("Over its target", "3.00 g over");
        hands.type("Because", "the bottle slipped; glycerin does no harm here");
        hands.press("Leave it so");
        sight.see("Weigh into Kettle", "2.50 g", PRESERVATIVE);
        hands.type("Who checks", "Ben");
        pour("2.5");
        sight.see("Step, in Kettle", "Stir until clear");
        hands.type("Temperature reached", "41");
        hands.type("Minutes it took", "10");
        hands.press("Done, write it down");
        sight.see("Done (Kettle): Stir until clear, 41 °C, 10 min");
    }

    private void pour(String grams) {
        hands.type("Poured, as the balance shows it", grams);
        hands.press("Write it down");
    }

    private void weighsTheSurfactants() {
        hands.press("Beaker…");
        sight.see("Weigh into Beaker", BETAINE, "100.00 g");
        hands.choose("From which lot", "", LOT);
        pour("100");
        sight.see("Weigh into Beaker", GLUCOSIDE, "40.00 g");
        pour("40");
        sight.see("Step, in Beaker", "Stir slowly, without foam");
        hands.type("Temperature reached", "25");
        hands.press("Done, write it down");
        sight.see("Done (Beaker): Stir slowly, without foam, 25 °C");
    }

    private void combines() {
        hands.press("Kettle…");
        sight.see("Put one vessel into another");
        hands.press("Combined, write it down");
        sight.see("All of Beaker went into Kettle");
    }

    private void bringsThePhDown() {
        sight.see("Add into Kettle", ACID, "2.00 g");
        pour("1.5");
        sight.see("Poured into Kettle: 1.5 g " + ACID);
        readPh("5.9");
        hands.press("Correction");
        sight.see("Correct what is in Kettle");
        hands.press(ACID);
        sight.see("Add into Kettle", ACID);
        pour("0.4");
        sight.see("0.4 g " + ACID, "correction: acid, to lower the pH");
        readPh("4.9");
    }

    private void readPh(String value) {
        hands.press("Reading");
        sight.see("The product's band: pH 4.5 to 5.5");
        hands.type("pH", value);
        hands.press("Write it down");
        sight.see("Read: pH " + value);
    }

    private void leavesItToRest() {
        hands.press("Let it rest");
        sight.see("It comes back by itself on the start page");
        hands.type("Look for", "clear, no layer");
        hands.press("Let it rest", "Let it rest");
        sight.see("Left to rest until");
        hands.press("Today");
        sight.see("Resting", BATCH);
        assertThat(page.locator("#due-title").count()).isZero();
    }

    private void looksAgain() {
        open("/");
        sight.see("Look again now", BATCH);
        hands.press(BATCH + "…", "Look again now");
        sight.see("Look for: clear, no layer");
        hands.type("What was found", "clear, no layer");
        hands.press("The rest is over");
        sight.see("Rest ended. clear, no layer");
        readPh("5");
    }

    private void fills() {
        hands.press("Fill and release");
        sight.see("Yield", "Filled, write it down");
        hands.type("How many", "2");
        hands.type("Into all of them together", "480");
        hands.type("Kept back as retained samples", "15");
        hands.press("Filled, write it down");
        sight.see("2 × pump bottle, 250 ml filled from Kettle");
    }

    private void carriesWhatWasMade() {
        hands.press("As made");
        sight.see("Line by line", "Judged as made");
        // 23 g of the 502.9 g that were put in
        sight.see("tr:has-text('" + GLYCERIN + "')", Pattern.compile("23\\.?0*\\s.*4\\.57", Pattern.DOTALL));
        hands.press("Carry this into a new version of the formula");
        sight.see("Into a new version");
        hands.press("Begin the new version");
        sight.see("Version 2", "What it amounts to", "draft");
    }

    private void takesTheSheets() {
        toTheBatch();
        takesPdf("Batch record, PDF");
        takesPdf("Label, PDF");
        hands.press("Label of this batch");
        sight.see("Does the label fit what was made?", BATCH);
        takesPdf("Label as PDF");
    }

    private void toTheBatch() {
        hands.press("Batches");
        sight.see("newest first");
        hands.press(BATCH + "…");
        sight.see("Sheets", "Log");
    }

    private void takesPdf(String name) {
        String href = hands.reach(name, "").getAttribute("href");
        APIResponse answer = page.request().get(href);
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.headers().get("content-type")).startsWith("application/pdf");
        assertThat(new String(answer.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }

    private void releases() {
        toTheBatch();
        hands.press("Fill and release");
        sight.see("Release or reject");
        List<String> open = page.locator(".gate:has(input) strong").allInnerTexts();
        assertThat(open).contains("Record complete");
        hands.press("Release");
        sight.see("Mend it, or give a reason for going on.");
        for (String gate : open) {
            hands.type("Released all the same, because", gate, "looked at, is fine");
        }
        hands.type("Who decides", "Ben");
        hands.press("Release");
        sight.see("Released by Ben.", "Overruled: ", "record: looked at, is fine");
    }
}
