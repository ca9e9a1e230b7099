/** The pH meter: what its calibration buffers really are, whether a calibration holds, whether readings drift. */
@org.jspecify.annotations.NullMarked
package stillroom.science.meter;
