package stillroom.desk.products;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Markets;
import stillroom.desk.shell.Typed;
import stillroom.formulary.formula.Brief.People;
import stillroom.formulary.formula.Product;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.judgement.claim.ClaimsGate.Verdict;

/**
 * The brief of a product, new or known.
 *
 * @param product none while it is new
 * @param verdict what the claims gate says of what stands in the form
 */
public record BriefPage(Frame frame, Optional<Product> product, Typed typed, Verdict verdict, String currency) {
    public String path() {
        return product.map(known -> "/products/" + known.id() + "/brief").orElse("/products/new");
    }

    public List<Choice> types() {
        return Choice.of(ProductType.class, ProductType::words);
    }

    public List<Choice> markets() {
        return Markets.choices();
    }

    public List<Choice> people() {
        return Arrays.stream(People.values())
                .map(one -> new Choice(BriefForm.ticked(one), words(one)))
                .toList();
    }

    static String words(People people) {
        return switch (people) {
            case ADULTS -> "adults";
            case CHILDREN_3_AND_OVER -> "children of 3 and over";
            case UNDER_3_YEARS -> "children under 3";
            case PREGNANT -> "pregnant people";
            case BROKEN_SKIN -> "people with broken skin";
            case EYE_AREA -> "near the eyes";
        };
    }
}
