package slabwright.units;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;

/**
 * Times as a crew is told them: in quarter hours. What has to be waited for is told late, a
 * deadline early, so that who keeps to the paper keeps to the plan. The plan itself is exact.
 */
public final class QuarterHour {
  /** The least that is told. */
  public static final Duration STEP = Duration.ofMinutes(15);

  private QuarterHour() {}

  /** The first full quarter at or after a moment: starts, ends, and when something is dry. */
  public static LocalDateTime up(LocalDateTime t) {
    LocalDateTime down = down(t);
    return down.equals(t) ? t : down.plus(STEP);
  }

  /** The last full quarter at or before a moment: deadlines, and when people have to be gone. */
  public static LocalDateTime down(LocalDateTime t) {
    LocalDateTime hour = t.truncatedTo(ChronoUnit.HOURS);
    return hour.plus(STEP.multipliedBy(t.getMinute() / STEP.toMinutes()));
  }

  /** How long work takes, to the nearest quarter; at least one for any work at all. */
  public static Duration nearest(Duration d) {
    Duration near = down(d.plus(STEP.dividedBy(2)));
    return near.isZero() ? up(d) : near;
  }

  /** The least number of quarters that holds a length of time; none for no time. */
  public static Duration up(Duration d) {
    Duration down = down(d);
    return down.equals(d) ? d : down.plus(STEP);
  }

  /** The most quarters that a length of time holds. */
  public static Duration down(Duration d) {
    long quarter = STEP.toSeconds();
    return Duration.ofSeconds(Math.floorDiv(d.toSeconds(), quarter) * quarter);
  }
}
