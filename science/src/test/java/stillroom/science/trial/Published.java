package stillroom.science.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.science.mixture.Blending;
import stillroom.science.mixture.MixtureModel;
import stillroom.science.mixture.MixtureRegion;

/** Published mixture data. */
final class Published {
    private static final double T = 1 / 3.0;
    private static final double H = 0.5;

    private Published() {}

    /** Yarn elongation. Source: nist-handbook, section 5.5.4.2; data read in lawson-2015 (ModelPlot.Rd). */
    static List<TrialRun> yarn() {
        return runs(new double[][] {{1, 0, 0}, {H, H, 0}, {H, 0, H}, {0, 1, 0}, {0, H, H}, {0, 0, 1}}, new double[][] {
            {11.0, 12.4}, {15.0, 14.8, 16.1}, {17.7, 16.4, 16.6}, {8.8, 10.0}, {10.0, 9.7, 11.8}, {16.8, 16.0}
        });
    }

    /** Etch rate. Source: myers-2002, table 12.4; data read in lawson-2015 (MixModel.Rd). */
    static List<TrialRun> etch() {
        double s = 1 / 6.0;
        double u = 2 / 3.0;
        return runs(
                new double[][] {
                    {1, 0, 0},
                    {0, 1, 0},
                    {0, 0, 1},
                    {H, H, 0},
                    {H, 0, H},
                    {0, H, H},
                    {T, T, T},
                    {u, s, s},
                    {s, u, s},
                    {s, s, u}
                },
                new double[][] {{540, 560}, {330, 350}, {295, 260}, {610}, {425}, {330}, {800, 850}, {710}, {640}, {460}
                });
    }

    /** Artificial sweeteners, intensity. Source: bedi-sweetener. */
    static List<TrialRun> sweetener() {
        return runs(new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {H, H, 0}, {H, 0, H}, {0, H, H}}, new double[][] {
            {10.1, 10.7}, {5.8, 6.5}, {4.2, 3.6}, {14.5, 15.4, 15}, {12.9, 12, 11.6}, {11.6, 13, 12.2}
        });
    }

    static List<TrialRun> runs(double[][] mixtures, double[][] responses) {
        List<TrialRun> runs = new ArrayList<>();
        for (int i = 0; i < mixtures.length; i++) {
            for (double response : responses[i]) {
                runs.add(new TrialRun(
                        List.of(mixtures[i][0], mixtures[i][1], mixtures[i][2]), List.of(), Optional.of(response), 1));
            }
        }
        return runs;
    }

    static MixtureFit fit(List<TrialRun> runs, Blending blending, Fitting.Selection selection) {
        return Fitting.fit(MixtureRegion.simplex(3), MixtureModel.of(3, blending), runs, selection)
                .match(FitAnswer.Fitted::fit, no -> {
                    throw new AssertionError(no.reasons());
                });
    }
}
