package stillroom.desk.imports;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.imports.ReadMaterial;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Money;
import stillroom.formulary.quantity.Price;

/**
 * The fields of a material of a list: what was read, over it what the maker typed.
 *
 * @param material as it would be stored
 * @param typed what the fields say and what is wrong with it
 * @param own whether anything of it is the maker's own
 */
record MaterialFields(ReadMaterial material, Typed typed, boolean own) {
    static MaterialFields of(ReadMaterial read, String field, Decisions decisions) {
        Map<String, String> values = guessed(read, field);
        boolean own = values.keySet().stream().anyMatch(decisions.fields()::containsKey);
        values.replaceAll((name, guess) -> decisions.of(name).orElse(guess));
        Input input = Input.of(values);
        ReadMaterial material = own ? over(read, field, input) : read;
        return new MaterialFields(material, input.typed(), own);
    }

    /** What the fields hold where nothing was typed. */
    static Map<String, String> guessed(ReadMaterial read, String field) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("supplier-" + field, read.supplier());
        values.put(
                "paid-" + field,
                read.price().map(price -> price.paid().value().toPlainString()).orElse(""));
        values.put(
                "per-" + field,
                read.price().map(price -> price.amount().toString()).orElse(""));
        values.put("stock-" + field, read.stock().map(Grams::toString).orElse(""));
        values.put("lot-" + field, read.lot());
        values.put("expires-" + field, read.expires().map(Object::toString).orElse(""));
        return values;
    }

    private static ReadMaterial over(ReadMaterial read, String field, Input input) {
        return new ReadMaterial(
                read.row(),
                read.nameCell(),
                read.names(),
                read.cas(),
                read.function(),
                input.text("supplier-" + field),
                price(input, field),
                input.grams("stock-" + field, "The amount on the shelf"),
                input.text("lot-" + field),
                read.received(),
                input.day("expires-" + field, "The day before which it is best used"),
                read.note(),
                read.flags());
    }

    private static Optional<Price> price(Input input, String field) {
        Optional<Money> paid = input.money("paid-" + field, "The price");
        Optional<Grams> per = input.grams("per-" + field, "The amount it was paid for");
        if (paid.isEmpty()) {
            return Optional.empty();
        }
        if (per.isEmpty() || per.get().isZero()) {
            return input.hasProblem("per-" + field)
                    ? Optional.empty()
                    : input.refuse("per-" + field, "Say for how many grams this was paid.");
        }
        return Optional.of(new Price(paid.get(), per.get()));
    }
}
