package slabwright.work;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import slabwright.site.Finish;
import slabwright.units.Message;
import slabwright.work.book.Figure;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepType;

/**
 * When a step of one floor area is laid.
 *
 * @param type what the step is
 * @param from minutes from the job's start
 * @param minutes how long
 */
record StepTiming(StepType type, Message name, double from, double minutes) {

  /** Along the day plan. */
  static List<StepTiming> fromDayPlan(DayPlan days, String areaId) {
    return days.steps().stream()
        .filter(p -> p.task().type().isOn(areaId) && !p.isAbrading())
        .map(p -> of(p, days))
        .toList();
  }

  private static StepTiming of(ScheduledStep p, DayPlan days) {
    Duration from = Duration.between(days.firstDay().atTime(days.hours().from()), p.start());
    return new StepTiming(p.task().type(), p.task().name(), from.toMinutes(), minutes(p.worked()));
  }

  /** Without a day plan: coat after coat with no time for the air to clear in between. */
  static Figure<List<StepTiming>> inSequence(AreaTakeoff floor, List<CoatPlan> coats) {
    Figure<List<StepTiming>> all = Figure.known(List.of());
    for (CoatPlan c : coats) {
      all = all.with(c.coatTime(), (list, time) -> extended(list, floor, c, minutes(time)));
    }
    return all;
  }

  private static List<StepTiming> extended(
      List<StepTiming> before, AreaTakeoff floor, CoatPlan c, double minutes) {
    List<StepTiming> list = new ArrayList<>(before);
    StepTypes types = StepTypes.of(floor);
    for (int i = 1; i <= c.job().coats(); i++) {
      if (c.job().target() == Finish.Target.WHOLE_FLOOR) {
        list.add(
            next(
                list,
                types.coat(c, i),
                Message.of("work.step-timing.coat", c.product().label(), i),
                minutes));
      } else {
        mists(list, floor, c, i, minutes);
      }
    }
    return list;
  }

  private static void mists(
      List<StepTiming> list, AreaTakeoff floor, CoatPlan c, int number, double minutes) {
    StepTypes types = StepTypes.of(floor);
    for (InlayTakeoff inlay : floor.inlays()) {
      for (int s = 0; s < inlay.dyes().size(); s++) {
        InlayTakeoff.StencilDye dye = inlay.dyes().get(s);
        if (dye.product().equals(c.product().id())) {
          double share = dye.openings() / Math.max(1, c.job().mm2());
          StepType type = types.mist(inlay, c, s, number);
          list.add(
              next(
                  list,
                  type,
                  Message.of("work.step-timing.mist-coat", number, inlay.name()),
                  minutes * share));
        }
      }
    }
  }

  private static StepTiming next(
      List<StepTiming> before, StepType type, Message name, double minutes) {
    double from =
        before.isEmpty()
            ? 0
            : before.get(before.size() - 1).from() + before.get(before.size() - 1).minutes();
    return new StepTiming(type, name, from, Math.max(1, minutes));
  }

  private static double minutes(Duration d) {
    return Math.max(1, d.toSeconds() / 60.0);
  }
}
