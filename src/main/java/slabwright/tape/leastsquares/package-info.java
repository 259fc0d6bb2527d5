/**
 * Weighted least squares on corner coordinates in mm. Knows no rooms and no readings.
 *
 * <p>{@link LeastSquaresFitter} (entry), then {@link Observation} and its kinds {@link
 * DistanceObservation}, {@link OffsetObservation}, {@link TurnObservation} and {@link
 * WallSpotObservation}; {@link DesignRow}, {@link Datum}, {@link NormalEquations}; {@link
 * LeastSquaresFit}, {@link Reliability} (redundancy and test statistic), {@link BlunderSearch} with
 * {@link Suspect}. {@link Traverse} and {@link CompassRule} give the start.
 */
package slabwright.tape.leastsquares;
