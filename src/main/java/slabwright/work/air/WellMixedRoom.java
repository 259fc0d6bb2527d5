package slabwright.work.air;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The exact solution of {@code V dC = G dt - Q' C dt} for sources that are constant over stretches
 * of time, starting with clean air at minute 0. Any unit of the source carries over to C.
 */
final class WellMixedRoom {
  private final double volume;
  private final double fresh;

  /**
   * A room.
   *
   * @param volume m³
   * @param fresh m³/min that really mixes (Q' = Q / K); 0 for a closed room
   */
  public WellMixedRoom(double volume, double fresh) {
    if (!(volume > 0) || fresh < 0) {
      throw new IllegalArgumentException("a room has a volume and no negative airflow");
    }
    this.volume = volume;
    this.fresh = fresh;
  }

  /**
   * What a constant source makes of clean air in some minutes.
   *
   * @param fresh m³/min that really mixes
   */
  static double plateau(double rate, double minutes, double volume, double fresh) {
    return new ConcentrationCurve.CurvePiece(0, 0, rate / volume, fresh / volume).at(minutes);
  }

  /**
   * The most that a source of this time can make of the air when it may run at any moment between
   * {@code from} and {@code to}: it rises, and where the source could come later the level is held.
   * A quicker source is never lower at any moment, nor is one that lasts longer in all.
   */
  List<VapourSource> atWorst(double from, double to, double minutes, double rate) {
    double held = fresh * plateau(rate, minutes, volume, fresh);
    return List.of(
        new VapourSource(from, from + minutes, rate), new VapourSource(from + minutes, to, held));
  }

  /** How long until a share has fallen to a level once nothing is laid any more. */
  ClearingTime clearing(double share, double level) {
    return ClearingTime.of(share, level, volume, fresh);
  }

  /** A source in m³/min between two minutes. */
  public record VapourSource(double from, double to, double rate) {}

  /** What the sources make of the air. */
  public ConcentrationCurve curve(List<VapourSource> sources) {
    TreeSet<Double> times = new TreeSet<>(List.of(0.0));
    sources.forEach(s -> times.addAll(List.of(s.from(), s.to())));
    List<ConcentrationCurve.CurvePiece> pieces = new ArrayList<>();
    double c = 0;
    for (double t : times) {
      Double next = times.higher(t);
      ConcentrationCurve.CurvePiece piece =
          new ConcentrationCurve.CurvePiece(t, c, rateAt(sources, t) / volume, fresh / volume);
      pieces.add(piece);
      c = next == null ? c : piece.at(next);
    }
    return new ConcentrationCurve(pieces);
  }

  private static double rateAt(List<VapourSource> sources, double t) {
    return sources.stream()
        .filter(s -> s.from() <= t && t < s.to())
        .mapToDouble(VapourSource::rate)
        .sum();
  }
}
