package slabwright.site.job;

import java.time.LocalDate;
import java.util.OptionalDouble;

/**
 * The weather forecast of one day; what the forecast does not say is absent.
 *
 * @param lowC lowest air temperature, °C
 * @param highC highest air temperature, °C
 * @param humidity relative humidity, %
 * @param rain chance of rain, %: 0 is no rain, 100 is rain
 */
public record DayForecast(
    LocalDate on,
    OptionalDouble lowC,
    OptionalDouble highC,
    OptionalDouble humidity,
    OptionalDouble rain) {}
