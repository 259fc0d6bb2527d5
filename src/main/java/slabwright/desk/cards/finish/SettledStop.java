package slabwright.desk.cards.finish;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.site.job.Stop;
import slabwright.units.Message;
import slabwright.units.Result;

/** How a stop was settled, as one line: who, the day, and the report or reason. */
final class SettledStop {
  private SettledStop() {}

  static String text(Stop.Cleared c) {
    return line(c.by(), Optional.of(c.on()), c.report());
  }

  static String text(Stop.Confirmed c) {
    return line(c.by(), c.on(), c.reason());
  }

  private static String line(String by, Optional<LocalDate> on, String rest) {
    return String.join(
        ", ",
        Stream.of(by, on.map(LocalDate::toString).orElse(""), rest)
            .filter(s -> !s.isBlank())
            .toList());
  }

  /** Empty is open; without who and a day it is refused. */
  static Result<Stop.State> cleared(String line) {
    if (line.isBlank()) {
      return Result.ok(new Stop.Open());
    }
    String[] parts = line.split(",", 3);
    Optional<LocalDate> on = parts.length > 1 ? day(parts[1]) : Optional.empty();
    return on.isEmpty() || parts[0].isBlank()
        ? Result.refused(Message.of("desk.cards.finish.stops.cleared-needs"))
        : Result.ok(
            new Stop.Cleared(parts[0].strip(), on.get(), parts.length > 2 ? parts[2].strip() : ""));
  }

  /** Empty is open; without who and why it is refused. */
  static Result<Stop.State> confirmed(String line) {
    if (line.isBlank()) {
      return Result.ok(new Stop.Open());
    }
    String[] parts = line.split(",", 2);
    if (parts.length < 2 || parts[0].isBlank() || parts[1].isBlank()) {
      return Result.refused(Message.of("desk.cards.finish.stops.confirmed-needs"));
    }
    String[] rest = parts[1].split(",", 2);
    Optional<LocalDate> on = day(rest[0]);
    String reason = on.isEmpty() ? parts[1] : rest.length > 1 ? rest[1] : "";
    return Result.ok(new Stop.Confirmed(parts[0].strip(), on, reason.strip()));
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text.strip()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** The stops with one settled, or opened again, in the order of their kinds. */
  static List<Stop> in(List<Stop> stops, Stop.Kind kind, Stop.State to) {
    Stream<Stop> others = stops.stream().filter(s -> s.kind() != kind);
    Stream<Stop> one = to instanceof Stop.Open ? Stream.empty() : Stream.of(new Stop(kind, to));
    return Stream.concat(others, one).sorted(Comparator.comparing(Stop::kind)).toList();
  }
}
