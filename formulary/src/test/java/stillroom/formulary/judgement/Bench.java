package stillroom.formulary.judgement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.constants.AcidConstant;
import stillroom.formulary.constants.AcidConstants;
import stillroom.formulary.constants.AcidConstantsFile;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.CounterIon;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.FragranceCertificate;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.Parent;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;

/** A small hand-made book and short ways to write formulas for tests. Molar masses: IUPAC 2021 atomic weights. */
public final class Bench implements MaterialBook {
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    public static final Evaluator EVALUATOR = Evaluator.standard();

    /** Molar mass of what has none [g/mol]. */
    public static final double UNKNOWN = 0;

    private static final AcidConstants ACIDS = AcidConstantsFile.shipped();

    private final Map<String, Material> materials = new LinkedHashMap<>();
    private final Map<String, Substance> substances = new LinkedHashMap<>();

    /** The book that most tests use. */
    public static Bench book() {
        Bench book = new Bench();
        book.pure("water", Family.WATER, 18.015);
        book.pure("glycerin", Family.HUMECTANT, 92.094, "humectant");
        book.pure("helianthus-annuus-seed-oil", Family.OIL, UNKNOWN, "oil", "triglyceride");
        book.pure("ester-oil", Family.OIL, UNKNOWN, "oil");
        book.pure("phenoxyethanol", Family.PRESERVATIVE, 138.166, "preservative-annex-v");
        book.pure("ethylhexylglycerin", Family.PRESERVATIVE, 204.31, "preservative-booster");
        book.salt("sodium-benzoate", Family.PRESERVATIVE, 144.105, "benzoic-acid", "preservative-annex-v");
        book.salt("potassium-benzoate", Family.PRESERVATIVE, 160.213, "benzoic-acid", "preservative-annex-v");
        book.salt("potassium-sorbate", Family.PRESERVATIVE, 150.218, "sorbic-acid", "preservative-annex-v");
        book.ester("methylparaben", 152.149, "4-hydroxybenzoic-acid", "preservative-annex-v", "paraben");
        book.parabenSalt();
        book.ester("ethylparaben", 166.176, "4-hydroxybenzoic-acid", "preservative-annex-v", "paraben");
        book.ester("propylparaben", 180.203, "4-hydroxybenzoic-acid", "preservative-annex-v", "paraben");
        book.pure("methylisothiazolinone", Family.PRESERVATIVE, 115.15, "preservative-annex-v");
        book.ester("retinyl-palmitate", 524.874, "retinol", "retinoid");
        book.pure("citric-acid", Family.ACID, 192.123);
        book.pure("xanthan-gum", Family.THICKENER, UNKNOWN, "gum", "anionic-polymer");
        book.surfactant("sodium-laureth-sulfate", ChargeClass.ANIONIC);
        book.surfactant("cocamidopropyl-betaine", ChargeClass.AMPHOTERIC);
        book.surfactant("coco-glucoside", ChargeClass.NONIONIC);
        book.surfactant("polysorbate-80", ChargeClass.NONIONIC);
        book.surfactant("behentrimonium-chloride", ChargeClass.CATIONIC);
        book.salt("sodium-chloride", Family.SALT, 58.44, "hydrochloric-acid", "electrolyte");
        book.mixture("sles-70", Family.SURFACTANT, "sodium-laureth-sulfate", 0.70, "water", 0.30);
        book.mixture("capb-30", Family.SURFACTANT, "cocamidopropyl-betaine", 0.30, "water", 0.645);
        book.part(
                "capb-30", new Constituent("sodium-chloride", MassFraction.exactly(0.055), Constituent.Role.IMPURITY));
        book.mixture("coco-glucoside-51", Family.SURFACTANT, "coco-glucoside", 0.51, "water", 0.49);
        return book;
    }

    public Bench pure(String key, Family family, double molarMass, String... tags) {
        return substance(key, molarMass, ChargeClass.NONE, false, Optional.empty(), tags)
                .card(key, family, Constituent.exactly(key, 1));
    }

    /** A preservative or active that a law counts as the acid or alcohol in it. */
    public Bench ester(String key, double molarMass, String countedAs, String... tags) {
        Parent parent = Parent.ester(countedAs, 1);
        Family family = List.of(tags).contains("preservative-annex-v") ? Family.PRESERVATIVE : Family.ACTIVE;
        return substance(key, molarMass, ChargeClass.NONE, false, Optional.of(parent), tags)
                .card(key, family, Constituent.exactly(key, 1));
    }

    private Bench salt(String key, Family family, double molarMass, String acid, String... tags) {
        Parent parent = Parent.salt(acid, 1, CounterIon.SODIUM, 1);
        return substance(key, molarMass, ChargeClass.NONE, false, Optional.of(parent), tags)
                .card(key, family, Constituent.exactly(key, 1));
    }

    /** A law counts it as 4-hydroxybenzoic acid; it acts as methylparaben. */
    private void parabenSalt() {
        String key = "sodium-methylparaben";
        substances.put(
                key,
                new Substance(
                        key,
                        key,
                        List.of(),
                        Optional.of(174.131),
                        ChargeClass.NONE,
                        false,
                        Optional.of("methylparaben"),
                        List.of("preservative-annex-v", "paraben"),
                        "hand-made for this test",
                        Optional.of(Parent.salt("4-hydroxybenzoic-acid", 1, CounterIon.SODIUM, 1)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
        card(key, Family.PRESERVATIVE, Constituent.exactly(key, 1));
    }

    private Bench surfactant(String key, ChargeClass charge) {
        return substance(key, UNKNOWN, charge, true, Optional.empty())
                .card(key, Family.SURFACTANT, Constituent.exactly(key, 1));
    }

    public Bench substance(
            String key,
            double molarMass,
            ChargeClass charge,
            boolean surfactant,
            Optional<Parent> parent,
            String... tags) {
        substances.put(
                key,
                new Substance(
                        key,
                        key,
                        List.of(),
                        molarMass == UNKNOWN ? Optional.empty() : Optional.of(molarMass),
                        charge,
                        surfactant,
                        ACIDS.find(parent.filter(known -> known.counterIon().isPresent())
                                        .map(Parent::substance)
                                        .orElse(key))
                                .map(AcidConstant::key),
                        List.of(tags),
                        "hand-made for this test",
                        parent,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
        return this;
    }

    public Bench card(String key, Family family, Constituent... parts) {
        materials.put(key, Material.named(key, key, family).withComposition(parts));
        return this;
    }

    /** Gives a card the certificate of a perfume. */
    public Bench certificate(String key, FragranceCertificate certificate) {
        materials.put(key, material(key).orElseThrow().withCertificate(certificate));
        return this;
    }

    /** Says on the card of a material which pH it has as supplied. */
    public Bench ownPh(String key, Interval pH) {
        Material card = materials.get(key);
        materials.put(
                key,
                new Material(
                        card.key(),
                        card.revision(),
                        card.revisedOn(),
                        card.name(),
                        card.family(),
                        card.functions(),
                        card.composition(),
                        card.strength(),
                        card.usage(),
                        card.workingPh(),
                        Optional.of(pH),
                        card.densityGramsPerMillilitre(),
                        card.solubility(),
                        card.maxCelsius(),
                        card.cautions(),
                        card.grade(),
                        card.supplier(),
                        card.price(),
                        card.note(),
                        card.naturalOriginIndex(),
                        card.sources()));
        return this;
    }

    public Bench mixture(String key, Family family, String first, double a, String second, double b) {
        return card(key, family, Constituent.exactly(first, a), Constituent.exactly(second, b));
    }

    private void part(String key, Constituent more) {
        Material card = material(key).orElseThrow();
        List<Constituent> parts = new ArrayList<>(card.composition());
        parts.add(more);
        materials.put(key, card.withComposition(parts.toArray(new Constituent[0])));
    }

    @Override
    public Optional<Material> material(String key) {
        return Optional.ofNullable(materials.get(key));
    }

    @Override
    public Optional<Substance> substance(String key) {
        return Optional.ofNullable(substances.get(key));
    }

    @Override
    public List<Material> materials() {
        return List.copyOf(materials.values());
    }

    @Override
    public List<Substance> substances() {
        return List.copyOf(substances.values());
    }

    /** One phase; each pair is a material key and its amount, where "q.s." takes the rest. */
    public static Formula formula(String... pairs) {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            Amount amount = pairs[i + 1].equals("q.s.") ? new Amount.ToHundred() : Amount.fixed(pairs[i + 1]);
            lines.add(new Line("line" + (i / 2 + 1), pairs[i], amount, ""));
        }
        return new Formula(List.of(new Phase("a", "A", lines, List.of())));
    }

    Evaluation judge(ProductType type, String... pairs) {
        return judge(Brief.of(type), TODAY, pairs);
    }

    Evaluation judge(Brief brief, LocalDate day, String... pairs) {
        return EVALUATOR.evaluate(Subjects.of(formula(pairs), brief), this, day);
    }

    static List<String> warnings(Evaluation evaluation) {
        return evaluation.warnings().stream().map(Finding::rule).toList();
    }

    static Optional<Finding> finding(Evaluation evaluation, String rule) {
        return evaluation.findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .findFirst();
    }
}
