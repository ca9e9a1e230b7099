package stillroom.desk.assessor;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillroom.desk.assessor.AssessorFile.Share;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.shell.Format;
import stillroom.formulary.evaluation.Composition;
import stillroom.formulary.evaluation.SubstanceShare;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Material;
import stillroom.formulary.material.Substance;

/** The quantitative composition by substance, largest first. */
final class Shares {
    private Shares() {}

    static List<Share> of(Composition composition, Studied of) {
        return composition.shares().stream().map(share -> share(share, of)).toList();
    }

    private static Share share(SubstanceShare share, Studied of) {
        Optional<Substance> substance = of.book().substance(share.substance());
        double low = share.inThePot().lower() * 100;
        double high = share.inThePot().upper() * 100;
        return new Share(
                substance.map(Substance::inciName).orElse(share.substance()),
                substance.map(one -> String.join(", ", one.casNumbers())).orElse(""),
                functions(share, of),
                Format.significant(share.inThePot().nominal() * 100),
                Format.significant(low).equals(Format.significant(high))
                        ? ""
                        : Format.significant(low) + " to " + Format.significant(high),
                Format.words(share.role()));
    }

    /** Those of the materials of which it is the largest part; what is only brought along has none. */
    private static String functions(SubstanceShare share, Studied of) {
        return of.version().formula().lines().stream()
                .filter(line -> share.lines().contains(line.id()))
                .map(Line::materialKey)
                .distinct()
                .flatMap(key -> of.book().material(key).stream())
                .filter(card -> isMain(card, share.substance()))
                .flatMap(card -> card.functions().stream())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static boolean isMain(Material card, String substance) {
        return card.composition().stream()
                .filter(part ->
                        !part.substance().equals("water") || card.composition().size() == 1)
                .max((a, b) -> Double.compare(
                        a.massFraction().nominal(), b.massFraction().nominal()))
                .filter(part -> part.substance().equals(substance))
                .isPresent();
    }
}
