package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.material.CasNumber;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.CounterIon;
import stillroom.formulary.material.Parent;
import stillroom.formulary.material.Substance;

/** One substance with what laws and equilibria ask of it. */
final class SubstanceSection {
    private static final int MOST_MOLAR_MASS = 10_000_000;
    private static final int MOST_HLB = 60;
    private static final int MOST_UNITS = 1_000;

    private SubstanceSection() {}

    /** Empty, with the problem noted, where it has no usable key or name. */
    static Optional<Substance> read(Fields unnamed) {
        String key = Words.bare(unnamed.text("key"));
        String inci = unnamed.requiredText("inci", "the INCI name, as a label writes it");
        if (!key.matches("[a-z0-9][a-z0-9-]{0,79}")) {
            unnamed.problem("key", "key must be small letters, digits and hyphens, is \"" + Shown.brief(key) + "\"");
            return Optional.empty();
        }
        Fields fields = unnamed.called("substance " + key);
        String acid = fields.text("acid");
        String source = fields.text("source");
        Substance substance = new Substance(
                key,
                inci,
                cas(fields),
                fields.number("molarMass", 0, MOST_MOLAR_MASS).filter(one -> one > 0),
                fields.word("charge", ChargeClass.class).orElse(ChargeClass.NONE),
                fields.flag("surfactant"),
                acid.isEmpty() ? Optional.empty() : Optional.of(acid),
                fields.texts("tags"),
                source.isEmpty() ? "stated in the file" : source,
                parent(fields),
                Spans.interval(fields, "hlb", 0, MOST_HLB),
                Spans.interval(fields, "requiredHlb", 0, MOST_HLB),
                fields.number("chargeMolPerKilogram", 0, MOST_UNITS));
        fields.done();
        return Optional.of(substance);
    }

    private static List<String> cas(Fields fields) {
        List<String> numbers = fields.texts("cas");
        for (String number : numbers) {
            if (!CasNumber.isSound(number)) {
                fields.problem(
                        "cas", "cas \"" + Shown.brief(number) + "\" is no registry number: its check digit is wrong");
            }
        }
        return numbers;
    }

    private static Optional<Parent> parent(Fields of) {
        return of.object("parent").flatMap(fields -> {
            String substance = fields.requiredText("substance", "the key of what it is counted as");
            double units = fields.number("units", 0, MOST_UNITS).orElse(1.0);
            Optional<CounterIon> ion = fields.word("ion", CounterIon.class);
            double ionUnits = fields.number("ionUnits", 0, MOST_UNITS).orElse(ion.isPresent() ? 1.0 : 0.0);
            fields.done();
            if (!(units > 0) || ion.isPresent() != ionUnits > 0) {
                fields.problem("units", "units must be above 0, and ionUnits above 0 only with an ion");
                return Optional.empty();
            }
            return Optional.of(new Parent(substance, units, ion, ionUnits));
        });
    }

    static void write(Substance substance, ObjectNode into) {
        into.put("key", substance.key());
        into.put("inci", substance.inciName());
        if (!substance.casNumbers().isEmpty()) {
            Spans.list(into, "cas", substance.casNumbers());
        }
        substance.molarMassGramsPerMol().ifPresent(one -> into.put("molarMass", Spans.plain(one)));
        if (substance.charge() != ChargeClass.NONE) {
            into.put("charge", Words.of(substance.charge()));
        }
        if (substance.surfactant()) {
            into.put("surfactant", true);
        }
        substance.acidKey().ifPresent(one -> into.put("acid", one));
        if (!substance.tags().isEmpty()) {
            Spans.list(into, "tags", substance.tags());
        }
        substance.parent().ifPresent(one -> {
            ObjectNode parent = into.putObject("parent");
            parent.put("substance", one.substance());
            parent.put("units", Spans.plain(one.units()));
            one.counterIon().ifPresent(ion -> {
                parent.put("ion", Words.of(ion));
                parent.put("ionUnits", Spans.plain(one.counterIonUnits()));
            });
        });
        Spans.put(into, "hlb", substance.hlb());
        Spans.put(into, "requiredHlb", substance.requiredHlb());
        substance.chargeMolPerKilogram().ifPresent(one -> into.put("chargeMolPerKilogram", Spans.plain(one)));
        Texts.put(into, "source", substance.source());
    }
}
