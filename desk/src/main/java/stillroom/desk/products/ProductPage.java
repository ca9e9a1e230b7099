package stillroom.desk.products;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Typed;
import stillroom.desk.trials.Studies.Study;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.formula.FormulaVersion;
import stillroom.formulary.formula.Product;
import stillroom.formulary.judgement.claim.ClaimsGate.Verdict;
import stillroom.ledger.batch.BatchRow;

/**
 * One product: its brief in short and all versions of its formula.
 *
 * @param versions newest first
 * @param studies trials and curves on it
 * @param typed the form that duplicates it
 */
public record ProductPage(
        Frame frame,
        Product product,
        List<VersionRow> versions,
        List<Study> studies,
        Verdict verdict,
        String currency,
        Typed typed) {
    public ProductPage {
        versions = List.copyOf(versions);
        studies = List.copyOf(studies);
    }

    /** A version with the batches that were made from it. */
    public record VersionRow(FormulaVersion version, String day, List<BatchRow> batches) {
        public VersionRow {
            batches = List.copyOf(batches);
        }

        public boolean isDraft() {
            return !version.kept();
        }
    }

    /** One line of the brief in short. */
    public record Fact(String name, String says) {}

    public Optional<VersionRow> newestDraft() {
        return versions.stream().filter(VersionRow::isDraft).findFirst();
    }

    public List<Choice> numbers() {
        return versions.stream()
                .map(row -> new Choice(
                        Integer.toString(row.version().number()),
                        "Version " + row.version().number()))
                .toList();
    }

    /** The second newest version, to be held against the newest. */
    public String before() {
        return versions.size() < 2
                ? ""
                : Integer.toString(versions.get(1).version().number());
    }

    /** What the brief says, without what it leaves open. */
    public List<Fact> facts() {
        Brief brief = product.brief();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Kind", brief.type().words() + (brief.type().leaveOn() ? ", left on" : ", rinsed off")));
        facts.add(new Fact(
                "For",
                brief.people().stream()
                        .sorted(Comparator.naturalOrder())
                        .map(BriefPage::words)
                        .collect(Collectors.joining(", "))));
        facts.add(new Fact("Where", brief.where()));
        facts.add(new Fact("Feel", brief.feel()));
        facts.add(new Fact("pH", ph(brief)));
        facts.add(new Fact(
                "Price ceiling",
                brief.priceCeilingPer100g()
                        .map(money -> money.shown() + " " + currency + " for 100 g")
                        .orElse("")));
        facts.add(new Fact("Claims", String.join("; ", brief.claims())));
        facts.add(new Fact("Pack", brief.pack()));
        facts.add(new Fact("Market", brief.market()));
        facts.add(new Fact("Note", product.note()));
        return facts.stream().filter(fact -> !fact.says().isEmpty()).toList();
    }

    private static String ph(Brief brief) {
        String band = brief.phBand().map(range -> Format.range(range, 1)).orElse("");
        return brief.phTarget()
                .map(target -> (band.isEmpty() ? "" : band + ", ") + "aim " + Format.figure(target, 1))
                .orElse(band);
    }

    /** The newest versions beside each other. */
    public String severalPath() {
        return versions.stream()
                .limit(3)
                .map(row -> "of=" + product.id() + "." + row.version().number())
                .collect(java.util.stream.Collectors.joining("&", "/side-by-side?", ""));
    }
}
