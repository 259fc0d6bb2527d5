package slabwright.work.handover;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.site.Doorway;
import slabwright.site.Finish;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.HeldStep;
import slabwright.work.SharedDoors;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.TemperatureTable;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.ClosedFloor;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.AirEffect;
import slabwright.work.step.CoatNumber;

/**
 * When a floor opens again.
 *
 * @param lastCoat when the last coat is done
 * @param light for socks and soft soles
 * @param full handed over
 */
public record Reopening(
    AreaWorkPlan area,
    Figure<LocalDateTime> lastCoat,
    Figure<LocalDateTime> light,
    Figure<LocalDateTime> full) {
  /** How the floor is kept, one sentence each: common practice. */
  public List<Message> care() {
    return last(area).map(last -> CareList.of(area, last)).orElse(List.of());
  }

  /** From when it is walked on in socks, at an hour that people keep; never earlier than dry. */
  public Figure<LocalDateTime> opensLight() {
    return light.map(OpeningHours::next);
  }

  /** From when it is used in full, at an hour that people keep; never earlier than dry. */
  public Figure<LocalDateTime> opensFull() {
    return full.map(OpeningHours::next);
  }

  /** From when it is closed to everybody but the crew: its first step; empty without days. */
  public static Optional<LocalDateTime> shutFrom(AreaWorkPlan area, WorkPlan plan) {
    return plan.days()
        .maybe()
        .flatMap(d -> d.steps().stream().filter(s -> s.task().type().isOn(area.id())).findFirst())
        .map(ScheduledStep::start);
  }

  /**
   * When each floor is closed, and then open to soft soles or feet alone, as far as it is known.
   */
  public static List<ClosedFloor> closures(WorkPlan plan) {
    return plan.areas().stream()
        .flatMap(a -> of(a, plan).stream())
        .flatMap(r -> r.closures(shutFrom(r.area, plan)).stream())
        .toList();
  }

  private List<ClosedFloor> closures(Optional<LocalDateTime> shut) {
    Optional<LocalDateTime> opens = opensLight().maybe();
    Optional<LocalDateTime> full = opensFull().maybe();
    List<ClosedFloor> all = new ArrayList<>();
    between(shut, opens.or(lastCoat::maybe))
        .map(
            span ->
                closed(
                    Message.of("work.reopening.closed", area.name()),
                    opens.isPresent()
                        ? Message.of("work.reopening.closed-for-work")
                        : Message.of("work.reopening.closed-until-told"),
                    span))
        .ifPresent(all::add);
    between(opens, full)
        .map(
            span ->
                closed(
                    area.floor().isOutdoors()
                        ? Message.of("work.reopening.feet-only", area.name())
                        : Message.of("work.reopening.soft-soles-only", area.name()),
                    Message.of("work.reopening.no-furniture"),
                    span))
        .ifPresent(all::add);
    return all;
  }

  private static Optional<TimeSpan> between(
      Optional<LocalDateTime> from, Optional<LocalDateTime> to) {
    return from.flatMap(f -> to.filter(f::isBefore).map(t -> new TimeSpan(f, t)));
  }

  private ClosedFloor closed(Message summary, Message why, TimeSpan span) {
    return new ClosedFloor(area.id(), summary, why, span);
  }

  /** One floor area's, or empty when it gets no coat. */
  public static Optional<Reopening> of(AreaWorkPlan area, WorkPlan plan) {
    return dry(area, plan).map(r -> r.notBefore(r.lateNeighbour(plan)));
  }

  /** By its own coats alone. */
  private static Optional<Reopening> dry(AreaWorkPlan area, WorkPlan plan) {
    return last(area).map(last -> of(area, last, plan));
  }

  private Reopening notBefore(Optional<Reopening> neighbour) {
    return neighbour
        .map(n -> new Reopening(area, lastCoat, later(light, n.light), later(full, n.light)))
        .orElse(this);
  }

  private static Figure<LocalDateTime> later(
      Figure<LocalDateTime> own, Figure<LocalDateTime> other) {
    return own.with(other, (a, b) -> a.isAfter(b) ? a : b);
  }

  /** That people wait for another floor, where they do. */
  public static Optional<Message> waits(AreaWorkPlan area, WorkPlan plan) {
    return dry(area, plan)
        .flatMap(r -> r.lateNeighbour(plan))
        .map(n -> Message.of("work.reopening.waits-for", area.name(), n.area.name()));
  }

  /**
   * The floor on the other side of an open doorway that this one must not be opened before: solvent
   * is still laid there once this one is dry, or it is closed and there is no other way in. The
   * latest of several; empty where there is none. Nobody is let in beside vapour: common practice.
   */
  private Optional<Reopening> lateNeighbour(WorkPlan plan) {
    SharedDoors doors = new SharedDoors(plan.site());
    List<Doorway> open =
        area.floor().area().doorways().stream().filter(d -> !d.passage().sealed()).toList();
    List<Optional<Reopening>> beyond =
        open.stream()
            .map(
                d ->
                    doors
                        .behind(area.floor().area(), d)
                        .flatMap(plan::area)
                        .flatMap(a -> dry(a, plan))
                        .filter(n -> opensAfter(n)))
            .toList();
    boolean noOther = !beyond.isEmpty() && beyond.stream().allMatch(Optional::isPresent);
    return beyond.stream()
        .flatMap(Optional::stream)
        .filter(n -> noOther || n.laysSolventAfter(light, plan))
        .max(Comparator.comparing(n -> n.light.maybe().orElse(LocalDateTime.MAX)));
  }

  /** Also where nobody knows when. */
  private boolean opensAfter(Reopening other) {
    return light
        .maybe()
        .filter(own -> other.light.maybe().filter(t -> !t.isAfter(own)).isEmpty())
        .isPresent();
  }

  private boolean laysSolventAfter(Figure<LocalDateTime> opening, WorkPlan plan) {
    return opening
        .maybe()
        .filter(
            t ->
                plan.days().maybe().stream()
                    .flatMap(d -> d.steps().stream())
                    .filter(s -> s.task().type().isOn(area.id()))
                    .filter(s -> s.task().type().air() instanceof AirEffect.Vapour)
                    .anyMatch(s -> s.end().isAfter(t)))
        .isPresent();
  }

  private static Optional<CoatPlan> last(AreaWorkPlan area) {
    return area.coats().stream()
        .filter(c -> c.job().target() == Finish.Target.WHOLE_FLOOR)
        .reduce((a, b) -> b);
  }

  private static Reopening of(AreaWorkPlan area, CoatPlan last, WorkPlan plan) {
    CoatNumber coat = new CoatNumber(last.job().place(), last.job().coats());
    Figure<LocalDateTime> end =
        plan.days()
            .flatMap(
                d ->
                    d.coat(area.id(), coat)
                        .map(s -> Figure.known(s.end()))
                        .orElseGet(
                            () ->
                                Figure.refused(
                                    plan.outlook()
                                        .hold(area.id() + "/" + last.stepId(last.job().coats()))
                                        .map(HeldStep::why)
                                        .orElseGet(
                                            () ->
                                                Message.of(
                                                    "work.reopening.the-last-coat-is-not")))));
    return new Reopening(
        area,
        end,
        end.flatMap(t -> from(t, area, last, last.product().drying().lightTraffic(), plan)),
        end.flatMap(t -> from(t, area, last, last.product().drying().fullTraffic(), plan)));
  }

  private static Figure<LocalDateTime> from(
      LocalDateTime end,
      AreaWorkPlan area,
      CoatPlan last,
      Figure<TemperatureTable> table,
      WorkPlan plan) {
    return area.dries(plan.site(), last, table, end).map(end::plus);
  }

  /** A day with its weekday, and an hour; the bundle has the names of days and months. */
  static Message moment(LocalDateTime t) {
    return Message.of("work.reopening.moment", t);
  }

  /** The sheet to leave with the client: hours that people keep, never earlier than dry. */
  public HandoverDocument paper(WorkPlan plan) {
    List<HandoverDocument.Row> care =
        care().stream().map(c -> HandoverDocument.Row.fact(c, "")).toList();
    List<Message> intro = new ArrayList<>();
    intro.add(plan.book().origin());
    intro.add(Message.of("work.reopening.opening-hours", OpeningHours.OPENS, OpeningHours.SHUTS));
    intro.add(Message.of("work.reopening.times-are-for-the-temperature"));
    waits(area, plan).ifPresent(intro::add);
    if (!plan.dated()) {
      intro.add(Message.of("work.reopening.the-site-has-no-start"));
    }
    return new HandoverDocument(
        Message.of("work.reopening.reopening-and-care", area.name()),
        intro,
        List.of(
            new HandoverDocument.Section(Message.of("work.reopening.when"), when()),
            new HandoverDocument.Section(Message.of("work.reopening.care-common-practice"), care)),
        List.of());
  }

  private List<HandoverDocument.Row> when() {
    boolean outdoors = area.floor().isOutdoors();
    return List.of(
        HandoverDocument.Row.fact(
            Message.of("work.reopening.last-coat-done"),
            lastCoat.map(OpeningHours::quarterHour).text(Reopening::moment)),
        HandoverDocument.Row.fact(
            outdoors
                ? Message.of("work.reopening.feet-from")
                : Message.of("work.reopening.socks-and-soft-soles-from"),
            opens(opensLight())),
        HandoverDocument.Row.fact(
            Message.of("work.reopening.furniture-and-full-traffic-from"), opens(opensFull())),
        HandoverDocument.Row.fact(
            outdoors
                ? Message.of("work.reopening.first-rinse")
                : Message.of("work.reopening.first-wash-damp-and-with"),
            opens(opensFull())));
  }

  private static Message opens(Figure<LocalDateTime> dry) {
    return dry.text(Reopening::moment);
  }
}
