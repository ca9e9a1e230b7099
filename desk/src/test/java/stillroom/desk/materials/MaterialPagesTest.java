package stillroom.desk.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.OpenDesk.Answer;
import stillroom.desk.shell.Input;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.pot.Expressed;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.FragranceCertificate;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Parent;
import stillroom.formulary.material.Strength;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;

class MaterialPagesTest {
    private OpenDesk desk;

    @BeforeEach
    void open(@TempDir Path folder) {
        desk = OpenDesk.in(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static Map<String, String> form(String name) {
        Map<String, String> form = new HashMap<>(CardFields.empty(name));
        form.put("family", "SURFACTANT");
        return form;
    }

    private Material card(String key) {
        return desk.ledger().materials().book().material(key).orElseThrow();
    }

    /** The form of a card as a browser would send it back unchanged. */
    private Map<String, String> formOf(String key) {
        MaterialBook book = desk.ledger().materials().book();
        return new HashMap<>(CardFields.of(card(key), new Inci(book)));
    }

    @Test
    void shelfIsSearchedByNameInciCasAndFunction() {
        assertThat(desk.get("/materials").body()).contains("Shelf", "starter library");
        for (String words : List.of("glycerin+99", "Glycerin", "56-81-5", "humectant")) {
            assertThat(desk.get("/materials?q=" + words).body())
                    .as(words)
                    .contains("/materials/glycerin-99")
                    .doesNotContain("/materials/carnauba-wax");
        }
        assertThat(desk.get("/materials?family=WAX").body())
                .contains("/materials/carnauba-wax")
                .doesNotContain("/materials/glycerin-99");
    }

    @Test
    void aLongListIsCutAndSaysSo() {
        String cut = desk.get("/materials").body();
        assertThat(cut).contains("the first 60 are listed", "/materials?all=yes&amp;q=&amp;family=&amp;kind=");
        assertThat(desk.get("/materials?all=yes").body())
                .contains("/materials/zinc-stearate")
                .doesNotContain("are listed");
    }

    @Test
    void whatIsLookedForIsEscaped() {
        String body =
                desk.get("/materials?q=%22%3E%3Cscript%3Ealert(1)%3C/script%3E").body();
        assertThat(body).doesNotContain("<script>alert").contains("No card fits this");
    }

    @Test
    void cardShowsFactsWithTheirSources() {
        String body = desk.get("/materials/sles-70").body();
        assertThat(body).contains("Sodium Laureth Sulfate", "as active matter", "anionic", "from memory", "5 to 25 %");
    }

    @Test
    void unknownCardIsNotFound() {
        Answer answer = desk.get("/materials/no-such-thing");
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.body()).contains("There is no material").doesNotContain("Exception");
        assertThat(desk.get("/materials/no-such-thing/edit").status()).isEqualTo(404);
        assertThat(desk.post("/materials/no-such-thing/edit", form("x")).status())
                .isEqualTo(404);
    }

    @Test
    void newMaterialIsStoredAsTyped() {
        Map<String, String> form = form("Foamy <b>stuff</b> 30 %");
        form.putAll(Map.of("c0-name", "sodium  laureth sulfate", "c0-lower", "28", "c0-upper", "32"));
        form.putAll(Map.of("c1-name", "Aqua", "c1-nominal", "69,5", "c1-role", "INGREDIENT"));
        form.putAll(Map.of("strength-low", "28", "strength-high", "32", "strength-basis", "ACTIVE"));
        form.putAll(Map.of("strength-of", "Sodium Laureth Sulfate", "source-strength", "certificate"));
        form.putAll(Map.of("usage-high", "40", "paid", "12,5", "paid-grams", "1000", "own-ph-low", "6.5"));
        Answer answer = desk.post("/materials/new", form);

        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.location()).isEqualTo("/materials/foamy-b-stuff-b-30?did=added");
        Material card = card("foamy-b-stuff-b-30");
        assertThat(card.revision()).isEqualTo(1);
        assertThat(card.composition().get(0).substance()).isEqualTo("sodium-laureth-sulfate");
        assertThat(card.composition().get(0).massFraction().nominal()).isEqualTo(0.30);
        assertThat(card.composition().get(1).massFraction().nominal()).isEqualTo(0.695);
        assertThat(card.strength())
                .contains(new Strength(PercentRange.of("28", "32"), Strength.Basis.ACTIVE, "Sodium Laureth Sulfate"));
        assertThat(card.usage()).contains(PercentRange.of("0", "40"));
        assertThat(card.sources()).containsEntry("strength", "certificate");
        assertThat(desk.get("/materials/foamy-b-stuff-b-30").body())
                .contains("Foamy &lt;b&gt;stuff&lt;/b&gt;", "12.50 EUR for 1000 g")
                .doesNotContain("<b>stuff");
    }

    @Test
    void aFigureWithoutItsBasisIsNotStored() {
        Map<String, String> form = form("Betaine");
        form.putAll(Map.of("strength-low", "30", "strength-of", "Cocamidopropyl Betaine"));
        Answer answer = desk.post("/materials/new", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("A figure without its basis is not stored")
                .contains("value=\"30\"");
        assertThat(desk.ledger().materials().own()).isEmpty();
    }

    @Test
    void badFiguresAreRefusedBesideTheirFieldsAndKept() {
        Map<String, String> form = form("");
        form.putAll(Map.of("usage-low", "NaN", "usage-high", "140", "density", "-1", "paid", "3", "family", "WEED"));
        form.putAll(Map.of("c0-name", "Aqua", "c0-nominal", "90", "c1-name", "Glycerin", "c1-nominal", "20"));
        Answer answer = desk.post("/materials/new", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("The name is missing.")
                .contains("Usage is not a number", "Usage must lie between 0 and 100")
                .contains("Density must lie between", "For how many grams", "Family is not one of the choices")
                .contains("add up to 110 %")
                .contains("value=\"NaN\"", "value=\"140\"")
                .doesNotContain("Exception");
    }

    @Test
    void anUnknownInciNameBecomesAnOwnSubstanceOnlyWhenSaid() {
        Map<String, String> form = form("Seaside extract");
        form.putAll(Map.of("c0-name", "Salicornia Testiana Extract", "c0-nominal", "100"));
        Answer asked = desk.post("/materials/new", form);
        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.body()).contains("No substance has this INCI name").contains("id=\"c0-cas\"");

        form.putAll(Map.of("c0-new", "on", "c0-cas", "56-81-6", "c0-charge", "CATIONIC"));
        assertThat(desk.post("/materials/new", form).body()).contains("56-81-6 is not a CAS number");

        form.put("c0-cas", "56-81-5");
        assertThat(desk.post("/materials/new", form).status()).isEqualTo(303);
        assertThat(desk.ledger().materials().ownSubstances()).singleElement().satisfies(substance -> {
            assertThat(substance.key()).isEqualTo("salicornia-testiana-extract");
            assertThat(substance.casNumbers()).containsExactly("56-81-5");
            assertThat(substance.charge()).isEqualTo(ChargeClass.CATIONIC);
        });
    }

    @Test
    void rowsComeAndGoWithoutLosingWhatWasTyped() {
        Map<String, String> form = form("Half done");
        form.putAll(Map.of("c0-name", "Aqua", "c0-nominal", "60", "c1-name", "Glycerin", "c1-nominal", "4O"));
        form.put("add", "1");
        assertThat(desk.post("/materials/new/rows", form).body()).contains("id=\"c2-name\"", "value=\"4O\"");
        form.remove("add");
        form.put("remove", "0");
        assertThat(desk.post("/materials/new/rows", form).body())
                .contains("name=\"c0-name\" type=\"text\" value=\"Glycerin\"")
                .doesNotContain("id=\"c1-name\"");
    }

    @Test
    void editingAStarterCardMakesAnOwnRevision() {
        Map<String, String> form = formOf("glycerin-99");
        form.put("supplier", "Tideline Supplies");
        assertThat(desk.post("/materials/glycerin-99/edit", form).status()).isEqualTo(303);
        assertThat(card("glycerin-99").supplier()).isEqualTo("Tideline Supplies");
        assertThat(card("glycerin-99").revision()).isEqualTo(2);
        assertThat(desk.get("/materials/glycerin-99").body())
                .contains("Your own card, revision 2 of 25 Nov 2026", "Supplier: nothing → Tideline Supplies.");
    }

    @Test
    void everyStarterCardSurvivesItsForm() {
        MaterialBook book = desk.ledger().materials().book();
        Inci inci = new Inci(book);
        assertThat(book.materials()).hasSizeGreaterThan(120).allSatisfy(card -> {
            Input input = Input.of(CardFields.of(card, inci));
            Optional<CardReader.Read> read = new CardReader(input, inci).read(card.key(), card.revisedOn());
            assertThat(input.typed().problems()).as(card.key()).isEmpty();
            assertThat(read.orElseThrow().card()).isEqualTo(card);
        });
    }

    @Test
    void staleEditIsAnsweredWithWhatWasTyped() {
        Map<String, String> first = formOf("glycerin-99");
        Map<String, String> second = formOf("glycerin-99");
        first.put("grade", "first grade");
        second.put("grade", "second <grade>");
        desk.post("/materials/glycerin-99/edit", first);
        Answer answer = desk.post("/materials/glycerin-99/edit", second);
        assertThat(answer.status()).isEqualTo(409);
        assertThat(answer.body()).contains("saved from elsewhere", "second &lt;grade>");
        assertThat(card("glycerin-99").grade()).isEqualTo("first grade");
    }

    @Test
    void formShowsWhatAChangeTouches() {
        Product product = desk.ledger().products().add("Foam <i>one</i>", Brief.of(ProductType.HAND_WASH), "");
        Line line = new Line("l1", "glycerin-99", Amount.fixed("3"), "");
        Formula formula = new Formula(List.of(new Phase("a", "A", List.of(line), List.of())));
        desk.ledger().products().newVersion(product.id(), Optional.empty(), formula, "", OpenDesk.NOW);
        for (String page : List.of("/materials/glycerin-99", "/materials/glycerin-99/edit")) {
            assertThat(desk.get(page).body())
                    .contains("Formulas that follow the newest card", "Foam &lt;i&gt;one&lt;/i&gt;, version 1");
        }
    }

    @Test
    void aNameThatIsTakenGetsAKeyOfItsOwn() {
        desk.post("/materials/new", form("Water, purified"));
        desk.post("/materials/new", form("New"));
        assertThat(desk.ledger().materials().own())
                .extracting(Material::key)
                .containsExactlyInAnyOrder("water-purified-2", "new-2");
    }

    @Test
    void tooLongATextIsRefusedAndNothingIsLost() {
        Map<String, String> form = form("Long");
        form.put("note", "x".repeat(20_001));
        Answer answer = desk.post("/materials/new", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("up to 20000 fit here", "x".repeat(20_001));
        form.put("note", "x".repeat(1_200_000));
        assertThat(desk.post("/materials/new", form).status()).isEqualTo(413);
    }

    @Test
    void aCertificateIsKeptShownAndSurvivesTheNextRevision() {
        Map<String, String> form = form("Perfume of the test");
        form.put("family", "FRAGRANCE");
        form.put("certificate-day", "2026-05-31");
        form.put("certificate-standard", "an edition");
        form.put("certificate-furocoumarins", "12");
        form.put("certificate-maxima", "5A: body-lotion, body-oil: 0.8\n4: fine-fragrance: 20");
        assertThat(desk.post("/materials/new", form).status()).isEqualTo(303);
        Material first = card("perfume-of-the-test");
        FragranceCertificate certificate = first.certificate().orElseThrow();
        assertThat(certificate.maximumFor(ProductType.BODY_OIL).orElseThrow().highest())
                .isEqualTo(Percent.of("0.8"));
        assertThat(desk.get("/materials/perfume-of-the-test").body()).contains("Category 5A");
        Map<String, String> again = formOf("perfume-of-the-test");
        again.put("note", "another supplier");
        assertThat(desk.post("/materials/perfume-of-the-test/edit", again).status())
                .isEqualTo(303);
        assertThat(card("perfume-of-the-test").certificate()).contains(certificate);
    }

    @Test
    void aBadCertificateIsRefusedBesideItsField() {
        Map<String, String> form = form("Perfume of the test");
        form.put("certificate-maxima", "5A: body-milk: 0.8");
        Answer answer = desk.post("/materials/new", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("body-milk").contains("A certificate has a day");
    }

    private void premix(String name, String... parts) {
        Map<String, String> form = form(name);
        form.put(ConstituentRows.COUNT, Integer.toString(parts.length / 2));
        for (int i = 0; i < parts.length; i += 2) {
            form.put("c" + i / 2 + "-name", parts[i]);
            String[] share = parts[i + 1].split(" to ");
            if (share.length == 1) {
                form.put("c" + i / 2 + "-nominal", share[0]);
            } else {
                form.putAll(Map.of("c" + i / 2 + "-lower", share[0], "c" + i / 2 + "-upper", share[1]));
            }
        }
        assertThat(desk.post("/materials/new", form).status()).isEqualTo(303);
    }

    /** 27 to 31 % of 38 to 42 % of 50 %: by hand 5.13, 5.8 and 6.51 %. */
    @Test
    void aCardHoldsCardsThatHoldCards() {
        premix("Foam paste", "Sodium Laureth Sulfate", "27 to 31", "Aqua", "69 to 73");
        premix("Inner mix", "Card: Foam paste", "38 to 42", "Aqua", "60");
        premix("Outer mix", "card:inner  MIX", "50", "Glycerin", "50");

        assertThat(card("outer-mix").composition().get(0).substance()).isEqualTo("material:inner-mix");
        String body = desk.get("/materials/outer-mix").body();
        assertThat(body)
                .contains("href=\"/materials/inner-mix\"", "Down to substances")
                .containsPattern("Sodium Laureth Sulfate</th><td[^>]*>5.13</td><td[^>]*>5.8</td><td[^>]*>6.51</td>")
                .containsPattern("Glycerin</th><td[^>]*>50</td><td[^>]*>50</td><td[^>]*>50</td>");
        assertThat(desk.get("/materials/outer-mix/edit").body()).contains("value=\"Card: Inner mix\"");
        Map<String, String> unchanged = formOf("outer-mix");
        assertThat(desk.post("/materials/outer-mix/edit", unchanged).status()).isEqualTo(303);
        assertThat(card("outer-mix").composition().get(0).substance()).isEqualTo("material:inner-mix");
        assertThat(desk.get("/materials/foam-paste/edit").body())
                .contains("Cards that hold this one", "/materials/inner-mix\"", "/materials/outer-mix\"");
        assertThat(desk.get("/materials?q=laureth&all=yes").body()).contains("/materials/outer-mix");
    }

    @Test
    void aCardThatWouldHoldItselfIsRefusedByItsChain() {
        premix("First", "Aqua", "50", "Glycerin", "50");
        premix("Second", "Card: First", "50", "Aqua", "50");
        premix("Third", "Card: Second", "50", "Aqua", "50");
        Map<String, String> form = formOf("first");
        form.putAll(Map.of("c1-name", "Card: Third"));
        Answer answer = desk.post("/materials/first/edit", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body())
                .contains("A card cannot hold itself: First → Third → Second → First.", "value=\"Card: Third\"");
        assertThat(card("first").revision()).isEqualTo(1);

        form.put("c1-name", "Card: First");
        assertThat(desk.post("/materials/first/edit", form).body())
                .contains("A card cannot hold itself: First → First.");
        form.put("c1-name", "Card: Nothing of this name");
        assertThat(desk.post("/materials/first/edit", form).body()).contains("No card on the shelf has this name");
    }

    @Test
    void anInciNameGoesBeforeACardOfTheSameName() {
        premix("Glycerin", "Glycerin", "99.5", "Aqua", "0.5");
        premix("With both", "Glycerin", "20", "Card: Glycerin", "30", "Aqua", "50");
        assertThat(card("with-both").composition())
                .extracting(part -> part.substance())
                .containsExactly("glycerin", "material:glycerin", "water");
    }

    @Test
    void aNewSaltSaysOfWhichAcid() {
        Map<String, String> form = form("Calcium benzoate");
        form.putAll(
                Map.of("c0-name", "Calcium Benzoate", "c0-nominal", "100", "c0-new", "on", "c0-molar-mass", "282.3"));
        form.putAll(Map.of("c0-counted-as", "Benzoic Acids"));
        assertThat(desk.post("/materials/new", form).body()).contains("No substance has this INCI name.");
        form.putAll(Map.of("c0-counted-as", "benzoic acid", "c0-counted-units", "2"));
        assertThat(desk.post("/materials/new", form).status()).isEqualTo(303);
        Substance salt =
                desk.ledger().materials().book().substance("calcium-benzoate").orElseThrow();
        assertThat(salt.parent()).contains(Parent.ester("benzoic-acid", 2));
        // 2 × 122.123 ÷ 282.3
        assertThat(Expressed.as(salt, "benzoic-acid", desk.ledger().materials().book())
                        .orElseThrow())
                .isEqualTo(0.8652, within(1e-4));
    }

    @Test
    void aCertificateIsReadInPlainWordsAndShownLineByLine() {
        Map<String, String> form = form("Scent");
        form.putAll(Map.of("certificate-day", "2026-05-01", "certificate-standard", "an invented standard"));
        form.put("certificate-maxima", "5A: Body lotion, body-oil: 0,8\n9: hand-wash: 2");
        form.put("certificate-furocoumarins", "1.5");
        assertThat(desk.post("/materials/new", form).status()).isEqualTo(303);
        assertThat(desk.get("/materials/scent").body())
                .contains("Category 5A, at most 0.8 %: body lotion, body oil\nCategory 9, at most 2 %: hand wash\n");
        assertThat(desk.get("/materials/scent/edit").body()).contains("Which product types there are", "face-cream");
    }
}
