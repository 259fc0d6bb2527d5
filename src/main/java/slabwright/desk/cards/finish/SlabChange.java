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
    return new Slab(
        what == Reading.MOHS ? v : s.mohs(),
        what == Reading.AGE ? v : s.ageYears(),
        s.thickness(),
        s.moisture(),
        what == Reading.SURFACE ? v : s.surfaceC(),
        what == Reading.AIR ? v : s.airC(),
        what == Reading.HUMIDITY ? v : s.humidity(),
        s.vapourBarrier());
  }

  public static Slab thick(Slab s, Optional<Length> v) {
    return make(s, v, s.moisture(), s.vapourBarrier());
  }

  public static Slab barrier(Slab s, Optional<Boolean> v) {
    return make(s, s.thickness(), s.moisture(), v);
  }

  public static Slab read(Slab s, int index, MoistureReading v) {
    List<MoistureReading> next = new ArrayList<>(s.moisture());
    next.set(index, v);
    return make(s, s.thickness(), next, s.vapourBarrier());
  }

  public static Slab readAlso(Slab s, MoistureReading v) {
    List<MoistureReading> next = new ArrayList<>(s.moisture());
    next.add(v);
    return make(s, s.thickness(), next, s.vapourBarrier());
  }

  public static Slab withoutReading(Slab s, int index) {
    List<MoistureReading> next = new ArrayList<>(s.moisture());
    next.remove(index);
    return make(s, s.thickness(), next, s.vapourBarrier());
  }

  private static Slab make(
      Slab s, Optional<Length> thick, List<MoistureReading> moisture, Optional<Boolean> barrier) {
    return new Slab(
        s.mohs(), s.ageYears(), thick, moisture, s.surfaceC(), s.airC(), s.humidity(), barrier);
  }
}
