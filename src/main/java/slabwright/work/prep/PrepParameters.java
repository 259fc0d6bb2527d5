package slabwright.work.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Zone;
import slabwright.site.Exposure;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.step.StepPlace;

/**
 * What preparing a floor depends on.
 *
 * @param zones disjoint; together the floor to be ground
 * @param toLevel mm² of trench that is proud or low and not yet levelled, by name
 * @param wanted aggregate exposure
 * @param mohs scratch hardness
 * @param warmer of slab and air, °C: what fillers and mortars set by
 */
public record PrepParameters(
    List<PrepZone> zones,
    List<ToLevel> toLevel,
    Optional<Exposure> wanted,
    OptionalDouble mohs,
    List<FillerGap> gaps,
    Figure<Double> warmer) {
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

  /** What a take-off says about preparing the floor: zones, with trenches taken as levelled. */
  public static PrepParameters of(FloorTakeoff t) {
    List<PrepZone> zones = new ArrayList<>();
    List<ToLevel> toLevel = new ArrayList<>();
    for (Zone z : t.zones()) {
      PrepZone zone = zone(t, z);
      if (zone.area() > 0) {
        zones.add(zone);
      }
      if (z.mark().filter(PrepParameters::stops).isPresent()) {
        toLevel.add(new ToLevel(zone.place(), zone.name(), zone.kind(), z.area(), off(z)));
      }
    }
    return new PrepParameters(
        zones,
        toLevel,
        t.area().finish().exposure(),
        t.area().slab().mohs(),
        FillerGap.of(t),
        warmer(t.area()));
  }

  private static Figure<Double> warmer(FloorArea area) {
    OptionalDouble air = area.slab().airC();
    return air.isPresent()
        ? Figure.known(
            Math.max(air.getAsDouble(), area.slab().surfaceC().orElse(air.getAsDouble())))
        : Figure.refused(
            Message.of("work.coat-parameters.air-temperature-not-on-plan", area.name()));
  }

  private static PrepZone zone(FloorTakeoff t, Zone z) {
    return new PrepZone(
        z.mark().<StepPlace>map(m -> new StepPlace.Zone(m.id())).orElse(StepPlace.WHOLE_FLOOR),
        z.mark()
            .map(m -> Message.of("work.prep-parameters-op.marked", m.name()))
            .orElse(Message.of("work.prep-parameters-op.old-slab")),
        z.mark().map(m -> kind(m.kind())).orElse(PrepZone.Kind.OLD_CONCRETE),
        z.region().intersect(t.levelled().machine()).area(),
        z.region().intersect(t.levelled().hand()).area());
  }

  private static OptionalDouble off(Zone z) {
    return z.mark().map(Mark::kind).filter(MarkKind.Trench.class::isInstance).stream()
        .flatMap(k -> ((MarkKind.Trench) k).off().stream())
        .mapToDouble(Length::mm)
        .findFirst();
  }

  private static boolean stops(Mark m) {
    return m.kind() instanceof MarkKind.Trench t && t.stopsMachine();
  }

  private static PrepZone.Kind kind(MarkKind kind) {
    if (kind instanceof MarkKind.Trench t) {
      return trench(t.lie());
    }
    return switch (kind.type()) {
      case PATCH -> PrepZone.Kind.PATCH;
      case RESIDUE -> PrepZone.Kind.RESIDUE;
      default -> PrepZone.Kind.OLD_CONCRETE;
    };
  }

  private static PrepZone.Kind trench(TrenchLevel lie) {
    return switch (lie) {
      case PROUD -> PrepZone.Kind.TRENCH_PROUD;
      case LOW -> PrepZone.Kind.TRENCH_LOW;
      case FLUSH -> PrepZone.Kind.TRENCH_FLUSH;
    };
  }
}
