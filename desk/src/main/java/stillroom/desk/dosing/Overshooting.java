package stillroom.desk.dosing;

import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.dosing.DosingPage.Overshoot;
import stillroom.desk.shell.Format;
import stillroom.formulary.constants.PhConstants;
import stillroom.formulary.dosing.Correctors;
import stillroom.formulary.dosing.InBulk;
import stillroom.formulary.dosing.PhSession;
import stillroom.formulary.dosing.PhTasks;
import stillroom.formulary.material.Family;
import stillroom.science.dosing.CounterCorrection;
import stillroom.science.dosing.Dose;
import stillroom.science.dosing.Dosing;
import stillroom.science.dosing.DosingAnswer;

/** Too much was poured: what going back costs, and whether it may stay as it is. */
record Overshooting(BatchWork work, PhSession session, DosingAsk ask, Shelf shelf, PhConstants constants) {

    /** None where nothing was poured, or not too much. */
    Optional<Overshoot> look() {
        Optional<Double> read = session.readNow().map(reading -> reading.pH());
        List<InBulk> poured = session.now().additions();
        if (read.isEmpty() || ask.target().isEmpty() || poured.isEmpty()) {
            return Optional.empty();
        }
        Optional<Boolean> lowers = lowers(poured.get(poured.size() - 1).materialKey());
        double beyond = read.get() - ask.target().get();
        boolean over = lowers.filter(acid -> acid == beyond < 0 && Math.abs(beyond) > 1e-9)
                .isPresent();
        return over ? Optional.of(cost(read.get(), Math.abs(beyond), lowers.orElseThrow())) : Optional.empty();
    }

    private Optional<Boolean> lowers(String key) {
        return new Correctors(work.book(), constants)
                .of(key)
                .match(known -> Optional.of(known.corrector().lowersPh()), because -> Optional.empty());
    }

    private Overshoot cost(double read, double beyond, boolean acidPoured) {
        boolean leave = beyond <= ask.halfBand();
        String says = "Read " + Format.figure(read, 2) + ", " + Format.figure(beyond, 2)
                + (acidPoured ? " below" : " above") + " the target; the band allows "
                + Format.figure(ask.halfBand(), 2) + ". "
                + (leave ? "Leaving it is within the product's band." : "Leaving it is outside the product's band.");
        String opposite =
                lowers(ask.corrector()).filter(lowers -> lowers != acidPoured).isPresent()
                        ? ask.corrector()
                        : shelf.first(acidPoured ? Family.BASE : Family.ACID).orElse("");
        return new Overshoot(says, price(opposite), leave);
    }

    private String price(String opposite) {
        if (opposite.isEmpty()) {
            return "No opposite corrector with a known strength is on the shelf's list.";
        }
        DosingAsk back = ask.with(opposite, shelf.suggestedLot(opposite));
        return new PhTasks(
                        session,
                        back.wish().orElseThrow(),
                        DosingCards.of(work, back).book(),
                        constants)
                .bulk()
                .match(
                        task -> Dosing.next(task)
                                .match(
                                        proposed -> says(
                                                opposite, proposed.dose(), CounterCorrection.of(task, proposed.dose())),
                                        inBand -> "By the fit it lies in the band.",
                                        refused -> sentence(refused)),
                        because -> "The cost is not known: " + because + ".");
    }

    private static String sentence(DosingAnswer.Refused refused) {
        return "The cost of going back is not known: "
                + refused.reasons().get(0).sentence() + ".";
    }

    private String says(String opposite, Dose dose, CounterCorrection cost) {
        return "Going back to the target takes about " + Format.figure(cost.grams(), 2) + " g "
                + work.cards().name(opposite) + " (" + Format.range(dose.lowGrams(), dose.highGrams(), 2) + " g), "
                + Format.figure(cost.percentOfBulk(), 3) + " % of the bulk. It leaves "
                + Format.figure(1000 * cost.saltMolPerKg(), 2)
                + " mmol of salt in each kilogram, and moves the ionic strength by "
                + Format.figure(cost.ionicStrengthRise(), 4) + " mol/kg with the first part.";
    }
}
