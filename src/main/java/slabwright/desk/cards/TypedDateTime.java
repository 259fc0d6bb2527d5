package slabwright.desk.cards;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.Result;

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
  public static Result<Optional<LocalDateTime>> read(String line) {
    String text = line.strip();
    if (text.isEmpty()) {
      return Result.ok(Optional.empty());
    }
    try {
      LocalDate day = LocalDate.parse(text.substring(0, Math.min(10, text.length())));
      String rest = text.substring(10).replaceFirst("^T", "").strip();
      String full = rest.matches("\\d:.*") ? "0" + rest : rest;
      return Result.ok(Optional.of(day.atTime(full.isEmpty() ? USUAL : LocalTime.parse(full))));
    } catch (DateTimeException e) {
      return Result.refused(Message.of("desk.model.typed-date-time.day-and-time"));
    }
  }

  /** Reads a day alone; an empty line is none. */
  public static Result<Optional<LocalDate>> day(String line) {
    try {
      String text = line.strip();
      return Result.ok(text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text)));
    } catch (DateTimeException e) {
      return Result.refused(Message.of("desk.model.typed-date-time.day"));
    }
  }
}
