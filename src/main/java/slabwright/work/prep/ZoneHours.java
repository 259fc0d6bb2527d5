package slabwright.work.prep;

import java.time.Duration;
import java.util.List;
import slabwright.work.book.Figure;

/** What grinding one zone takes, all passes together: its share of each pass by area. */
public record ZoneHours(PrepZone zone, Figure<Duration> machine, Figure<Duration> hand) {

  static ZoneHours of(PrepZone zone, List<PrepStep> steps) {
    List<PrepStep> passes = steps.stream().filter(ZoneHours::isPass).toList();
    return new ZoneHours(
        zone,
        sum(passes.stream().map(s -> share(s.machineTime(), zone.machine(), s.machine())).toList()),
        sum(passes.stream().map(s -> share(s.handTime(), zone.hand(), s.hand())).toList()));
  }

  private static boolean isPass(PrepStep s) {
    return s.kind() == PrepStep.Kind.METAL_PASS || s.kind() == PrepStep.Kind.FINE_PASS;
  }

  private static Figure<Duration> share(Figure<Duration> time, double part, double whole) {
    return part <= 0
        ? Figure.known(Duration.ZERO)
        : time.map(t -> Duration.ofSeconds(Math.round(t.toSeconds() * part / whole)));
  }

  private static Figure<Duration> sum(List<Figure<Duration>> times) {
    return Figure.all(times).map(l -> l.stream().reduce(Duration.ZERO, Duration::plus));
  }
}
