package slabwright.work.book;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import slabwright.units.Message;

/**
 * A time that depends on the temperature, as a data sheet gives it: straight lines between its
 * points, nothing outside them.
 *
 * @param subject what it is the time of, for messages
 * @param points by rising temperature; one point with {@link #anyTemperature} holds everywhere
 */
public record TemperatureTable(Message subject, List<Point> points, boolean anyTemperature) {
  public TemperatureTable {
    points = points.stream().sorted(Comparator.comparing(Point::celsius)).toList();
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a table without points: " + subject);
    }
  }

  /** One entry of the table. */
  public record Point(double celsius, Duration time) {}

  /** A time that the book states without a temperature. */
  public static TemperatureTable always(Message subject, Duration time) {
    return new TemperatureTable(subject, List.of(new Point(0, time)), true);
  }

  /** The time at a temperature; refused outside the table's range, never extended. */
  public Figure<Duration> at(double celsius) {
    if (anyTemperature) {
      return Figure.known(points.get(0).time());
    }
    if (celsius < points.get(0).celsius() || celsius > last().celsius()) {
      return Figure.refused(outside(celsius));
    }
    Point below = points.get(0);
    for (Point p : points) {
      if (p.celsius() >= celsius) {
        return Figure.known(between(below, p, celsius));
      }
      below = p;
    }
    return Figure.known(last().time());
  }

  /** The longest time that it gives. */
  public Duration longest() {
    return points.stream().map(Point::time).max(Duration::compareTo).orElseThrow();
  }

  private static Duration between(Point a, Point b, double celsius) {
    if (a.celsius() == b.celsius()) {
      return a.time();
    }
    double t = (celsius - a.celsius()) / (b.celsius() - a.celsius());
    double millis = a.time().toMillis() + t * (b.time().toMillis() - a.time().toMillis());
    return Duration.ofMillis(Math.round(millis));
  }

  private Point last() {
    return points.get(points.size() - 1);
  }

  private Message outside(double celsius) {
    return Message.of(
        "work.temperature-table.the-shop-book-gives-the",
        subject,
        text(points.get(0).celsius()),
        text(last().celsius()),
        text(celsius));
  }

  private static String text(double celsius) {
    return "%.0f °C (%.0f °F)".formatted(celsius, celsius * 9 / 5 + 32);
  }
}
