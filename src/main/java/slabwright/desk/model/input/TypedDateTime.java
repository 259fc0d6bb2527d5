package slabwright.desk.model.input;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import slabwright.units.Parsed;

/** A day and time as people type it: {@code 2026-12-07 07:30}; without a time it is 07:00. */
public final class TypedDateTime {
  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
  private static final LocalTime USUAL = LocalTime.of(7, 0);

  private TypedDateTime() {}

  public static String show(LocalDateTime when) {
    return SHOWN.format(when);
  }

  /** Reads a line; an empty one is no time at all. */
  public static Parsed<Optional<LocalDateTime>> read(String line) {
    String text = line.strip();
    if (text.isEmpty()) {
      return Parsed.ok(Optional.empty());
    }
    try {
      LocalDate day = LocalDate.parse(text.substring(0, Math.min(10, text.length())));
      String rest = text.substring(10).replaceFirst("^T", "").strip();
      String full = rest.matches("\\d:.*") ? "0" + rest : rest;
      return Parsed.ok(Optional.of(day.atTime(full.isEmpty() ? USUAL : LocalTime.parse(full))));
    } catch (DateTimeException e) {
      return Parsed.bad("Write the day and the time, such as 2026-12-07 07:30.");
    }
  }

  /** Reads a day alone; an empty line is none. */
  public static Parsed<Optional<LocalDate>> day(String line) {
    try {
      String text = line.strip();
      return Parsed.ok(text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text)));
    } catch (DateTimeException e) {
      return Parsed.bad("Write the day, such as 2026-12-07.");
    }
  }
}
