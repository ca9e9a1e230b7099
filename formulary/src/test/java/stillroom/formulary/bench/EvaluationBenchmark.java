package stillroom.formulary.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Subject;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.formula.Phase;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.Evaluator;
import stillroom.formulary.judgement.Subjects;
import stillroom.formulary.label.Label;
import stillroom.formulary.label.LabelInput;
import stillroom.formulary.label.Labels;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.material.StarterLibrary;

/** Time of judging and labelling a formula of forty lines of the starter library; run by bench.sh, never by a check. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class EvaluationBenchmark {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final MaterialBook book = StarterLibrary.load();
    private final Evaluator evaluator = Evaluator.standard();
    private final Labels labels = new Labels(evaluator.rules());
    private final Subject subject = fortyLines();

    private static Subject fortyLines() {
        String[] keys = {
            "glycerin-99",
            "butylene-glycol",
            "sodium-benzoate",
            "potassium-sorbate",
            "phenoxyethanol",
            "xanthan-gum",
            "sles-70",
            "cocamidopropyl-betaine-30",
            "decyl-glucoside-52",
            "sunflower-oil",
            "almond-oil",
            "shea-butter",
            "cetearyl-alcohol",
            "glyceryl-stearate-peg-100",
            "squalane",
            "tocopherol",
            "perfume-floral",
            "lavender-oil",
            "lemon-oil",
            "geranium-oil",
            "niacinamide",
            "panthenol-75",
            "allantoin",
            "zinc-pca",
            "disodium-edta",
            "citric-acid-50",
            "lactic-acid-80",
            "sodium-lactate-60",
            "urea",
            "green-tea-extract-glycerin",
            "chamomile-extract-glycerin",
            "hydrolyzed-silk-20",
            "iron-oxide-red",
            "titanium-dioxide",
            "retinyl-palmitate-oil",
            "sodium-chloride",
            "beeswax-white",
            "caprylic-capric-triglyceride",
            "benzyl-alcohol-dehydroacetic-acid"
        };
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("water", "water-purified", new Amount.ToHundred(), ""));
        for (String key : keys) {
            lines.add(new Line(key, key, Amount.fixed("0.9"), ""));
        }
        return Subjects.of(
                new Formula(List.of(new Phase("a", "A", lines, List.of()))), Brief.of(ProductType.BODY_LOTION));
    }

    @Benchmark
    public Evaluation evaluateFortyLines() {
        return evaluator.evaluate(subject, book, DAY);
    }

    @Benchmark
    public Label labelFortyLines() {
        return labels.of(subject, book, LabelInput.named("Lotion"), DAY);
    }

    @Benchmark
    public Evaluator loadTheRuleTables() {
        return Evaluator.standard();
    }
}
