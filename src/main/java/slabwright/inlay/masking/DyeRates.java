package slabwright.inlay.masking;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the shop book says of a dye misted through a stencil; empty where it says nothing.
 *
 * @param coats mist coats
 * @param coverage m² that a litre covers in one coat
 * @param loss share of the dye that never lands, 0 to below 1
 * @param jar litres in one sprayer jar
 */
public record DyeRates(
    OptionalInt coats, OptionalDouble coverage, OptionalDouble loss, OptionalDouble jar) {}
