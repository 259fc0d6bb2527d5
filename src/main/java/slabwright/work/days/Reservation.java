package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import slabwright.work.step.StepMeans;

/**
 * A step that has its place: its people and tools are nobody else's from its start to its end,
 * nights between included.
 *
 * @param zone its sparks, and where its vapour gets to
 * @param rest of its people right after it, where it went on through the rest of the day
 */
record Reservation(
    WorkStep task, List<TimeSpan> spans, Assigned who, SparkZone zone, Duration rest) {
  LocalDateTime end() {
    return spans.get(spans.size() - 1).end();
  }

  /** When its people are free again. */
  LocalDateTime rested() {
    return end().plus(rest);
  }

  /** Whether its people are busy or resting in a time. */
  boolean takesPeople(TimeSpan other) {
    return new TimeSpan(spans.get(0).start(), rested()).meets(other);
  }

  /** When a fan that it holds may be taken away. */
  LocalDateTime clear() {
    return end().plus(task.air().fan());
  }

  static TimeSpan whole(List<TimeSpan> spans) {
    return new TimeSpan(spans.get(0).start(), spans.get(spans.size() - 1).end());
  }

  boolean meets(TimeSpan other) {
    return whole(spans).meets(other);
  }

  LocalDate day() {
    return spans.get(0).start().toLocalDate();
  }

  /** When work somewhere may go on if sparks and vapour would meet; empty when they don't. */
  Optional<LocalDateTime> notBefore(TimeSpan other, SparkZone otherZone) {
    return spans.stream()
        .flatMap(s -> otherZone.notBefore(other, zone, s).stream())
        .min(LocalDateTime::compareTo);
  }

  /** How long a person grinds concrete on it in so far as the day is one of some. */
  Duration grinding(int person, List<LocalDate> days) {
    if (!task.type().kind().grindsConcrete() || !who.persons().contains(person)) {
      return Duration.ZERO;
    }
    return spans.stream()
        .filter(s -> days.contains(s.start().toLocalDate()))
        .map(TimeSpan::length)
        .reduce(Duration.ZERO, Duration::plus);
  }

  /** How long a person walks behind a grinder on it. */
  Duration behindMachine(int person) {
    boolean machine = task.type().means() == StepMeans.MACHINE;
    return machine && who.persons().contains(person) ? task.length() : Duration.ZERO;
  }
}
