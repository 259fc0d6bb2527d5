package slabwright.sheets.page;

import java.util.List;
import java.util.Optional;
import slabwright.units.UnitSystem;

/** The standard scales, largest first. */
public final class StandardScales {
  /** The steps of ISO 5455 (from memory), with 1:25 and 1:75 (common practice, no source). */
  private static final List<Scale> METRIC =
      List.of(
          Scale.metric(1),
          Scale.metric(2),
          Scale.metric(5),
          Scale.metric(10),
          Scale.metric(20),
          Scale.metric(25),
          Scale.metric(50),
          Scale.metric(75),
          Scale.metric(100),
          Scale.metric(200),
          Scale.metric(250),
          Scale.metric(300));

  /** The usual architectural scales of feet and inches. */
  private static final List<Scale> IMPERIAL =
      List.of(
          Scale.fullSize(),
          Scale.toTheFoot("3", 3),
          Scale.toTheFoot("1 1/2", 1.5),
          Scale.toTheFoot("1", 1),
          Scale.toTheFoot("3/4", 0.75),
          Scale.toTheFoot("1/2", 0.5),
          Scale.toTheFoot("3/8", 0.375),
          Scale.toTheFoot("1/4", 0.25),
          Scale.toTheFoot("3/16", 0.1875),
          Scale.toTheFoot("1/8", 0.125),
          Scale.toTheFoot("3/32", 0.09375),
          Scale.toTheFoot("1/16", 0.0625));

  private StandardScales() {}

  /** All standard scales of the system, largest first. */
  public static List<Scale> of(UnitSystem units) {
    return switch (units) {
      case METRIC -> METRIC;
      case FEET_INCHES -> IMPERIAL;
    };
  }

  /** The smallest scale that a crew should work from; smaller ones are tiled instead. */
  public static Scale smallest(UnitSystem units) {
    return switch (units) {
      case METRIC -> METRIC.get(8);
      case FEET_INCHES -> IMPERIAL.get(9);
    };
  }

  /**
   * The largest of all standard scales at which the size (mm of floor) fits the room (mm of paper):
   * for a plan whose numbers are looked up and whose dimensions are written.
   */
  public static Optional<Scale> forWhole(
      double width, double height, double roomWidth, double roomHeight, UnitSystem units) {
    return of(units).stream()
        .filter(s -> width / s.denominator() <= roomWidth && height / s.denominator() <= roomHeight)
        .findFirst();
  }

  /**
   * The largest standard scale at which the size (mm of floor) fits the room (mm of paper), but
   * never smaller than {@link #smallest}.
   */
  public static Scale fitting(
      double width, double height, double roomWidth, double roomHeight, UnitSystem units) {
    Scale least = smallest(units);
    return of(units).stream()
        .filter(s -> s.denominator() <= least.denominator())
        .filter(s -> width / s.denominator() <= roomWidth && height / s.denominator() <= roomHeight)
        .findFirst()
        .orElse(least);
  }
}
