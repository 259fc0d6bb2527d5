package slabwright.work.days;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.work.Said;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepMeans;
import slabwright.work.step.StepPlace;
import slabwright.work.step.StepSubject;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

/** Steps for planning tests: only their times and people matter. */
final class TestSteps {
  private TestSteps() {}

  /** Work that may pause overnight. */
  static WorkStep pausing(
      String id, String name, String area, Duration length, int people, StepWait... waits) {
    StepSubject subject = StepSubject.of(StepKind.METAL_PASS, StepPlace.WHOLE_FLOOR);
    return step(
        id,
        name,
        area,
        StepType.grinding(area, subject, StepMeans.MACHINE),
        length,
        people,
        true,
        waits);
  }

  /** Grinding by hand, with a grinder and a vacuum each. */
  static WorkStep byHand(String id, String area, Duration length, int people, StepWait... waits) {
    StepSubject subject = StepSubject.of(StepKind.METAL_PASS, StepPlace.WHOLE_FLOOR);
    StepType type = StepType.grinding(area, subject, StepMeans.HAND);
    return step(id, id, area, type, length, people, true, waits);
  }

  /** A coat that only who has breathing protection may lay. */
  static WorkStep masked(String id, String area, Duration length, int people, StepWait... waits) {
    WorkStep coat = coat(id, id, area, length, people, waits);
    return coat.in(new StepAir(0, "half mask", VapourReach.NOWHERE), coat.waits());
  }

  /** A coat: done in one go. */
  static WorkStep coat(
      String id, String name, String area, Duration length, int people, StepWait... waits) {
    StepType type = StepType.coat(area, new CoatNumber(1, 1), AirEffect.NONE);
    return step(id, name, area, type, length, people, false, waits);
  }

  /** A coat whose vapour gets to some floor areas beside its own. */
  static WorkStep solvent(
      String id, String area, Duration length, VapourReach reach, StepWait... waits) {
    StepType type = StepType.coat(area, new CoatNumber(1, 1), new AirEffect.Vapour("solvent", 1));
    WorkStep coat = step(id, id, area, type, length, 1, false, waits);
    return coat.in(coat.air().reaching(reach), coat.waits());
  }

  /** A coat without vapour that dust must not fall into. */
  static WorkStep wet(String id, String area, Duration length, WetFilm film, StepWait... waits) {
    WorkStep coat = coat(id, id, area, length, 1, waits);
    return coat.in(coat.air().wet(film), coat.waits());
  }

  /** A solvent coat with a fan that runs some time after it. */
  static WorkStep fanned(
      String id, String area, Duration length, Duration runs, StepWait... waits) {
    StepType type =
        StepType.coat(
            area, new CoatNumber(1, 1), Set.of(ToolKind.FAN), new AirEffect.Vapour("solvent", 1));
    WorkStep coat = step(id, id, area, type, length, 1, false, waits);
    return coat.in(new StepAir(0, "", VapourReach.NOWHERE, runs, WetFilm.NONE), coat.waits());
  }

  /** Film laid, or with {@link StepKind#PRESS_EDGES} its edges pressed. */
  static WorkStep film(StepKind kind, String id, Duration length, StepWait... waits) {
    StepSubject subject = StepSubject.of(kind, StepPlace.WHOLE_FLOOR);
    StepType type = StepType.prep("hall", subject, StepMeans.HAND, Set.of(), AirEffect.NONE);
    return step(id, id, "hall", type, length, 1, true, waits);
  }

  /** The same step with another name for its floor area. */
  static WorkStep named(WorkStep s, String area) {
    return new WorkStep(
        s.id(),
        s.name(),
        area,
        s.type(),
        s.length(),
        s.people(),
        s.mayPause(),
        s.waits(),
        s.abrading(),
        s.keepOut());
  }

  private static WorkStep step(
      String id,
      String name,
      String area,
      StepType type,
      Duration length,
      int people,
      boolean mayPause,
      StepWait... waits) {
    return new WorkStep(
        id,
        Said.text(name),
        area,
        type,
        length,
        people,
        mayPause,
        List.of(waits),
        Optional.empty(),
        Optional.empty());
  }
}
