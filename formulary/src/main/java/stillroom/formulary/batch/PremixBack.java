package stillroom.formulary.batch;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillroom.formulary.formula.Formula;
import stillroom.formulary.formula.Line;
import stillroom.formulary.material.Constituent;
import stillroom.formulary.material.MaterialBook;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.quantity.Percent;

/**
 * Says what came in as a premix by the materials of which it was made: the line has its material again, the carrier goes
 * to the line that it was taken out of.
 */
public final class PremixBack {
    private static final String CARD = "material:";
    private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

    private final Formula formula;
    private final MaterialBook cards;
    private final Set<String> premixes;

    /**
     * @param cards as the lots that were used are, so that a premix is what was weighed and not what was planned
     * @param premixes keys of their cards
     */
    public PremixBack(Formula formula, MaterialBook cards, Set<String> premixes) {
        this.formula = formula;
        this.cards = cards;
        this.premixes = Set.copyOf(premixes);
    }

    /** The same batch without premixes; premixes that the formula itself asks for stay. */
    public AsMade of(AsMade made) {
        List<MadeLine> lines = new ArrayList<>(
                made.lines().stream().filter(line -> !isOpened(line)).toList());
        made.lines().stream().filter(this::isOpened).forEach(line -> open(line, lines));
        return new AsMade(
                inOrder(made.lines(), lines),
                made.lots(),
                made.added(),
                made.product(),
                made.evaporated(),
                made.hotPours());
    }

    private boolean isOpened(MadeLine line) {
        boolean asked = formula.line(line.lineId())
                .filter(one -> one.materialKey().equals(line.materialKey()))
                .isPresent();
        return premixes.contains(line.materialKey())
                && !asked
                && !parts(line.materialKey(), 1).isEmpty();
    }

    /** Raw materials and their shares of the premix; premixes in it are opened in turn. */
    private Map<String, Double> parts(String key, double share) {
        Map<String, Double> parts = new LinkedHashMap<>();
        for (Constituent part :
                cards.material(key).map(card -> card.composition()).orElse(List.of())) {
            if (!part.substance().startsWith(CARD)) {
                return Map.of();
            }
            String inner = part.substance().substring(CARD.length());
            double of = share * part.massFraction().nominal();
            Map<String, Double> opened = premixes.contains(inner) ? parts(inner, of) : Map.of(inner, of);
            opened.forEach((raw, fraction) -> parts.merge(raw, fraction, Double::sum));
        }
        return parts;
    }

    private void open(MadeLine premix, List<MadeLine> lines) {
        Optional<String> asked = formula.line(premix.lineId()).map(Line::materialKey);
        Map<String, Double> parts = parts(premix.materialKey(), 1);
        BigDecimal left = BigDecimal.ONE;
        int open = parts.size();
        for (Map.Entry<String, Double> part : parts.entrySet()) {
            open--;
            BigDecimal share = open == 0
                    ? left
                    : BigDecimal.valueOf(part.getValue()).round(DIGITS).min(left);
            left = left.subtract(share);
            boolean own = asked.filter(part.getKey()::equals).isPresent();
            add(premix, part.getKey(), share, own, lines);
        }
    }

    /** Onto a line of the material, best of the same phase; where there is none it becomes one. */
    private void add(MadeLine premix, String key, BigDecimal share, boolean own, List<MadeLine> lines) {
        int at = own ? -1 : lineOf(key, premix.phaseId(), lines);
        MadeLine before = at >= 0 ? lines.get(at) : empty(premix, key, own);
        MadeLine more = new MadeLine(
                before.lineId(),
                before.phaseId(),
                before.materialKey(),
                before.target(),
                before.tolerance(),
                before.asked(),
                before.actual().plus(new Grams(part(premix.actual().value(), share))),
                before.made().plus(new Percent(part(premix.made().value(), share))),
                before.toReading());
        if (at >= 0) {
            lines.set(at, more);
        } else {
            lines.add(more);
        }
    }

    private static MadeLine empty(MadeLine premix, String key, boolean own) {
        return new MadeLine(
                own ? premix.lineId() : "made-" + key,
                premix.phaseId(),
                key,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Grams.ZERO,
                Percent.ZERO,
                false);
    }

    private static int lineOf(String key, String phase, List<MadeLine> lines) {
        int found = -1;
        for (int i = 0; i < lines.size(); i++) {
            MadeLine line = lines.get(i);
            boolean fits = line.materialKey().equals(key) && !line.toReading();
            if (fits && (found < 0 || line.phaseId().equals(phase))) {
                found = i;
            }
        }
        return found;
    }

    private static BigDecimal part(BigDecimal whole, BigDecimal share) {
        return whole.multiply(share, MathContext.DECIMAL64);
    }

    /** As they stood; what is new comes last. */
    private static List<MadeLine> inOrder(List<MadeLine> before, List<MadeLine> lines) {
        List<String> ids = new ArrayList<>(before.stream().map(MadeLine::lineId).toList());
        lines.stream().map(MadeLine::lineId).filter(id -> !ids.contains(id)).forEach(ids::add);
        List<MadeLine> sorted = new ArrayList<>();
        ids.forEach(id -> lines.stream()
                .filter(line -> line.lineId().equals(id))
                .findFirst()
                .ifPresent(sorted::add));
        return sorted;
    }
}
