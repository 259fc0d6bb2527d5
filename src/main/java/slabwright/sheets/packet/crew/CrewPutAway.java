package slabwright.sheets.packet.crew;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.WorkStep;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

/**
 * What is put on a floor for its dyes and has to come off again: masking film, which else keeps the
 * sealer's brush off the edge, the fan with its duct, and the ticks of a graphic; and what has to
 * be out of a floor before the coat that closes it.
 *
 * @param steps of all floor areas
 * @param closing the coats over which nobody packs up, of the floors that end with one
 * @param begins the hour at which a working day begins, once the crew has set up
 */
record CrewPutAway(List<ScheduledStep> steps, List<WorkStep> closing, LocalTime begins) {
  CrewPutAway {
    steps = List.copyOf(steps);
    closing = List.copyOf(closing);
  }

  static CrewPutAway of(WorkPlan plan) {
    return new CrewPutAway(
        CrewDays.days(plan).map(DayPlan::steps).orElse(List.of()),
        plan.closing(),
        CrewDays.days(plan).map(d -> d.hours().from()).orElse(LocalTime.MIN));
  }

  /** Whether no other stencil of its graphic is laid after it is up. */
  boolean isLastStencil(ScheduledStep up) {
    StepType type = up.task().type();
    return steps.stream()
        .filter(s -> s.task().type().kind() == StepKind.LAY_STENCIL)
        .filter(s -> s.task().type().isOn(type.areaId()))
        .filter(s -> s.task().type().subject().place().equals(type.subject().place()))
        .noneMatch(s -> s.start().isAfter(up.start()));
  }

  /**
   * All that is done first, and that the plan has no time for it where the crew does not set up
   * right before.
   *
   * @param timed whether the rows have hours
   */
  List<Message> told(CrewDay.Part part, boolean timed) {
    List<Message> all = new ArrayList<>();
    before(part).ifPresent(all::add);
    out(part).ifPresent(all::add);
    if (timed && !all.isEmpty() && part.span().start().toLocalTime().isAfter(begins)) {
      all.add(Message.of("sheets.crew-put-away.no-time"));
    }
    return all;
  }

  /** What comes off before the first step that is laid without spraying; once a floor area. */
  Optional<Message> before(CrewDay.Part part) {
    String area = part.step().task().type().areaId();
    Optional<ScheduledStep> last =
        steps.stream()
            .filter(s -> s.task().type().isOn(area))
            .filter(s -> isSprayed(s.task().type()))
            .max(Comparator.comparing(ScheduledStep::end));
    Optional<ScheduledStep> next =
        last.flatMap(
            l ->
                steps.stream()
                    .filter(s -> s.task().type().isOn(area))
                    .filter(s -> s.task().type().kind() == StepKind.COAT)
                    .filter(s -> !s.start().isBefore(l.end()))
                    .min(Comparator.comparing(ScheduledStep::start)));
    boolean first = next.filter(s -> s.equals(part.step()) && part.before().isEmpty()).isPresent();
    boolean film = has(area, StepKind.MASK_WALLS);
    boolean fan = has(area, StepKind.SET_UP_FAN) && steps.stream().noneMatch(s -> fans(s, part));
    if (!first || !(film || fan)) {
      return Optional.empty();
    }
    return Optional.of(
        film && fan
            ? Message.of("sheets.crew-put-away.film-and-fan")
            : film
                ? Message.of("sheets.crew-put-away.film")
                : Message.of("sheets.crew-put-away.fan"));
  }

  /** What leaves a floor before its closing coat; before the first section of a divided one. */
  Optional<Message> out(CrewDay.Part part) {
    StepType type = part.step().task().type();
    boolean closes =
        closing.stream()
            .map(WorkStep::type)
            .anyMatch(c -> c.isOn(type.areaId()) && isSameCoat(c, type));
    boolean first =
        part.before().isEmpty()
            && steps.stream()
                .filter(s -> s.task().type().isOn(type.areaId()))
                .filter(s -> isSameCoat(s.task().type(), type))
                .noneMatch(s -> s.start().isBefore(part.step().start()));
    return closes && first
        ? Optional.of(Message.of("sheets.crew-put-away.tools-out", part.step().task().area()))
        : Optional.empty();
  }

  private static boolean isSameCoat(StepType a, StepType b) {
    return a.kind() == StepKind.COAT && b.kind() == StepKind.COAT && a.coat().equals(b.coat());
  }

  /** From this step on somebody on this floor still needs the fan. */
  private static boolean fans(ScheduledStep s, CrewDay.Part from) {
    return s.task().type().isOn(from.step().task().type().areaId())
        && !s.start().isBefore(from.step().start())
        && s.task().type().tools().contains(ToolKind.FAN);
  }

  private boolean has(String area, StepKind kind) {
    return steps.stream().map(s -> s.task().type()).anyMatch(t -> t.isOn(area) && t.kind() == kind);
  }

  private static boolean isSprayed(StepType type) {
    return type.tools().contains(ToolKind.SPRAYER)
        && (type.kind() == StepKind.COAT || type.kind() == StepKind.MIST_COAT);
  }
}
