package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.units.Length;

/**
 * What is known of the slab and the air over it; what was not measured is absent.
 *
 * @param mohs scratch hardness, 1 to 10
 * @param ageYears years since it was poured
 * @param surfaceC surface temperature in °C
 * @param airC air temperature in °C
 * @param humidity relative humidity of the air in %
 * @param vapourBarrier whether one is known to lie under the slab; absent means unknown
 */
@RecordBuilder
public record Slab(
    OptionalDouble mohs,
    OptionalDouble ageYears,
    Optional<Length> thickness,
    List<MoistureReading> moisture,
    OptionalDouble surfaceC,
    OptionalDouble airC,
    OptionalDouble humidity,
    Optional<Boolean> vapourBarrier)
    implements SlabBuilder.With {
  public static final Slab UNKNOWN =
      new Slab(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          List.of(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty());

  public Slab {
    moisture = List.copyOf(moisture);
  }
}
