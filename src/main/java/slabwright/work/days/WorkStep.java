package slabwright.work.days;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.units.Message;
import slabwright.units.SortedCopy;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

/**
 * One step of the job before it has a place in time.
 *
 * @param id unique in the plan
 * @param name for people
 * @param area name of the floor area it happens on
 * @param type what it is; never read out of its id or name
 * @param length working time with its people
 * @param people how many of the crew it takes
 * @param mayPause whether it may go on the next morning; a coat may not
 * @param waits on earlier tasks
 * @param abrading time to abrade this floor if a recoat window is missed; empty when unknown
 * @param keepOut who else must stay off, and for how long after
 * @param air what the people on it breathe
 * @param notOn days on which it is not begun, for the weather
 */
@RecordBuilder
public record WorkStep(
    String id,
    Message name,
    String area,
    StepType type,
    Duration length,
    int people,
    boolean mayPause,
    List<StepWait> waits,
    Optional<Duration> abrading,
    Optional<KeepOut> keepOut,
    StepAir air,
    Set<LocalDate> notOn)
    implements WorkStepBuilder.With {
  public WorkStep {
    waits = List.copyOf(waits);
    notOn = SortedCopy.of(notOn);
    if (people < 1 || length.isNegative()) {
      throw new IllegalArgumentException("a step needs people and a length: " + name);
    }
  }

  /** A step in clean air. */
  public WorkStep(
      String id,
      Message name,
      String area,
      StepType type,
      Duration length,
      int people,
      boolean mayPause,
      List<StepWait> waits,
      Optional<Duration> abrading,
      Optional<KeepOut> keepOut) {
    this(
        id,
        name,
        area,
        type,
        length,
        people,
        mayPause,
        waits,
        abrading,
        keepOut,
        StepAir.CLEAN,
        Set.of());
  }

  /** How many tools of a kind it holds: who grinds has a grinder and a vacuum each. */
  public int each(ToolKind kind) {
    boolean held = type.tools().contains(kind);
    int some = type.isHandGrinding() || type.isMachineGrinding() ? people : 1;
    return held ? some : 0;
  }

  /** The same step for a crew of another number, where it is the whole crew's. */
  WorkStep forCrew(int n) {
    return type.kind().isWholeCrew() ? withPeople(n) : this;
  }

  /** The same step with the time to abrade the floor should its window be missed. */
  public WorkStep withAbrading(Duration time) {
    return withAbrading(Optional.of(time));
  }

  /** The same step with other trades kept out. */
  public WorkStep withKeepOut(KeepOut out) {
    return withKeepOut(Optional.of(out));
  }

  /** The same step with other waits, and what is breathed on it. */
  public WorkStep in(StepAir around, List<StepWait> waiting) {
    return withAir(around).withWaits(waiting);
  }
}
