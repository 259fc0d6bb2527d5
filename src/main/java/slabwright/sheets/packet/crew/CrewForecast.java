package slabwright.sheets.packet.crew;

import java.time.LocalDate;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.site.job.DayForecast;
import slabwright.units.QuantityFormat;

/** The weather that is forecast for a day, in one sentence. */
record CrewForecast(PacketContents job) {
  /** None where the plan has no forecast of that day with its temperatures. */
  Optional<String> of(LocalDate day) {
    return job.site().job().forecast().stream()
        .filter(f -> f.on().equals(day))
        .filter(f -> f.lowC().isPresent() && f.highC().isPresent())
        .findFirst()
        .map(this::said);
  }

  private String said(DayForecast f) {
    String low = QuantityFormat.temperature(f.lowC().getAsDouble(), job.site().units());
    String high = QuantityFormat.temperature(f.highC().getAsDouble(), job.site().units());
    return f.rain().isPresent()
        ? job.words().say("sheets.crew-day.forecast-rain", low, high, f.rain().getAsDouble())
        : job.words().say("sheets.crew-day.forecast", low, high);
  }
}
