package stillroom.formulary.batch;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;

/**
 * What is known around a batch while something is entered.
 *
 * @param lots all lots of the workshop, whatever their state
 * @param book the cards of what may be poured
 * @param today the day on which lots are judged expired
 */
public record BenchFacts(List<Balance> balances, List<Lot> lots, MaterialBook book, LocalDate today) {
    public BenchFacts {
        balances = List.copyOf(balances);
        lots = List.copyOf(lots);
    }

    Optional<Balance> balance(String name) {
        return balances.stream().filter(balance -> balance.name().equals(name)).findFirst();
    }

    Optional<Lot> lot(String code) {
        return lots.stream().filter(lot -> lot.code().equals(code)).findFirst();
    }
}
