package slabwright.work.days;

import java.time.LocalDateTime;
import java.util.Optional;
import slabwright.work.step.StepType;

/**
 * What keeps a step apart from steps of other floor areas: its own sparks and people, and its
 * vapour beyond shared doorways.
 *
 * @param area id of the floor area it happens on
 * @param sparks whether its machines may set vapour alight
 * @param masked whether all on it wear breathing protection
 */
record SparkZone(String area, boolean sparks, boolean masked, VapourReach vapour) {
  /** Work that is nowhere. */
  static final SparkZone NONE = new SparkZone("", false, false, VapourReach.NOWHERE);

  static SparkZone of(WorkStep task) {
    StepType type = task.type();
    boolean masked = !task.air().protection().isEmpty();
    return new SparkZone(type.areaId(), type.sparks(), masked, task.air().vapour());
  }

  /** When this one may go on if sparks and vapour would meet; empty when they don't. */
  Optional<LocalDateTime> notBefore(TimeSpan here, SparkZone other, TimeSpan there) {
    TimeSpan theirs = other.reaches(this) ? other.lingering(there) : there;
    TimeSpan ours = reaches(other) ? lingering(here) : here;
    return keepsApart(other) && ours.meets(theirs) ? Optional.of(theirs.end()) : Optional.empty();
  }

  /** Whether sparks or people of one have anything to do with vapour of the other. */
  boolean keepsApart(SparkZone other) {
    return other.reaches(this) || reaches(other);
  }

  private boolean reaches(SparkZone other) {
    return vapour.areas().contains(other.area) && vapour.keepsOut(other.sparks, other.masked);
  }

  private TimeSpan lingering(TimeSpan span) {
    return new TimeSpan(span.start(), span.end().plus(vapour.after()));
  }
}
