package slabwright.work.book;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import slabwright.units.Parsed;

/** Reads {@code 4 h} or {@code 15 C: 6 h, 25 C: 3 h}. */
final class TemperatureTableReader {
  private TemperatureTableReader() {}

  static Parsed<TemperatureTable> read(String subject, String text) {
    if (!text.contains(":")) {
      return BookSection.duration(text).map(t -> TemperatureTable.always(subject, t));
    }
    List<TemperatureTable.Point> points = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      Parsed<TemperatureTable.Point> point = point(part);
      if (point instanceof Parsed.Bad<TemperatureTable.Point> bad) {
        return Parsed.bad(bad.why());
      }
      points.add(point.orThrow());
    }
    return Parsed.ok(new TemperatureTable(subject, points, false));
  }

  private static Parsed<TemperatureTable.Point> point(String part) {
    String[] sides = part.split(":", -1);
    if (sides.length != 2) {
      return Parsed.bad("\"%s\" is no table entry; write for example 70 F: 4 h".formatted(part));
    }
    Parsed<Double> celsius = BookDimension.TEMPERATURE.read(sides[0].strip());
    if (celsius instanceof Parsed.Bad<Double> bad) {
      return Parsed.bad(bad.why());
    }
    Parsed<Duration> time = BookSection.duration(sides[1].strip());
    return time.map(t -> new TemperatureTable.Point(celsius.orThrow(), t));
  }
}
