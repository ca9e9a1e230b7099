package stillroom.formulary.judgement.pot;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;

/** What would make a computed pH a guess. */
record AcidityGaps(
        List<Item> items, List<Share> shares, Composition composition, Dissolved dissolved, List<Gathered> gathered) {
    private static final double UNKNOWN_ALLOWED = 0.002;
    private static final double SOME = 0.002;

    Optional<String> first() {
        if (composition.unknownFraction() > UNKNOWN_ALLOWED) {
            return Optional.of("no composition for " + Words.list(Item.names(items, composition.unknown())));
        }
        if (dissolved.parts().isEmpty() && gathered.isEmpty()) {
            return Optional.of("nothing in it with known constants sets the pH");
        }
        return soaps().or(this::swelling).or(this::soapMaking).or(this::strangers);
    }

    private Optional<String> soaps() {
        List<String> soaps = dissolved.parts().stream()
                .filter(part -> part.acid().formsMicelles())
                .map(part -> part.share().name())
                .toList();
        return soaps.isEmpty()
                ? Optional.empty()
                : Optional.of(Words.list(soaps) + " gathers into micelles, which the model leaves out");
    }

    /** A thickener with acid groups of which neither number nor strength is known, or that is sold half neutralised. */
    private Optional<String> swelling() {
        List<Share> swelling = shares.stream()
                .filter(share -> share.is("carbomer-like") && !isGathered(share))
                .toList();
        return swelling.isEmpty()
                ? Optional.empty()
                : Optional.of(Words.list(Pot.names(swelling))
                        + (swelling.size() == 1 ? " itself takes" : " themselves take")
                        + " up acid or base, and how much stands on no card");
    }

    private Optional<String> soapMaking() {
        boolean base = items.stream()
                .anyMatch(item -> item.is(Family.BASE) && item.portion().share().upper() > 0);
        boolean fattyAcid = shares.stream().anyMatch(share -> share.is("fatty-acid") && share.isIngredient());
        return base && fattyAcid
                ? Optional.of("base and fatty acid make soap, which the model leaves out")
                : Optional.empty();
    }

    private Optional<String> strangers() {
        List<String> strangers = items.stream()
                .filter(this::bringsUnknownAcidity)
                .map(Item::name)
                .distinct()
                .toList();
        return strangers.isEmpty()
                ? Optional.empty()
                : Optional.of(Words.list(strangers)
                        + (strangers.size() == 1 ? " is" : " are")
                        + " acid or alkaline as supplied, by how much is not on the card");
    }

    /** A card far from neutral none of whose parts has constants, in more than a trace. */
    private boolean bringsUnknownAcidity(Item item) {
        // Weak-acid surfactants buffer although they are sold near neutral, so their shelf is held more tightly.
        boolean far = item.material()
                .flatMap(Material::ownPh)
                .map(ph -> item.is(Family.SURFACTANT) ? ph.high() > 9 : ph.low() > 9.5 || ph.high() < 3.5)
                .orElse(false);
        return far && !isExplained(item) && item.portion().share().nominal() > SOME;
    }

    /** Whether what sets the pH of a material has constants. */
    boolean isExplained(Item item) {
        String line = item.portion().lineId();
        return dissolved.parts().stream().anyMatch(part -> part.share().lines().contains(line))
                || gathered.stream().anyMatch(one -> one.share().lines().contains(line));
    }

    private boolean isGathered(Share share) {
        return gathered.stream().anyMatch(one -> one.share() == share);
    }
}
