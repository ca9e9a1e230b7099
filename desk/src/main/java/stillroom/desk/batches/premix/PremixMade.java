package stillroom.desk.batches.premix;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.formulary.batch.AsMade;
import stillroom.formulary.batch.BatchCost;
import stillroom.formulary.batch.CostFacts;
import stillroom.formulary.batch.MadeLine;
import stillroom.formulary.material.Certificate;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.Strength;
import stillroom.formulary.plan.Balance;
import stillroom.formulary.plan.PlannedLine;
import stillroom.formulary.plan.PremixCard;
import stillroom.formulary.plan.PremixRecipe;
import stillroom.formulary.plan.Weighing;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Percent;
import stillroom.formulary.quantity.PercentRange;
import stillroom.formulary.quantity.Price;
import stillroom.ledger.lot.StockedLot;
import stillroom.science.weighing.ShareUncertainty;
import stillroom.science.weighing.ShareUncertainty.Weighed;

/** A premix as it was really weighed: how strong it is, how well that is known, what it cost. */
record PremixMade(BatchWork work, PremixRecipe recipe) {
    /** What stands in the vessels [g]. */
    Grams mass() {
        return work.state().inVessels().net();
    }

    /** Share of the concentrate as weighed; none while nothing of it is in [%]. */
    Optional<Percent> share() {
        return AsMade.of(work.state(), work.formula(), work.book())
                .line(PremixCard.CONCENTRATE)
                .map(MadeLine::made)
                .filter(made -> !made.isZero());
    }

    /**
     * Share of the raw material with twice its standard uncertainty to either side, from the weighings, and from those
     * of the premix that it was made of [%].
     */
    Optional<PercentRange> rootShare() {
        return share().map(share -> {
            BigDecimal below = upstream()
                    .map(Strength::percent)
                    .map(range -> range.middle().value())
                    .orElse(BigDecimal.valueOf(100));
            BigDecimal middle = share.value().multiply(below).movePointLeft(2);
            double own = deviation().doubleValue() / share.value().doubleValue();
            double before =
                    upstream().map(Strength::percent).map(PremixMade::relative).orElse(0.0);
            BigDecimal twice = middle.multiply(BigDecimal.valueOf(2 * Math.hypot(own, before)));
            return new PercentRange(
                    new Percent(middle.subtract(twice).max(BigDecimal.ZERO).round(MathContext.DECIMAL64)),
                    new Percent(middle.add(twice).min(BigDecimal.valueOf(100)).round(MathContext.DECIMAL64)));
        });
    }

    /** Standard uncertainty as a part of the figure, where the range is twice that to either side. */
    static double relative(PercentRange range) {
        double middle = range.middle().value().doubleValue();
        return middle > 0
                ? (range.high().value().doubleValue() - range.low().value().doubleValue()) / 4 / middle
                : 0;
    }

    /** Standard uncertainty of the concentrate's share [% of the premix]. */
    private BigDecimal deviation() {
        List<PlannedLine> lines = work.plan().orElseThrow().lines();
        int index = 0;
        for (int i = 0; i < lines.size(); i++) {
            index = lines.get(i).lineId().equals(PremixCard.CONCENTRATE) ? i : index;
        }
        List<Weighed> weighed = lines.stream()
                .map(line -> new Weighed(work.state().poured(line.lineId()).value(), spread(line)))
                .toList();
        return ShareUncertainty.percent(weighed, index);
    }

    private BigDecimal spread(PlannedLine line) {
        return work.desk().ledger().equipment().balances().stream()
                .filter(balance -> balance.name().equals(line.balance()))
                .findFirst()
                .map((Balance balance) ->
                        new Weighing(balance, true).deviation().value())
                .orElse(BigDecimal.ZERO);
    }

    /** Where the concentrate is a premix itself: how strong the lot was of which most was poured, else its card. */
    private Optional<Strength> upstream() {
        boolean premix = new PremixDrawers(work.desk())
                .recipes()
                .read(recipe.concentrateKey())
                .isPresent();
        if (!premix) {
            return Optional.empty();
        }
        return work.state().pours().stream()
                .filter(pour -> pour.event().materialKey().equals(recipe.concentrateKey()))
                .flatMap(pour -> pour.event().lot().stream())
                .flatMap(code -> work.desk().ledger().lots().lot(code).stream())
                .map(StockedLot::lot)
                .flatMap(lot -> lot.certificate().flatMap(Certificate::strength).stream())
                .findFirst()
                .or(() -> work.book().material(recipe.concentrateKey()).flatMap(card -> card.strength()));
    }

    /** What the lot's certificate says: strength and composition as weighed. */
    Certificate certificate() {
        String of = work.book()
                .material(recipe.materialKey())
                .flatMap(card -> card.strength())
                .map(Strength::of)
                .orElse("");
        return new Certificate(
                rootShare().map(share -> PremixCard.strength(share, of)),
                Optional.empty(),
                Optional.empty(),
                PremixCard.composition(
                        recipe.concentrateKey(),
                        recipe.carrierKey(),
                        share().orElseThrow().massFraction()),
                "batch " + work.batch().code());
    }

    /** What its materials cost; none where a price is missing. */
    Optional<Price> price() {
        List<Lot> lots =
                work.desk().ledger().lots().all().stream().map(StockedLot::lot).toList();
        BatchCost cost = BatchCost.of(
                work.state(), new CostFacts(lots, work.book(), Money.ZERO, 0, Money.ZERO, Money.ZERO, Money.ZERO));
        return cost.unpriced().isEmpty() && mass().signum() > 0
                ? Optional.of(new Price(cost.material(), mass()))
                : Optional.empty();
    }
}
