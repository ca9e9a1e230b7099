package stillroom.formulary.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.LabelWarning;
import stillroom.formulary.label.Labels;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.quantity.Interval;
import stillroom.formulary.rule.Country;
import stillroom.formulary.rule.RuleTables;

/** Each kind of condition that a rule row can have, on rows of the tables. */
class LawConditionsTest {
    private final Bench book = Bench.book();

    private static Brief brief(ProductType type, Set<Brief.People> people, double low, double high) {
        return new Brief(
                type,
                people,
                "",
                "",
                low > 0 ? Optional.of(new Interval(low, high)) : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                "EU");
    }

    private static Brief brief(ProductType type, Brief.People people) {
        return brief(type, EnumSet.of(people), 0, 0);
    }

    private Evaluation judge(Brief brief, String... pairs) {
        return book.judge(brief, Bench.TODAY, pairs);
    }

    private static Finding finding(Evaluation evaluation, String rule) {
        return Bench.finding(evaluation, rule)
                .orElseThrow(() -> new AssertionError(evaluation.findings().toString()));
    }

    @Test
    void leaveOnAndRinseOffHaveTheirOwnFigure() {
        String[] pairs = {"water", "q.s.", "sodium-benzoate", "1"};
        assertThat(Bench.warnings(book.judge(ProductType.SHAMPOO, pairs))).isEmpty();
        assertThat(Bench.warnings(book.judge(ProductType.FACE_CREAM, pairs))).containsExactly("eu-annex-v-1.b");
    }

    @Test
    void oneSubstanceInSeveralMaterialsAndAsSeveralSaltsIsSummed() {
        book.pure("benzoic-acid", Family.PRESERVATIVE, 122.123, "preservative-annex-v");
        book.mixture("blend", Family.PRESERVATIVE, "sodium-benzoate", 0.3, "water", 0.7);
        Evaluation judged = judge(
                Brief.of(ProductType.FACE_CREAM),
                "water",
                "q.s.",
                "sodium-benzoate",
                "0.3",
                "benzoic-acid",
                "0.2",
                "blend",
                "0.4");
        Finding sum = finding(judged, "eu-annex-v-1.b");
        // 0.42 % × 122.123 ÷ 144.105 + 0.2 %, molar masses of the table (IUPAC 2021).
        assertThat(sum.compared().get(0).value()).isEqualTo(0.42 * 122.123 / 144.105 + 0.2, within(1e-9));
        assertThat(sum.lines()).hasSize(3);
    }

    /**
     * Without a chain of parents nobody says how much acid is in one mole; the salt counts in full as long as that is
     * within the limit, and beyond it the law cannot be judged.
     */
    @Test
    void aSaltWithoutTheChainToItsAcidCannotBeJudged() {
        book.pure("ammonium-benzoate", Family.PRESERVATIVE, 139.154, "preservative-annex-v");
        Brief lotion = Brief.of(ProductType.FACE_CREAM);
        Finding unknown = finding(judge(lotion, "water", "q.s.", "ammonium-benzoate", "0.55"), "eu-annex-v-1a");
        assertThat(unknown.kind()).isEqualTo(Finding.Kind.CANNOT_JUDGE);
        assertThat(unknown.says()).contains("counted as benzoic acid", "ammonium-benzoate holds is not known");
        assertThat(Bench.finding(judge(lotion, "water", "q.s.", "ammonium-benzoate", "0.45"), "eu-annex-v-1a"))
                .isEmpty();
        Finding beside = finding(
                judge(lotion, "water", "q.s.", "ammonium-benzoate", "0.1", "potassium-benzoate", "0.7"),
                "eu-annex-v-1a");
        assertThat(beside.kind())
                .as("0.7 % × 122.123 ÷ 160.213 = 0.534 % by potassium benzoate alone")
                .isEqualTo(Finding.Kind.BREACH);
    }

    @Test
    void parabensHaveASingleAMixedAndAJointFigure() {
        String[] single = {"water", "q.s.", "methylparaben", "0.5"};
        assertThat(Bench.warnings(judge(Brief.of(ProductType.BODY_LOTION), single)))
                .containsExactly("eu-annex-v-12");
        book.ester("butylparaben", 194.23, "4-hydroxybenzoic-acid", "preservative-annex-v", "paraben");
        assertThat(Bench.warnings(judge(
                        Brief.of(ProductType.BODY_LOTION),
                        "water",
                        "q.s.",
                        "propylparaben",
                        "0.1",
                        "butylparaben",
                        "0.1")))
                .as("0.1 % × 0.767 + 0.1 % × 0.711 = 0.148 %")
                .containsExactly("eu-annex-v-12a");
        assertThat(Bench.warnings(judge(
                        Brief.of(ProductType.BODY_LOTION),
                        "water",
                        "q.s.",
                        "methylparaben",
                        "0.43",
                        "ethylparaben",
                        "0.47",
                        "propylparaben",
                        "0.15")))
                .as("0.390 + 0.391 + 0.115 = 0.896 % as acid")
                .containsExactly("eu-annex-v-12.b");
    }

    @Test
    void methylisothiazolinoneIsNotAddedBesideTheMixture() {
        book.pure("methylchloroisothiazolinone", Family.PRESERVATIVE, 149.6, "preservative-annex-v");
        book.mixture(
                "mixture", Family.PRESERVATIVE, "methylchloroisothiazolinone", 0.75, "methylisothiazolinone", 0.25);
        Evaluation alone = judge(Brief.of(ProductType.SHAMPOO), "water", "q.s.", "mixture", "0.0014");
        assertThat(Bench.finding(alone, "eu-annex-v-39.c")).isEmpty();
        Evaluation both = judge(
                Brief.of(ProductType.SHAMPOO), "water", "q.s.", "mixture", "0.0010", "methylisothiazolinone", "0.0005");
        assertThat(finding(both, "eu-annex-v-39.c").kind()).isEqualTo(Finding.Kind.BREACH);
    }

    @Test
    void ageAndAreaClose() {
        book.pure("hexyl-salicylate", Family.FRAGRANCE, 222.284);
        String[] pairs = {"helianthus-annuus-seed-oil", "q.s.", "hexyl-salicylate", "0.2"};
        assertThat(Bench.warnings(judge(Brief.of(ProductType.BODY_LOTION), pairs)))
                .isEmpty();
        assertThat(Bench.warnings(judge(brief(ProductType.BODY_LOTION, Brief.People.UNDER_3_YEARS), pairs)))
                .containsExactly("eu-annex-iii-380.f");
        assertThat(Bench.warnings(judge(brief(ProductType.BALM, Brief.People.UNDER_3_YEARS), pairs)))
                .containsExactly("eu-annex-iii-380.g");
        book.pure("silver-chloride", Family.PRESERVATIVE, 143.32, "preservative-annex-v");
        assertThat(Bench.warnings(judge(
                        brief(ProductType.FACE_CREAM, Brief.People.EYE_AREA),
                        "helianthus-annuus-seed-oil",
                        "q.s.",
                        "silver-chloride",
                        "0.001")))
                .containsExactly("eu-annex-v-52");
    }

    @Test
    void aRowBoundToAPhAsksForIt() {
        book.pure("thioglycolic-acid", Family.ACTIVE, 92.117);
        String[] pairs = {"water", "q.s.", "thioglycolic-acid", "5", "phenoxyethanol", "0.9"};
        Brief low = brief(ProductType.HAIR_LEAVE_IN, EnumSet.of(Brief.People.ADULTS), 6, 6.5);
        assertThat(finding(judge(low, pairs), "eu-annex-iii-2a").says()).contains("at least 7");
        Brief high = brief(ProductType.HAIR_LEAVE_IN, EnumSet.of(Brief.People.ADULTS), 9, 10);
        assertThat(finding(judge(high, pairs), "eu-annex-iii-2a").says()).contains("at most 9.5");
        Brief right = brief(ProductType.HAIR_LEAVE_IN, EnumSet.of(Brief.People.ADULTS), 8, 9);
        assertThat(Bench.finding(judge(right, pairs), "eu-annex-iii-2a")).isEmpty();
        book.card("stranger", Family.ACTIVE, Constituent.exactly("thioglycolic-acid", 1));
        book.pure("odd-base", Family.BASE, Bench.UNKNOWN);
        Finding unknown = finding(
                judge(Brief.of(ProductType.HAIR_LEAVE_IN), "water", "q.s.", "stranger", "5", "unheard-of", "2"),
                "eu-annex-iii-2a");
        assertThat(unknown.kind()).isEqualTo(Finding.Kind.CANNOT_JUDGE);
        assertThat(unknown.says()).contains("pH").contains("not known");
    }

    @Test
    void aWarningIsDueFromItsShareOn() {
        book.pure("ammonia", Family.BASE, 17.031);
        assertThat(warnings("ammonia", "1.9")).isEmpty();
        assertThat(warnings("ammonia", "2.1")).containsExactly("contains-ammonia");
    }

    private List<String> warnings(String key, String percent) {
        return label(key, percent, "en").warnings().stream()
                .map(LabelWarning::key)
                .toList();
    }

    private Label label(String key, String percent, String language) {
        LabelInput input = new LabelInput("", "", "", "", "", language, Optional.empty(), List.of());
        return new Labels(Bench.EVALUATOR.rules())
                .of(
                        Subjects.of(
                                Bench.formula("water", "q.s.", key, percent), Brief.of(ProductType.OTHER_RINSE_OFF)),
                        book,
                        input,
                        Bench.TODAY);
    }

    @Test
    void severalWarningsOfOneRowStandOneByOneAndAMissingLanguageIsSaid() {
        book.pure("hydrogen-peroxide", Family.ACTIVE, 34.014);
        assertThat(warnings("hydrogen-peroxide", "3"))
                .containsExactlyInAnyOrder("contains-hydrogen-peroxide", "avoid-eyes", "rinse-eyes");
        assertThat(label("hydrogen-peroxide", "3", "fr").findings().stream()
                        .filter(f -> f.rule().equals("label.warning-language")))
                .hasSize(3)
                .allSatisfy(f -> assertThat(f.kind()).isEqualTo(Finding.Kind.CANNOT_JUDGE));
    }

    @Test
    void anElementIsCountedByTheContentThatTheRowStates() {
        book.pure("kaolin", Family.POWDER, Bench.UNKNOWN);
        book.pure("bentonite", Family.POWDER, Bench.UNKNOWN);
        LocalDate then = LocalDate.of(2027, 2, 1);
        Brief mask = Brief.of(ProductType.OTHER_RINSE_OFF);
        String[] clay = {"water", "q.s.", "kaolin", "10", "phenoxyethanol", "0.9"};
        Finding breach = finding(book.judge(mask, then, clay), "eu-annex-iii-381.c");
        assertThat(breach.kind()).isEqualTo(Finding.Kind.BREACH);
        // Al2Si2O5(OH)4: 2 × 26.982 ÷ 258.16, IUPAC 2021 atomic weights.
        assertThat(breach.compared().get(0).value()).isEqualTo(10 * 2 * 26.982 / 258.16, within(1e-3));
        assertThat(finding(book.judge(mask, Bench.TODAY, clay), "eu-annex-iii-381.c")
                        .says())
                .startsWith("From 2027-01-01:");
        Finding open = finding(
                book.judge(mask, then, "water", "q.s.", "bentonite", "5", "phenoxyethanol", "0.9"),
                "eu-annex-iii-381.c");
        assertThat(open.kind()).isEqualTo(Finding.Kind.CANNOT_JUDGE);
        assertThat(open.says()).startsWith("Cannot judge:").contains("bentonite");
    }

    @Test
    void naturalFurocoumarinsAreNoBreachAddedOnesAre() {
        book.substance("bergapten", 216.19, stillroom.formulary.material.ChargeClass.NONE, false, Optional.empty());
        book.substance(
                "citrus-oil",
                Bench.UNKNOWN,
                stillroom.formulary.material.ChargeClass.NONE,
                false,
                Optional.empty(),
                "essential-oil");
        book.card(
                "citrus",
                Family.FRAGRANCE,
                Constituent.exactly("citrus-oil", 0.999),
                new Constituent(
                        "bergapten",
                        stillroom.formulary.material.MassFraction.exactly(0.001),
                        Constituent.Role.FRAGRANCE_PART));
        book.card("pure-bergapten", Family.ACTIVE, Constituent.exactly("bergapten", 1));
        assertThat(Bench.warnings(
                        book.judge(ProductType.BODY_OIL, "helianthus-annuus-seed-oil", "q.s.", "citrus", "0.05")))
                .isEmpty();
        assertThat(Bench.warnings(book.judge(
                        ProductType.BODY_OIL, "helianthus-annuus-seed-oil", "q.s.", "pure-bergapten", "0.01")))
                .containsExactly("eu-annex-ii-358");
    }

    @Test
    void rowsFromMemoryAreNeverSilentlyKept() {
        Evaluation judged = book.judge(
                new Brief(
                        ProductType.FACE_CREAM,
                        EnumSet.of(Brief.People.ADULTS),
                        "",
                        "",
                        Optional.of(new Interval(5, 6)),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        "",
                        "UK"),
                Bench.TODAY,
                "water",
                "q.s.",
                "phenoxyethanol",
                "0.9",
                "benzyl-alcohol-here",
                "0");
        Finding coverage = finding(judged, "law.coverage");
        assertThat(coverage.says()).contains("as recorded on 2026-11-25").contains("Not covered:");
        book.pure("isoeugenol", Family.FRAGRANCE, 164.2);
        Finding unread = finding(
                book.judge(
                        new Brief(
                                ProductType.FACE_CREAM,
                                EnumSet.of(Brief.People.ADULTS),
                                "",
                                "",
                                Optional.of(new Interval(5, 6)),
                                Optional.empty(),
                                Optional.empty(),
                                List.of(),
                                "",
                                "UK"),
                        Bench.TODAY,
                        "water",
                        "q.s.",
                        "isoeugenol",
                        "0.01",
                        "phenoxyethanol",
                        "0.9"),
                "law.unread");
        assertThat(unread.kind()).isEqualTo(Finding.Kind.CANNOT_JUDGE);
        assertThat(unread.says()).contains("isoeugenol");
    }

    /** The folder that the README beside the tables describes, for a country that does not exist. */
    @Test
    void aMadeUpCountryIsJudgedByItsOwnTables() {
        String head = "entry,row,kind,name,substances,products,only_for,not_for,purpose,limit_percent,counting,"
                + "expressed_as,expressed_molar_mass,ph_min,ph_max,not_with,warning,warning_above_percent,valid_from,"
                + "valid_until,stock_until,amended_by,source_key,paragraph,read_on,note\n";
        Country country = RuleTables.country(
                "RU-NO",
                Map.of(
                        "schedule-4",
                        head + "7,,limit,phenoxyethanol,phenoxyethanol,,,,,0.4,,,,,,,shake,,,,,,act-of-1901,"
                                + "\"Schedule 4, item 7\",2026-11-01,\n",
                        "warnings",
                        "key,language,text,legal_wording,source\nshake,en,Shake it,yes,act-of-1901\n",
                        "duties",
                        "id,markets,when,says,mend,source\nduty.bell,,always,Ring the bell.,Ring it.,act-of-1901\n",
                        "names",
                        "inci_name,name,source\nwater,Brook,act-of-1901\n",
                        "coverage",
                        "market,not_covered\nRU-NO,everything but one row\n"));
        Evaluator evaluator = new Evaluator(Bench.EVALUATOR.rules().with(country));
        Brief brief = new Brief(
                ProductType.TONER,
                EnumSet.of(Brief.People.ADULTS),
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "",
                "RU-NO");
        Evaluation judged = evaluator.evaluate(
                Subjects.of(Bench.formula("water", "q.s.", "phenoxyethanol", "0.9"), brief), book, Bench.TODAY);
        assertThat(Bench.warnings(judged)).containsExactly("ru-no-schedule-4-7");
        assertThat(finding(judged, "duty.bell").says()).isEqualTo("Ring the bell.");
        assertThat(finding(judged, "law.coverage").says())
                .contains("as recorded on 2026-11-01")
                .contains("everything but one row");
        Label label = new Labels(evaluator.rules())
                .of(
                        Subjects.of(Bench.formula("water", "q.s.", "phenoxyethanol", "0.9"), brief),
                        book,
                        LabelInput.named("Test"),
                        Bench.TODAY);
        assertThat(label.ingredients().get(0).name()).isEqualTo("Brook");
        assertThat(label.warnings().get(0).text()).isEqualTo("Shake it");
    }
}
