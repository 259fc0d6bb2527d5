package slabwright.work.handover;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slabwright.site.Finish;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.book.Figure;
import slabwright.work.book.TemperatureTable;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.DayPlan;
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
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("EEE d MMM uuuu, HH:mm", Locale.ENGLISH);

  private static final List<String> CARE =
      List.of(
          "No mats, tape or plants before full traffic; nothing rubber for a month.",
          "Felt under chairs; lift, don't drag.",
          "Dust mop daily; damp mop with a neutral cleaner, no vinegar, no bleach, no wax.",
          "Wipe up oil, wine and acids at once.",
          "Recoat when water no longer beads where people turn.");

  /** One floor area's, or empty when it gets no coat. */
  public static Optional<Reopening> of(AreaWorkPlan area, WorkPlan plan) {
    return area.coats().stream()
        .filter(c -> c.job().target() == Finish.Target.WHOLE_FLOOR)
        .reduce((a, b) -> b)
        .map(last -> of(area, last, plan.days()));
  }

  private static Reopening of(AreaWorkPlan area, CoatPlan last, Figure<DayPlan> days) {
    CoatNumber coat = new CoatNumber(last.job().place(), last.job().coats());
    Figure<LocalDateTime> end =
        days.flatMap(
            d ->
                d.coat(area.id(), coat)
                    .map(s -> Figure.known(s.end()))
                    .orElseGet(() -> Figure.refused("the last coat is not in the day plan")));
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

  /** The sheet to leave with the client. */
  public HandoverDocument paper(WorkPlan plan) {
    List<HandoverDocument.Row> when = new ArrayList<>();
    when.add(HandoverDocument.Row.fact("Last coat done", lastCoat.text(WHEN::format)));
    when.add(HandoverDocument.Row.fact("Socks and soft soles from", light.text(WHEN::format)));
    when.add(HandoverDocument.Row.fact("Furniture and full traffic from", full.text(WHEN::format)));
    when.add(
        HandoverDocument.Row.fact(
            "First wash, damp and with a neutral cleaner, from", full.text(WHEN::format)));
    List<HandoverDocument.Row> care =
        CARE.stream().map(c -> HandoverDocument.Row.fact(c, "")).toList();
    return new HandoverDocument(
        "Reopening and care: " + area.name(),
        List.of(
            plan.book().origin(),
            "Times are for the temperature on the plan; cold or damp air makes them longer. The"
                + " data sheet comes first.",
            plan.dated() ? "" : "The site has no start date: days count from a Monday."),
        List.of(
            new HandoverDocument.Section("When", when),
            new HandoverDocument.Section("Care (common practice)", care)),
        List.of());
  }
}
