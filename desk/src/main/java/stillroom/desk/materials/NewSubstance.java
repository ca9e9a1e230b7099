package stillroom.desk.materials;

import static stillroom.desk.materials.ConstituentRows.field;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.formulary.material.CasNumber;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Parent;
import stillroom.formulary.material.Substance;

/** Reads what the maker knows about a substance that is not in the table. */
record NewSubstance(Input input, Inci inci, int row) {
    /** The new substance; refused until the maker has said that it is one, so that a slip of the pen makes none. */
    Optional<Substance> read(String name) {
        if (!input.has(field(row, "new"))) {
            return input.refuse(
                    field(row, "name"),
                    "No substance has this INCI name. Mend the spelling, or tick \"new substance\" below it.");
        }
        String key = Slug.of(name);
        if (key.isEmpty()) {
            return input.refuse(field(row, "name"), "An INCI name has letters in it.");
        }
        Optional<Substance> namesake = inci.substance(key);
        if (namesake.isPresent()) {
            return input.refuse(
                    field(row, "name"), "This is too like " + namesake.get().inciName() + "; choose that.");
        }
        ChargeClass charge =
                input.choice(field(row, "charge"), "Charge", ChargeClass.class).orElse(ChargeClass.NONE);
        return Optional.of(new Substance(
                key,
                name,
                casNumbers(),
                input.number(field(row, "molar-mass"), "Molar mass", "1", "10000000"),
                charge,
                input.has(field(row, "surfactant")),
                Optional.empty(),
                List.of(),
                "the maker's own",
                countedAs(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    /** The acid, base or alcohol in a salt or an ester; a law often limits it in the substance's place. */
    private Optional<Parent> countedAs() {
        String name = input.text(field(row, "counted-as"));
        Optional<Double> units = input.number(field(row, "counted-units"), "How many of it", "0.1", "20");
        Optional<Substance> acid = inci.named(name);
        if (!name.isEmpty() && acid.isEmpty()) {
            return input.refuse(field(row, "counted-as"), "No substance has this INCI name.");
        }
        return acid.map(known -> Parent.ester(known.key(), units.orElse(1.0)));
    }

    private List<String> casNumbers() {
        List<String> numbers = Arrays.stream(input.text(field(row, "cas")).split("[,;\\s]+"))
                .filter(number -> !number.isEmpty())
                .toList();
        numbers.stream()
                .filter(number -> !CasNumber.isSound(number))
                .findFirst()
                .ifPresent(number -> input.refuse(
                        field(row, "cas"),
                        number + " is not a CAS number: its check digit or form (such as 56-81-5) is wrong."));
        return numbers;
    }
}
