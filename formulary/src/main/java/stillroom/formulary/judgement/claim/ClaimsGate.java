package stillroom.formulary.judgement.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.rule.GovernedClaim;
import stillroom.formulary.rule.RuleBook;

/**
 * Holds the words of a brief against claims that another law governs (sun protection, acne, ...) and claims that ask
 * for evidence ("free from", "hypoallergenic").
 */
public final class ClaimsGate {
    private final List<GovernedClaim> claims;

    public ClaimsGate(RuleBook rules) {
        this.claims = rules.claims();
    }

    /** One match: what was matched, and on which of the maker's words. */
    public record Hit(GovernedClaim claim, String said) {}

    /** What the gate says of a brief. */
    public record Verdict(List<Hit> hits) {
        public Verdict {
            hits = List.copyOf(hits);
        }

        /** Claims that another law governs. */
        public List<Hit> governed() {
            return hits.stream()
                    .filter(hit -> hit.claim().weight() == GovernedClaim.Weight.GOVERNED)
                    .toList();
        }

        /** Whether the product stays with private notes: no public recipe, no efficacy, no green result. */
        public boolean blocksPublicRecipe() {
            return !governed().isEmpty();
        }
    }

    public Verdict judge(Brief brief) {
        List<Hit> hits = new ArrayList<>();
        for (GovernedClaim claim : claims) {
            if (claim.appliesIn(brief.market())) {
                said(brief).stream()
                        .filter(words -> matches(claim, words))
                        .findFirst()
                        .ifPresent(words -> hits.add(new Hit(claim, words)));
            }
        }
        return new Verdict(hits);
    }

    private static List<String> said(Brief brief) {
        List<String> said = new ArrayList<>(brief.claims());
        said.add(brief.where());
        said.add(brief.feel());
        if (brief.people().contains(Brief.People.BROKEN_SKIN)) {
            said.add("on broken skin");
        }
        said.removeAll(Set.of(""));
        return said;
    }

    private static boolean matches(GovernedClaim claim, String words) {
        String rest = words.toLowerCase(Locale.ROOT);
        for (String unless : claim.unless()) {
            rest = rest.replace(unless, " ");
        }
        for (String phrase : claim.words()) {
            if (startsAWord(rest, phrase)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the phrase stands in the text at the beginning of a word. */
    private static boolean startsAWord(String text, String phrase) {
        for (int at = text.indexOf(phrase); at >= 0; at = text.indexOf(phrase, at + 1)) {
            if (at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1))) {
                return true;
            }
        }
        return false;
    }
}
