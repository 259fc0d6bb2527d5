package slabwright.work.book;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import slabwright.units.Message;
import slabwright.units.Result;

/** Reads {@code 4 h} or {@code 15 C: 6 h, 25 C: 3 h}. */
final class TemperatureTableReader {
  private TemperatureTableReader() {}

  static Result<TemperatureTable> read(Message subject, String text) {
    if (!text.contains(":")) {
      return BookSection.duration(text).map(t -> TemperatureTable.always(subject, t));
    }
    List<TemperatureTable.Point> points = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      Result<TemperatureTable.Point> point = point(part);
      if (point instanceof Result.Refused<TemperatureTable.Point> bad) {
        return Result.refused(bad.refusals());
      }
      points.add(point.orThrow());
    }
    if (points.stream().map(TemperatureTable.Point::celsius).distinct().count() < points.size()) {
      return Result.refused(
          Message.of("work.temperature-table-reader.temperature-twice", text.strip()));
    }
    return Result.ok(new TemperatureTable(subject, points, false));
  }

  private static Result<TemperatureTable.Point> point(String part) {
    String[] sides = part.split(":", -1);
    if (sides.length != 2) {
      return Result.refused(
          Message.of("work.temperature-table-reader.is-no-table-entry-write", part));
    }
    Result<Double> celsius = BookDimension.TEMPERATURE.read(sides[0].strip());
    if (celsius instanceof Result.Refused<Double> bad) {
      return Result.refused(bad.refusals());
    }
    Result<Duration> time = BookSection.duration(sides[1].strip());
    return time.map(t -> new TemperatureTable.Point(celsius.orThrow(), t));
  }
}
