package slabwright.site.job;

import java.time.LocalDateTime;
import java.util.OptionalDouble;

/**
 * What was read on the day of a coat; what was not measured is absent.
 *
 * @param area id of the floor area
 * @param product id of the coat's product in the shop book
 * @param at local date and time of the reading
 * @param slabC surface temperature of the slab, °C
 * @param airC air temperature, °C
 * @param humidity relative humidity of the air, %
 * @param dewPointC dew point, °C
 * @param by name or initials of who took it; may be empty
 */
public record CoatReading(
    String area,
    String product,
    LocalDateTime at,
    OptionalDouble slabC,
    OptionalDouble airC,
    OptionalDouble humidity,
    OptionalDouble dewPointC,
    String by) {}
