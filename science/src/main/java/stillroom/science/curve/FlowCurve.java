package stillroom.science.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillroom.science.regression.NonlinearFit;

/**
 * Viscosity against shear rate. Fitted to the logarithm of the viscosity, as readings err by a share of themselves; positive
 * parameters are fitted as logarithms. The model with the lowest corrected Akaike criterion is the first.
 *
 * @param model fitted
 * @param parameters in the order of {@link Model#names()}
 * @param fit of the transformed parameters, for criterion and intervals
 */
public record FlowCurve(Model model, List<Double> parameters, NonlinearFit fit) {
    public FlowCurve {
        parameters = List.copyOf(parameters);
    }

    /** Models of shear thinning. Source: as in any textbook of rheology (from memory). */
    public enum Model {
        /** K g^(n-1). */
        POWER_LAW(List.of("consistency K (Pa s^n)", "index n")),
        /** e∞ + (e0 - e∞) (1 + (λ g)²)^((n-1)/2). */
        CARREAU(List.of("viscosity at rest (Pa s)", "viscosity at high shear (Pa s)", "time constant (s)", "index n")),
        /** t0/g + K g^(n-1). */
        HERSCHEL_BULKLEY(List.of("yield stress (Pa)", "consistency K (Pa s^n)", "index n"));

        private final List<String> names;

        Model(List<String> names) {
            this.names = names;
        }

        public List<String> names() {
            return names;
        }

        double at(double g, double[] p) {
            return switch (this) {
                case POWER_LAW -> p[0] * Math.pow(g, p[1] - 1);
                case CARREAU -> p[1] + (p[0] - p[1]) * Math.pow(1 + p[2] * g * p[2] * g, (p[3] - 1) / 2);
                case HERSCHEL_BULKLEY -> p[0] / g + p[1] * Math.pow(g, p[2] - 1);
            };
        }
    }

    /** Viscosity at a shear rate [Pa s]. */
    public double at(double shearRate) {
        return model.at(
                shearRate, parameters.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** All models that settle, the best first. Fewer than four readings tell none. */
    public static List<FlowCurve> fit(List<FlowPoint> points) {
        if (points.stream().map(FlowPoint::shearRate).distinct().count() < 4) {
            return List.of();
        }
        List<FlowCurve> fitted = new ArrayList<>();
        for (Model model : Model.values()) {
            if (points.size() > model.names().size()) {
                fitted(model, points).ifPresent(fitted::add);
            }
        }
        fitted.sort(Comparator.comparingDouble(one -> one.fit().correctedAkaike()));
        return fitted;
    }

    private static Optional<FlowCurve> fitted(Model model, List<FlowPoint> points) {
        List<Double> x = points.stream().map(FlowPoint::shearRate).toList();
        List<Double> y =
                points.stream().map(point -> Math.log(point.viscosity())).toList();
        NonlinearFit.Curve curve = (g, p) -> Math.log(Math.max(1e-300, model.at(g, plain(model, p))));
        return starts(model, points).stream()
                .map(start -> NonlinearFit.fit(curve, x, y, start))
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(NonlinearFit::errorSquares))
                .map(fit -> new FlowCurve(
                        model,
                        java.util.Arrays.stream(plain(
                                        model,
                                        fit.parameters().stream()
                                                .mapToDouble(Double::doubleValue)
                                                .toArray()))
                                .boxed()
                                .toList(),
                        fit));
    }

    /** All but the index n are logarithms while they are fitted. */
    private static double[] plain(Model model, double[] fitted) {
        double[] plain = fitted.clone();
        for (int k = 0; k < plain.length - 1; k++) {
            plain[k] = Math.exp(Math.min(700, fitted[k]));
        }
        return plain;
    }

    private static List<double[]> starts(Model model, List<FlowPoint> points) {
        FlowPoint slow = points.stream()
                .min(Comparator.comparingDouble(FlowPoint::shearRate))
                .orElseThrow();
        FlowPoint fast = points.stream()
                .max(Comparator.comparingDouble(FlowPoint::shearRate))
                .orElseThrow();
        double n = 1 + Math.log(fast.viscosity() / slow.viscosity()) / Math.log(fast.shearRate() / slow.shearRate());
        double k = Math.log(slow.viscosity()) - (n - 1) * Math.log(slow.shearRate());
        double middle = -0.5 * Math.log(slow.shearRate() * fast.shearRate());
        return switch (model) {
            case POWER_LAW -> List.of(new double[] {k, n});
            case CARREAU ->
                List.of(
                        new double[] {Math.log(slow.viscosity()), Math.log(fast.viscosity()) - 2, middle, 0.4},
                        new double[] {Math.log(2 * slow.viscosity()), Math.log(fast.viscosity()) - 1, middle + 2, 0.5},
                        new double[] {Math.log(slow.viscosity()), Math.log(fast.viscosity()) - 4, middle - 1, n});
            case HERSCHEL_BULKLEY ->
                List.of(
                        new double[] {Math.log(0.5 * slow.viscosity() * slow.shearRate()), k, Math.min(1, n + 0.3)},
                        new double[] {Math.log(0.05 * slow.viscosity() * slow.shearRate()), k, n});
        };
    }
}
