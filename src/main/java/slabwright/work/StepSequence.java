package slabwright.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.days.StepWait;
import slabwright.work.days.WorkStep;
import slabwright.work.step.StepType;

/** Strings the steps of one floor area together; what is unknown in one makes the list unknown. */
final class StepSequence {
  /** How long the next step waits for the last ones. */
  record RecoatGap(Duration opens, Optional<Duration> closes) {
    static final RecoatGap NONE = new RecoatGap(Duration.ZERO, Optional.empty());

    StepWait after(String id) {
      return new StepWait(id, minutes(opens), closes);
    }
  }

  private final String areaId;
  private final String areaName;
  private final List<Figure<WorkStep>> tasks = new ArrayList<>();
  private List<String> last = List.of();
  private Figure<RecoatGap> gap = Figure.known(RecoatGap.NONE);
  private Figure<List<StepWait>> others = Figure.known(List.of());

  StepSequence(String areaId, String areaName) {
    this.areaId = areaId;
    this.areaName = areaName;
  }

  /** Steps that run side by side after the last ones; steps without time are left out. */
  void append(List<StepDraft> sideBySide) {
    List<String> ids = new ArrayList<>();
    for (StepDraft step : sideBySide) {
      if (!isNothing(step.length())) {
        tasks.add(task(step));
        ids.add(id(step.id()));
      }
    }
    if (!ids.isEmpty()) {
      last = List.copyOf(ids);
      gap = Figure.known(RecoatGap.NONE);
      others = Figure.known(List.of());
    }
  }

  void append(StepDraft step) {
    append(List.of(step));
  }

  /** The next step waits so. */
  void setGap(Figure<RecoatGap> next) {
    gap = next;
  }

  /** The next step waits for an earlier one too. */
  void waitAlso(String earlier, Figure<RecoatGap> window) {
    others =
        others.with(
            window,
            (list, g) -> Stream.concat(list.stream(), Stream.of(g.after(id(earlier)))).toList());
  }

  private static boolean isNothing(Figure<Duration> length) {
    return length.maybe().filter(Duration::isZero).isPresent();
  }

  private String id(String step) {
    return areaId + "/" + step;
  }

  /**
   * A step before it knows what it waits for.
   *
   * @param abrading time to abrade first if a window is missed
   */
  record StepDraft(
      String id,
      Message name,
      StepType type,
      Figure<Duration> length,
      int people,
      boolean mayPause,
      Figure<Duration> abrading) {

    static StepDraft pausing(
        String id, Message name, StepType type, Figure<Duration> personTime, int people) {
      return new StepDraft(
          id, name, type, personTime.map(t -> t.dividedBy(people)), people, true, NO_ABRADING);
    }

    static final Figure<Duration> NO_ABRADING =
        Figure.missing(Message.of("work.step-sequence.abrading"));
  }

  private Figure<WorkStep> task(StepDraft step) {
    List<String> after = last;
    Figure<List<StepWait>> waits =
        gap.map(g -> after.stream().map(g::after).toList())
            .with(others, (a, b) -> Stream.concat(a.stream(), b.stream()).toList());
    return step.length()
        .with(
            waits,
            (length, w) ->
                new WorkStep(
                    id(step.id()),
                    step.name(),
                    areaName,
                    step.type(),
                    minutes(length),
                    step.people(),
                    step.mayPause(),
                    w,
                    step.abrading().maybe().map(StepSequence::minutes),
                    Optional.empty()));
  }

  /** Plans are read in minutes: rounded up. */
  static Duration minutes(Duration d) {
    return Duration.ofMinutes((d.toSeconds() + 59) / 60);
  }

  Figure<List<WorkStep>> tasks() {
    return Figure.all(tasks);
  }
}
