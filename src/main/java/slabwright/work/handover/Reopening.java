package slabwright.work.handover;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slabwright.site.Finish;
import slabwright.site.Setting;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.HeldStep;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.TemperatureTable;
import slabwright.work.coat.CoatPlan;
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
  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private static final List<Message> CARE =
      List.of(
          Message.of("work.reopening.no-mats-tape-or-plants"),
          Message.of("work.reopening.felt-under-chairs-lift-dont"),
          Message.of("work.reopening.dust-mop-daily-damp-mop"),
          Message.of("work.reopening.wipe-up-oil-wine-and"),
          Message.of("work.reopening.recoat-when-water-no-longer"));

  /** What outdoor concrete asks for: there the frost, salt and the sun do the harm. */
  private static final List<Message> OUTDOOR_CARE =
      List.of(
          Message.of("work.reopening.outdoor-nothing-on-it"),
          Message.of("work.reopening.outdoor-no-salt"),
          Message.of("work.reopening.outdoor-sweep-and-rinse"),
          Message.of("work.reopening.outdoor-leaves-and-rust"),
          Message.of("work.reopening.recoat-when-water-no-longer"));

  /** How the floor is kept, one sentence each: common practice. */
  public List<Message> care() {
    return area.floor().area().setting() == Setting.OUTDOOR ? OUTDOOR_CARE : CARE;
  }

  /** One floor area's, or empty when it gets no coat. */
  public static Optional<Reopening> of(AreaWorkPlan area, WorkPlan plan) {
    return area.coats().stream()
        .filter(c -> c.job().target() == Finish.Target.WHOLE_FLOOR)
        .reduce((a, b) -> b)
        .map(last -> of(area, last, plan));
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
        after(end, last, last.product().drying().lightTraffic()),
        after(end, last, last.product().drying().fullTraffic()));
  }

  private static Figure<LocalDateTime> after(
      Figure<LocalDateTime> end, CoatPlan last, Figure<TemperatureTable> table) {
    Figure<Duration> wait = last.at(table);
    return end.with(wait, LocalDateTime::plus);
  }

  /** A day with its weekday, and an hour; the bundle has the names of days and months. */
  static Message moment(LocalDateTime t) {
    return Message.of(
        "work.reopening.moment",
        t.getDayOfWeek().getValue(),
        t.getDayOfMonth(),
        t.getMonthValue(),
        t.getYear(),
        HOUR.format(t));
  }

  /** The sheet to leave with the client. */
  public HandoverDocument paper(WorkPlan plan) {
    List<HandoverDocument.Row> when = new ArrayList<>();
    when.add(
        HandoverDocument.Row.fact(
            Message.of("work.reopening.last-coat-done"), lastCoat.text(Reopening::moment)));
    when.add(
        HandoverDocument.Row.fact(
            Message.of("work.reopening.socks-and-soft-soles-from"), light.text(Reopening::moment)));
    when.add(
        HandoverDocument.Row.fact(
            Message.of("work.reopening.furniture-and-full-traffic-from"),
            full.text(Reopening::moment)));
    when.add(
        HandoverDocument.Row.fact(
            Message.of("work.reopening.first-wash-damp-and-with"), full.text(Reopening::moment)));
    List<HandoverDocument.Row> keeping =
        care().stream().map(c -> HandoverDocument.Row.fact(c, "")).toList();
    return new HandoverDocument(
        Message.of("work.reopening.reopening-and-care", area.name()),
        List.of(
            plan.book().origin(),
            Message.of("work.reopening.times-are-for-the-temperature"),
            plan.dated()
                ? HandoverDocument.said("")
                : Message.of("work.reopening.the-site-has-no-start")),
        List.of(
            new HandoverDocument.Section(Message.of("work.reopening.when"), when),
            new HandoverDocument.Section(Message.of("work.reopening.care-common-practice"), keeping)),
        List.of());
  }
}
