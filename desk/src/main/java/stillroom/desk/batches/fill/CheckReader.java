package stillroom.desk.batches.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Decimals;
import stillroom.desk.shell.Input;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.batch.FillCheck;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.pack.Pack;
import stillroom.formulary.quantity.Grams;

/** Reads a fill check: the gross weight of each container, with its own empty weight where it was weighed. */
record CheckReader(Input input, Contents contents, Packing packing) {
    Optional<BatchEvent> read() {
        Optional<Pack> pack = packing.lastPack();
        Optional<Grams> nominal = input.grams("nominal", "The declared content").or(contents::declaredGrams);
        Optional<Grams> tare = input.grams("check-tare", "The empty weight").or(() -> pack.flatMap(Pack::tare));
        Grams deviation = input.grams("check-deviation", "The scatter")
                .or(() -> pack.flatMap(Pack::tareDeviation))
                .orElse(Grams.ZERO);
        if (nominal.isEmpty()) {
            input.refuse(
                    "nominal", "The declared content in g is missing; for ml the density as filled is needed too.");
        }
        List<Concern.Container> containers = new ArrayList<>();
        boolean eachTared = true;
        int number = 0;
        for (String line : input.lines("gross")) {
            number++;
            eachTared &= container(line, number, tare, containers);
        }
        List<Grams> net = containers.stream().map(Concern.Container::net).toList();
        if (!input.isSound() || nominal.isEmpty()) {
            return Optional.empty();
        }
        FillCheck.problems(nominal.get(), net)
                .forEach(problem ->
                        input.refuse(problem.field().equals("net") ? "gross" : problem.field(), problem.sentence()));
        return Optional.of(new BatchEvent.Concerned(new Concern.FillChecked(
                pack.map(Pack::name).orElse("container"),
                nominal.get(),
                containers,
                eachTared ? Grams.ZERO : deviation)));
    }

    /** Whether the container was weighed empty itself. */
    private boolean container(String line, int number, Optional<Grams> tare, List<Concern.Container> containers) {
        String[] figures = line.strip().split("[\\s;]+");
        Optional<Grams> gross = grams(figures[0]);
        boolean own = figures.length > 1;
        Optional<Grams> empty = own ? grams(figures[1]) : tare;
        if (gross.isEmpty() || (own && empty.isEmpty())) {
            input.refuse("gross", "Line " + number + " is not a weight in g, or two of them.");
        } else if (empty.isEmpty()) {
            input.refuse("check-tare", "The empty weight is missing: give the mean, or one behind each weight.");
        } else {
            containers.add(new Concern.Container(gross.get(), empty.get()));
        }
        return own;
    }

    private static Optional<Grams> grams(String figure) {
        return Decimals.read(figure).map(Grams::new);
    }
}
