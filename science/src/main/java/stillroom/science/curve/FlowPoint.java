package stillroom.science.curve;

/**
 * One reading in a defined geometry (cone and plate, parallel plates, coaxial cylinders).
 *
 * @param shearRate above 0 [1/s]
 * @param viscosity above 0 [Pa s]
 */
public record FlowPoint(double shearRate, double viscosity) {
    public FlowPoint {
        if (!(shearRate > 0) || !(viscosity > 0) || !Double.isFinite(shearRate) || !Double.isFinite(viscosity)) {
            throw new IllegalArgumentException(
                    "shear rate " + shearRate + " 1/s and viscosity " + viscosity + " Pa s: both above 0");
        }
    }
}
