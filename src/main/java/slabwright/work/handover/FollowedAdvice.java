package slabwright.work.handover;

import java.util.List;
import java.util.Optional;
import slabwright.site.AdviceId;
import slabwright.site.Finish;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.book.ProductKind;
import slabwright.work.coat.CoatPlan;
import slabwright.work.step.StepKind;

/** Whether the plan already does what an advice asks for; then nobody has to decide on it. */
final class FollowedAdvice {
  private FollowedAdvice() {}

  /** By what it is followed; empty where it is not, or where the plan can't tell. */
  static Optional<Message> by(AdviceId id, AreaWorkPlan area, WorkPlan plan) {
    List<CoatPlan> films =
        area.coats().stream()
            .filter(c -> c.job().target() == Finish.Target.WHOLE_FLOOR)
            .filter(c -> !c.product().is(ProductKind.BASE_DYE))
            .toList();
    if (id == AdviceId.SAMPLE_PANEL) {
      return samplePanel(area, plan);
    }
    if (films.isEmpty()) {
      return Optional.empty();
    }
    CoatPlan last = films.get(films.size() - 1);
    return switch (id) {
      case BREATHING_HUMID, BREATHING_DAMP, BARRIER_UNKNOWN, BARRIER_NONE ->
          onlyIf(films.stream().allMatch(FollowedAdvice::breathes), last);
      case OUTDOOR_BREATHING ->
          onlyIf(
              films.stream().allMatch(FollowedAdvice::breathes)
                  && last.product().is(ProductKind.OUTDOOR_SEALER),
              last);
      case GRIT -> onlyIf(last.grit().maybe().filter(kg -> kg > 0).isPresent(), last);
      case TWO_PART_TRAFFIC ->
          onlyIf(
              last.product().is(ProductKind.TOPCOAT)
                  && last.product().mixing().twoPart().maybe().orElse(false),
              last);
      case MOISTURE_TEST, SUN_UNKNOWN, SUN_FAST, WET_UNKNOWN, TRAFFIC_UNKNOWN, SAMPLE_PANEL ->
          Optional.empty();
    };
  }

  private static Optional<Message> onlyIf(boolean followed, CoatPlan by) {
    return followed
        ? Optional.of(Message.of("work.scope.followed-by", by.product().label()))
        : Optional.empty();
  }

  private static boolean breathes(CoatPlan c) {
    return c.product().suits().breathing().maybe().orElse(false);
  }

  private static Optional<Message> samplePanel(AreaWorkPlan area, WorkPlan plan) {
    boolean planned =
        plan.tasks()
            .maybe()
            .filter(
                t ->
                    t.stream()
                        .anyMatch(
                            s ->
                                s.type().isOn(area.id())
                                    && s.type().kind() == StepKind.SAMPLE_PANEL))
            .isPresent();
    return planned ? Optional.of(Message.of("work.scope.followed-by-panel")) : Optional.empty();
  }
}
