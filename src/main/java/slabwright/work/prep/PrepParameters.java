package slabwright.work.prep;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.site.Exposure;
import slabwright.units.Message;
import slabwright.work.step.StepPlace;

/**
 * What preparing a floor depends on.
 *
 * @param zones disjoint; together the floor to be ground
 * @param toLevel mm² of trench that is proud or low and not yet levelled, by name
 * @param wanted aggregate exposure
 * @param mohs scratch hardness
 */
public record PrepParameters(
    List<PrepZone> zones,
    List<ToLevel> toLevel,
    Optional<Exposure> wanted,
    OptionalDouble mohs,
    List<FillerGap> gaps) {
  /**
   * A trench to level before the machine crosses it.
   *
   * @param off its depth or height, mm; empty when it was not measured
   */
  public record ToLevel(
      StepPlace place, Message name, PrepZone.Kind kind, double mm2, OptionalDouble off) {
    boolean isLow() {
      return kind == PrepZone.Kind.TRENCH_LOW;
    }
  }

  public PrepParameters {
    zones = List.copyOf(zones);
    toLevel = List.copyOf(toLevel);
    gaps = List.copyOf(gaps);
  }

  double machine() {
    return zones.stream().mapToDouble(PrepZone::machine).sum();
  }

  double hand() {
    return zones.stream().mapToDouble(PrepZone::hand).sum();
  }

  double area() {
    return machine() + hand();
  }

  List<PrepZone> of(PrepZone.Kind kind) {
    return zones.stream().filter(z -> z.kind() == kind).toList();
  }
}
