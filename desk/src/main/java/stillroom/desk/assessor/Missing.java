package stillroom.desk.assessor;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stillroom.desk.batches.Cards;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.papers.PaperBook;
import stillroom.desk.papers.PaperBook.On;
import stillroom.desk.safety.SafetyPage.Line;
import stillroom.desk.safety.SafetySheet;
import stillroom.desk.shell.Desk;
import stillroom.formulary.batch.BatchStage;
import stillroom.formulary.evaluation.Evaluation;
import stillroom.formulary.evaluation.Finding;
import stillroom.formulary.label.Label;
import stillroom.formulary.material.Paper;
import stillroom.ledger.batch.BatchRow;

/** What an assessor will ask for and the workshop does not have yet. A missing figure never reads as safe. */
record Missing(Desk desk, Studied of, Evaluation judged, Label label, SafetySheet safety, PaperBook filed) {
    List<String> sentences() {
        List<String> missing = new ArrayList<>();
        if (!of.version().kept()) {
            missing.add("The formula is a draft; an assessment is of a version that is kept.");
        }
        judged.findings().stream()
                .filter(found -> found.kind() == Finding.Kind.CANNOT_JUDGE)
                .forEach(found -> missing.add(found.says()));
        if (!safety.missing().isEmpty()) {
            missing.add(safety.missing());
        }
        if (safety.exposure().startsWith("not known")) {
            missing.add("The exposure to the product is " + safety.exposure() + ".");
        }
        margins(missing);
        product(missing);
        sheets(missing);
        batches(missing);
        label.findings().stream()
                .filter(found -> found.kind() == Finding.Kind.CANNOT_JUDGE
                        || found.kind().isWarning())
                .forEach(found -> missing.add("Label: " + found.says()));
        return missing.stream().distinct().toList();
    }

    private void margins(List<String> missing) {
        String without = safety.lines().stream()
                .filter(line -> !line.key().equals("water"))
                .filter(line -> line.margin().startsWith("not known"))
                .map(Line::name)
                .collect(Collectors.joining(", "));
        if (!without.isEmpty()) {
            missing.add("No margin of safety for: " + without + ".");
        }
    }

    private void product(List<String> missing) {
        List<Paper.Kind> there = papers(On.PRODUCT, Long.toString(of.product().id()));
        if (!there.contains(Paper.Kind.STABILITY_STUDY)) {
            missing.add("No stability study is on file.");
        }
        if (!there.contains(Paper.Kind.CHALLENGE_TEST)) {
            missing.add("No challenge test is on file: only that shows whether the product is preserved.");
        }
    }

    private void sheets(List<String> missing) {
        Cards cards = new Cards(of.book());
        String without = of.version().formula().lines().stream()
                .map(line -> line.materialKey())
                .distinct()
                .filter(key -> !papers(On.MATERIAL, key).contains(Paper.Kind.SAFETY_SHEET))
                .map(cards::name)
                .collect(Collectors.joining(", "));
        if (!without.isEmpty()) {
            missing.add("No safety data sheet is on file for: " + without + ".");
        }
    }

    private List<Paper.Kind> papers(On on, String key) {
        return filed.on(on, key).stream().map(paper -> paper.paper().kind()).toList();
    }

    private void batches(List<String> missing) {
        List<BatchRow> made = desk.ledger()
                .batches()
                .fromVersion(of.product().id(), of.version().number());
        if (made.isEmpty()) {
            missing.add("No batch was made from this version.");
        } else if (made.stream().noneMatch(row -> row.stage() == BatchStage.RELEASED)) {
            missing.add("No batch of this version was released.");
        }
    }
}
