package stillroom.desk.materials;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Typed;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.Family;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Strength;

/** Builds the page of the form. */
record EditView(Desk desk, Inci inci) {
    private static final EditPage.Choices CHOICES = new EditPage.Choices(
            Choice.of(Family.class, Format::words),
            Stream.concat(Stream.of(new Choice("", "choose")), Choice.of(Strength.Basis.class, Words::basis).stream())
                    .toList(),
            Choice.of(Constituent.Role.class, Words::role),
            Choice.of(ChargeClass.class, Words::charge));

    static EditView of(Desk desk) {
        return new EditView(desk, new Inci(desk.ledger().materials().book()));
    }

    EditPage adding(Typed typed) {
        return page("New material", "/materials/new", "", typed, "");
    }

    EditPage changing(Material card, Typed typed, String conflict) {
        return page("Edit " + card.name(), "/materials/" + card.key() + "/edit", card.key(), typed, conflict);
    }

    private EditPage page(String title, String path, String key, Typed typed, String conflict) {
        int rows = ConstituentRows.count(typed.values());
        return new EditPage(
                desk.frame(title, Section.SHELF),
                path,
                key,
                typed,
                rows,
                IntStream.range(0, rows).mapToObj(row -> isUnknown(typed, row)).toList(),
                conflict,
                key.isEmpty() ? Impact.NONE : Impact.of(desk.ledger(), key),
                inci.names(),
                inci.cards().choices(key),
                Fact.USUAL_SOURCES,
                desk.ledger().settings().read().currency(),
                CHOICES,
                CertificateFields.typeWords());
    }

    private boolean isUnknown(Typed typed, int row) {
        String name = typed.value(ConstituentRows.field(row, "name"));
        return !name.isBlank()
                && !InnerCards.isMarked(name)
                && inci.named(name).isEmpty()
                && inci.cards().named(name).isEmpty();
    }
}
