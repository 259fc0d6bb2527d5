package slabwright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.site.job.DayForecast;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * A weather forecast as comma-separated text: one day a line, with date (2026-12-09), lowest and
 * highest air temperature (°C, or with F behind it °F), relative humidity in % and chance of rain
 * in %, or yes or no. What is left empty is not known. A first line without a digit is a heading.
 */
public final class ForecastFile {
  private static final int COLUMNS = 5;

  /** A number above it without a letter is thought to be °F. */
  private static final double HOTTEST_BARE = 45;

  private ForecastFile() {}

  /** Reads a file; refused with its first bad line. */
  public static Result<List<DayForecast>> read(Path file) {
    try {
      return parse(Files.readString(file, StandardCharsets.UTF_8));
    } catch (IOException e) {
      return Result.refused(Message.of("store.forecast-file.unreadable", file.toString()));
    }
  }

  static Result<List<DayForecast>> parse(String text) {
    List<DayForecast> days = new ArrayList<>();
    List<String> lines = text.lines().map(String::strip).toList();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).replace("\ufeff", "");
      boolean heading = days.isEmpty() && line.chars().noneMatch(Character::isDigit);
      if (line.isEmpty() || heading) {
        continue;
      }
      Result<DayForecast> day = new Row(line, i + 1).day();
      if (day instanceof Result.Refused<DayForecast> bad) {
        return Result.refused(bad.refusals());
      }
      DayForecast d = day.orThrow();
      if (days.stream().anyMatch(o -> o.on().equals(d.on()))) {
        return Result.refused(Message.of("store.forecast-file.twice", i + 1, d.on().toString()));
      }
      days.add(d);
    }
    return days.isEmpty()
        ? Result.refused(Message.of("store.forecast-file.empty"))
        : Result.ok(days);
  }

  /** One line; the first fault is kept. */
  private static final class Row {
    private final String[] cells;
    private final int line;
    private Optional<Message> fault = Optional.empty();

    Row(String text, int line) {
      this.cells = text.split(",", -1);
      this.line = line;
    }

    Result<DayForecast> day() {
      if (cells.length != COLUMNS) {
        return Result.refused(
            Message.of("store.forecast-file.columns", line, COLUMNS, cells.length));
      }
      Optional<LocalDate> on = date(cell(0));
      OptionalDouble low = celsius(cell(1));
      OptionalDouble high = celsius(cell(2));
      OptionalDouble humidity = number(cell(3).replace("%", "").strip(), 1, 100);
      OptionalDouble rain = rain(cell(4));
      if (low.isPresent() && high.isPresent() && low.getAsDouble() > high.getAsDouble()) {
        fail(Message.of("store.forecast-file.low-above-high", line, cell(1), cell(2)));
      }
      return fault.isPresent() || on.isEmpty()
          ? Result.refused(fault.orElseThrow())
          : Result.ok(new DayForecast(on.get(), low, high, humidity, rain));
    }

    private String cell(int column) {
      return cells[column].strip();
    }

    private void fail(Message why) {
      if (fault.isEmpty()) {
        fault = Optional.of(why);
      }
    }

    private Optional<LocalDate> date(String text) {
      try {
        return Optional.of(LocalDate.parse(text));
      } catch (DateTimeParseException e) {
        fail(Message.of("store.forecast-file.date", line, text));
        return Optional.empty();
      }
    }

    private OptionalDouble celsius(String text) {
      String upper = text.toUpperCase(Locale.ROOT).replace("°", "");
      if (upper.endsWith("F")) {
        OptionalDouble f = number(upper.substring(0, upper.length() - 1).strip(), -76, 176);
        return f.isPresent()
            ? OptionalDouble.of((f.getAsDouble() - 32) * 5 / 9)
            : OptionalDouble.empty();
      }
      boolean said = upper.endsWith("C");
      String bare = said ? upper.substring(0, upper.length() - 1).strip() : upper;
      OptionalDouble c = number(bare, -60, 80);
      if (!said && c.isPresent() && c.getAsDouble() > HOTTEST_BARE) {
        fail(Message.of("store.forecast-file.unit", line, text));
      }
      return c;
    }

    private OptionalDouble rain(String text) {
      return switch (text.toLowerCase(Locale.ROOT)) {
        case "yes" -> OptionalDouble.of(100);
        case "no" -> OptionalDouble.of(0);
        default -> number(text.replace("%", "").strip(), 0, 100);
      };
    }

    /** Empty for an empty cell; a fault for what is no number or lies outside. */
    private OptionalDouble number(String text, double least, double most) {
      if (text.isEmpty()) {
        return OptionalDouble.empty();
      }
      try {
        double v = Double.parseDouble(text);
        if (v >= least && v <= most) {
          return OptionalDouble.of(v);
        }
      } catch (NumberFormatException e) {
        fail(Message.of("store.forecast-file.no-number", line, text));
        return OptionalDouble.empty();
      }
      fail(Message.of("store.forecast-file.outside", line, text, least, most));
      return OptionalDouble.empty();
    }
  }
}
