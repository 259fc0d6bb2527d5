package slabwright.work.days;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;
import slabwright.work.step.AirEffect;
import slabwright.work.step.StepType;

/**
 * What keeps a step apart from others: its sparks, its people and its dust; its vapour beyond
 * shared doorways, and what it lays that dust must not fall into.
 *
 * @param area id of the floor area it happens on
 * @param sparks whether its machines may set vapour alight
 * @param masked whether all on it wear breathing protection
 * @param dusty whether it raises dust
 */
record SparkZone(
    String area, boolean sparks, boolean masked, boolean dusty, VapourReach vapour, WetFilm wet) {
  static SparkZone of(WorkStep task) {
    StepType type = task.type();
    return new SparkZone(
        type.areaId(),
        type.sparks(),
        !task.air().protection().isEmpty(),
        type.air() instanceof AirEffect.Dust,
        task.air().vapour(),
        task.air().wet());
  }

  /** When this one may go on if the two would meet; empty when they don't. */
  Optional<LocalDateTime> notBefore(TimeSpan here, SparkZone other, TimeSpan there) {
    TimeSpan theirs = other.lingering(there, this);
    TimeSpan ours = lingering(here, other);
    return keepsApart(other) && ours.meets(theirs) ? Optional.of(theirs.end()) : Optional.empty();
  }

  /** Whether sparks, people or dust of one have anything to do with what the other lays. */
  boolean keepsApart(SparkZone other) {
    return isByVapour(other) || other.isSpoiltBy(this) || isSpoiltBy(other);
  }

  /** Whether it is vapour that keeps the two apart. */
  boolean isByVapour(SparkZone other) {
    return other.reaches(this) || reaches(other);
  }

  private boolean reaches(SparkZone other) {
    return vapour.areas().contains(other.area) && vapour.keepsOut(other.sparks, other.masked);
  }

  private boolean isSpoiltBy(SparkZone other) {
    return other.dusty && wet.areas().contains(other.area);
  }

  private TimeSpan lingering(TimeSpan span, SparkZone other) {
    Duration clear = reaches(other) ? vapour.after() : Duration.ZERO;
    Duration dry = isSpoiltBy(other) ? wet.after() : Duration.ZERO;
    return new TimeSpan(span.start(), span.end().plus(clear.compareTo(dry) > 0 ? clear : dry));
  }
}
