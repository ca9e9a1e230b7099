package stillroom.formulary.batch;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.hygiene.Standing;
import stillroom.formulary.material.Lot;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.plan.Balance;

/**
 * What is known around a batch while something is entered.
 *
 * @param lots all lots of the workshop, whatever their state
 * @param book the cards of what may be poured
 * @param today the day on which lots are judged expired
 * @param vessels how clean the vessels are that the workshop has on its list
 * @param premixes how long those lots stand that are premixes
 */
public record BenchFacts(
        List<Balance> balances,
        List<Lot> lots,
        MaterialBook book,
        LocalDate today,
        List<Standing> vessels,
        List<Hold> premixes) {
    public BenchFacts {
        balances = List.copyOf(balances);
        lots = List.copyOf(lots);
        vessels = List.copyOf(vessels);
        premixes = List.copyOf(premixes);
    }

    public BenchFacts(List<Balance> balances, List<Lot> lots, MaterialBook book, LocalDate today) {
        this(balances, lots, book, today, List.of(), List.of());
    }

    public BenchFacts(
            List<Balance> balances, List<Lot> lots, MaterialBook book, LocalDate today, List<Standing> vessels) {
        this(balances, lots, book, today, vessels, List.of());
    }

    /** How clean a vessel is; none where it is not on the workshop's list. */
    Optional<Standing> standing(String vessel) {
        return vessels.stream()
                .filter(one -> one.tool().name().equalsIgnoreCase(vessel.strip()))
                .findFirst();
    }

    /** How long a lot of premix stands; none where it is none. */
    Optional<Hold> premix(String lot) {
        return premixes.stream().filter(hold -> hold.vessel().equals(lot)).findFirst();
    }

    Optional<Balance> balance(String name) {
        return balances.stream().filter(balance -> balance.name().equals(name)).findFirst();
    }

    Optional<Lot> lot(String code) {
        return lots.stream().filter(lot -> lot.code().equals(code)).findFirst();
    }
}
