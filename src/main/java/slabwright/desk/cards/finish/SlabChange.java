package slabwright.desk.cards.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.site.MoistureReading;
import slabwright.site.Slab;
import slabwright.units.Length;

/** What is known of a slab with one thing changed. */
final class SlabChange {
  private SlabChange() {}

  /** The numbers of a slab that may be unknown. */
  public enum Reading {
    MOHS,
    AGE,
    SURFACE,
    AIR,
    HUMIDITY
  }

  public static OptionalDouble get(Slab s, Reading what) {
    return switch (what) {
      case MOHS -> s.mohs();
      case AGE -> s.ageYears();
      case SURFACE -> s.surfaceC();
      case AIR -> s.airC();
      case HUMIDITY -> s.humidity();
    };
  }

  public static Slab with(Slab s, Reading what, OptionalDouble v) {
    return switch (what) {
      case MOHS -> s.withMohs(v);
      case AGE -> s.withAgeYears(v);
      case SURFACE -> s.withSurfaceC(v);
      case AIR -> s.withAirC(v);
      case HUMIDITY -> s.withHumidity(v);
    };
  }

  public static Slab thick(Slab s, Optional<Length> v) {
    return s.withThickness(v);
  }

  public static Slab barrier(Slab s, Optional<Boolean> v) {
    return s.withVapourBarrier(v);
  }

  public static Slab read(Slab s, int index, MoistureReading v) {
    List<MoistureReading> next = new ArrayList<>(s.moisture());
    next.set(index, v);
    return s.withMoisture(next);
  }

  public static Slab readAlso(Slab s, MoistureReading v) {
    List<MoistureReading> next = new ArrayList<>(s.moisture());
    next.add(v);
    return s.withMoisture(next);
  }

  public static Slab withoutReading(Slab s, int index) {
    List<MoistureReading> next = new ArrayList<>(s.moisture());
    next.remove(index);
    return s.withMoisture(next);
  }
}
