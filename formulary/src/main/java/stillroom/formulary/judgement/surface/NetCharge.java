package stillroom.formulary.judgement.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.formulary.constants.AcidConstant;
import stillroom.formulary.constants.EffectiveConstant;
import stillroom.formulary.evaluation.Outcome;
import stillroom.formulary.evaluation.Surface;
import stillroom.formulary.judgement.pot.Pot;
import stillroom.formulary.judgement.pot.Share;
import stillroom.formulary.judgement.pot.Words;
import stillroom.formulary.material.ChargeClass;
import stillroom.formulary.material.MassFraction;
import stillroom.formulary.material.Substance;
import stillroom.formulary.quantity.Interval;

/**
 * Equivalents of charge on ionic surfactants and polymers, amphoterics at the product's pH; salts and other small ions are
 * not counted, as they balance everything.
 *
 * @param ph at which weak groups are counted; without one they range over all states
 */
record NetCharge(Pot pot, Optional<Interval> ph) {
    private static final double LARGEST_PH = 14;
    /** Carboxylic groups of polysaccharides, pKa 3.0 to 4.4, from memory. */
    private static final Interval POLYSACCHARIDE = new Interval(3.0, 4.4);
    /** Below this a soap turns into fatty acid and loses its charge; from memory. */
    private static final double SOAP_ABOVE_PH = 9.5;

    List<Surface.Charge> lines() {
        return pot.where(NetCharge::counts).stream().map(this::line).toList();
    }

    private static boolean counts(Share share) {
        boolean carries = share.substance()
                .map(known -> known.surfactant() || known.is("polymer") || known.is("emulsifier"))
                .orElse(false);
        boolean charged = share.hasCharge(ChargeClass.ANIONIC)
                || share.hasCharge(ChargeClass.CATIONIC)
                || share.hasCharge(ChargeClass.AMPHOTERIC);
        return carries && charged && share.amount().upper() > 0;
    }

    private Surface.Charge line(Share share) {
        Substance substance = share.substance().orElseThrow();
        EffectiveConstant weak = pot.rules().effective().get(share.key());
        if (weak != null) {
            return weak(share, substance, weak);
        }
        if (substance.chargeMolPerKilogram().isEmpty()) {
            return of(share, Outcome.notKnown("no charge figure is recorded"), "");
        }
        double sign = share.hasCharge(ChargeClass.CATIONIC) ? 1 : -1;
        Interval full =
                scaled(share.amount(), sign * substance.chargeMolPerKilogram().get());
        if (isSoap(substance)) {
            boolean ionised = soapsLast();
            return of(
                    share,
                    Outcome.known(ionised ? full : hull(full, Interval.point(0))),
                    ionised ? "fully ionised" : "soap: from all charged to all fatty acid");
        }
        return share.is("anionic-polymer") && !share.key().equals("carrageenan")
                ? polysaccharide(share, substance)
                : of(share, Outcome.known(full), "fully ionised");
    }

    private Surface.Charge weak(Share share, Substance substance, EffectiveConstant weak) {
        Optional<Interval> molPerKg = weak.groupsMolPerKg()
                .or(() -> substance.molarMassGramsPerMol().map(mass -> Interval.point(1000 / mass)));
        if (molPerKg.isEmpty()) {
            return of(share, Outcome.notKnown("no molar mass is recorded"), "");
        }
        Interval at = ph.orElse(new Interval(0, LARGEST_PH));
        Interval perMol = hull(
                hull(point(weak.meanCharge(at.low(), 0)), point(weak.meanCharge(at.high(), 0))),
                hull(point(weak.meanCharge(at.low(), 1)), point(weak.meanCharge(at.high(), 1))));
        MassFraction amount = share.amount();
        double[] ends = {
            1000 * amount.lower() * molPerKg.get().low() * perMol.low(),
            1000 * amount.lower() * molPerKg.get().low() * perMol.high(),
            1000 * amount.upper() * molPerKg.get().high() * perMol.low(),
            1000 * amount.upper() * molPerKg.get().high() * perMol.high()
        };
        Interval all = hull(hull(point(ends[0]), point(ends[1])), hull(point(ends[2]), point(ends[3])));
        return of(
                share,
                Outcome.known(all),
                "weak groups by effective constants"
                        + (ph.isPresent() ? " at the product's pH" : ", over all pH as none is known"));
    }

    private Surface.Charge polysaccharide(Share share, Substance substance) {
        Interval at = ph.orElse(new Interval(0, LARGEST_PH));
        double least = 1 / (1 + Math.pow(10, POLYSACCHARIDE.high() - at.low()));
        double most = 1 / (1 + Math.pow(10, POLYSACCHARIDE.low() - at.high()));
        double full = -substance.chargeMolPerKilogram().orElseThrow();
        Interval all = hull(scaled(share.amount(), full * least), scaled(share.amount(), full * most));
        return of(share, Outcome.known(all), "carboxylic groups, pKa 3.0 to 4.4, from memory");
    }

    private boolean soapsLast() {
        return ph.map(known -> known.low() >= SOAP_ABOVE_PH).orElse(false);
    }

    boolean losesSoap() {
        return !soapsLast()
                && pot.shares().stream()
                        .anyMatch(share -> share.substance().map(this::isSoap).orElse(false));
    }

    private boolean isSoap(Substance substance) {
        return substance
                .acidKey()
                .flatMap(pot.rules().acids()::find)
                .map(AcidConstant::formsMicelles)
                .orElse(false);
    }

    /** The sum, or what is missing for it. */
    static Outcome<Interval> sum(List<Surface.Charge> lines) {
        List<String> missing = new ArrayList<>();
        double low = 0;
        double high = 0;
        for (Surface.Charge line : lines) {
            Interval known = line.millimolPerKilogram().match(one -> one, because -> {
                missing.add(line.name());
                return Interval.point(0);
            });
            low += known.low();
            high += known.high();
        }
        if (!missing.isEmpty()) {
            return Outcome.notKnown("no charge figure for " + Words.list(missing));
        }
        return lines.isEmpty()
                ? Outcome.notKnown("no ionic surfactant or polymer is in it")
                : Outcome.known(new Interval(low, high));
    }

    private static Surface.Charge of(Share share, Outcome<Interval> charge, String how) {
        return new Surface.Charge(
                share.key(), share.name(), share.substance().orElseThrow().charge(), charge, how);
    }

    /** [mmol/kg] from [mol/kg]. */
    private static Interval scaled(MassFraction amount, double molPerKg) {
        return hull(point(1000 * amount.lower() * molPerKg), point(1000 * amount.upper() * molPerKg));
    }

    private static Interval point(double value) {
        return Interval.point(value);
    }

    private static Interval hull(Interval one, Interval other) {
        return new Interval(Math.min(one.low(), other.low()), Math.max(one.high(), other.high()));
    }
}
