package slabwright.sheets.packet.office;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.DenseBlock;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PairBlock;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.plan.FloorsBlock;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.work.AirPlan;
import slabwright.work.AreaResult;
import slabwright.work.HeldGroup;
import slabwright.work.JobTools;
import slabwright.work.Presence;
import slabwright.work.air.AirFigures;
import slabwright.work.days.DayPlan;
import slabwright.work.handover.Cost;
import slabwright.work.handover.OrderLine;
import slabwright.work.handover.Scope;
import slabwright.work.handover.SupplyLine;

/** The job on one page: plan, areas, days, price, what stands against it, what to order by when. */
final class SummaryPage {
  private static final int MOST_RED = 6;

  /** Height of the plan, and where much is said, mm. */
  private static final double HIGH = 58;

  private static final double LOW = 48;

  private final PacketContents job;
  private final SheetContext context;

  SummaryPage(PacketContents job, SheetContext context) {
    this.job = job;
    this.context = context;
  }

  /** Share of the width that the plan gets: less where the figures' words are long. */
  private static final List<Double> PLAN = List.of(0.44, 0.36, 0.28);

  List<PageDraft> drafts() {
    PageDraft draft =
        new PageDraft(
            context.say("sheets.summary-page.title"),
            job.site().name(),
            "",
            Optional.empty(),
            List.of());
    for (boolean dense : List.of(false, true)) {
      List<PageDraft> one = onOne(draft, dense);
      if (one.size() == 1) {
        return one;
      }
    }
    return onOne(draft, false);
  }

  private List<PageDraft> onOne(PageDraft draft, boolean dense) {
    List<PageDraft> pages = List.of();
    for (double plan : PLAN) {
      pages = ColumnPages.of(context, draft, blocks(plan, dense));
      if (pages.size() == 1) {
        return pages;
      }
    }
    return pages;
  }

  /**
   * All of the page.
   *
   * @param dense whether figures and the list of what is ordered are set closer
   */
  private List<Block> blocks(double plan, boolean dense) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new PairBlock(
            plan,
            List.of(FloorsBlock.of(job.areas(), dense ? LOW : HIGH, context)),
            List.of(dense ? new DenseBlock(facts()) : facts())));
    List<String> red = red();
    blocks.add(new Heading(context.say("sheets.summary-page.red")));
    blocks.add(
        new BulletBlock(
            red.isEmpty() ? List.of(context.say("sheets.summary-page.nothing-red")) : red));
    blocks.add(new Heading(context.say("sheets.summary-page.orders")));
    List<OrderLine> lines = OrderLine.of(job.work());
    Block orders = orders(lines, plan < PLAN.get(0));
    blocks.add(dense ? new DenseBlock(orders) : orders);
    blocks.addAll(supplies());
    for (OrderLine o : lines) {
      if (!o.buy().kits().isKnown()) {
        blocks.add(
            new Paragraph(
                context.say(
                    "sheets.summary-page.not-worked-out",
                    o.buy().name(),
                    o.buy().kits().text(k -> ""))));
      }
    }
    return blocks;
  }

  /** What is used up and is no product, by when; empty without such. */
  private List<Block> supplies() {
    Map<Optional<LocalDate>, List<String>> byDay = new LinkedHashMap<>();
    SupplyLine.of(job.work()).stream()
        .sorted(Comparator.comparing(s -> s.neededOn().orElse(LocalDate.MAX)))
        .forEach(
            s ->
                byDay
                    .computeIfAbsent(s.neededOn(), d -> new ArrayList<>())
                    .add(
                        context.say(
                            "sheets.summary-page.used-up", s.what(), s.amount().text(m -> m))));
    List<String> lines = new ArrayList<>();
    byDay.forEach(
        (day, all) ->
            lines.add(
                day.isPresent()
                    ? context.say(
                        "sheets.summary-page.used-up-by", date(day), String.join("; ", all))
                    : context.say(
                        "sheets.summary-page.used-up", date(day), String.join("; ", all))));
    return lines.isEmpty() ? List.of() : List.of(new DenseBlock(new BulletBlock(lines)));
  }

  private String date(Optional<LocalDate> day) {
    return day.map(d -> context.times().day(d.atStartOfDay(), true))
        .orElse(context.say("sheets.summary-page.no-date"));
  }

  private Block facts() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (AreaResult a : job.areas()) {
      row(rows, a.takeoff().area().name(), context.wholeArea(a.takeoff().net().area()));
    }
    Optional<DayPlan> days = job.work().days().maybe();
    row(
        rows,
        context.say("sheets.summary-page.begins"),
        days.map(d -> context.times().day(d.firstDay().atStartOfDay(), job.work().dated()))
            .orElse(context.say("sheets.summary-page.no-dates")));
    days.ifPresent(
        d -> {
          row(
              rows,
              context.say("sheets.summary-page.ends"),
              context.times().day(d.end(), job.work().dated()));
          row(rows, context.say("sheets.summary-page.days"), Long.toString(workingDays(d)));
          row(
              rows,
              context.say("sheets.summary-page.presence"),
              hours(Presence.of(d, job.work().book()).present()));
          row(rows, context.say("sheets.summary-page.hours"), hours(d.personTime()));
        });
    Cost cost = Cost.of(job.work());
    BigDecimal known = cost.known();
    row(
        rows,
        cost.total().isKnown()
            ? context.say("sheets.summary-page.price")
            : context.say("sheets.summary-page.known-price"),
        context.say("sheets.offer-page.amount", known, cost.currency()));
    return TableBlock.of(List.of(TableColumn.words(""), TableColumn.number("")), rows);
  }

  /** As the cost counts them. */
  private String hours(Duration time) {
    return context.say("sheets.summary-page.hour-count", Presence.hours(time));
  }

  private static long workingDays(DayPlan days) {
    return days.steps().stream()
        .flatMap(s -> s.spans().stream())
        .map(s -> s.start().toLocalDate())
        .distinct()
        .count();
  }

  private static void row(List<List<TableCell>> rows, String what, String value) {
    rows.add(List.of(TableCell.of(what), TableCell.bold(value)));
  }

  /**
   * Why the job can't start, what is held, advice on a damp slab that is not met, and what the cost
   * still wants; equal ones once.
   */
  private List<String> red() {
    List<String> all = new ArrayList<>();
    job.work().outlook().cannotStart().forEach(m -> all.add(context.words().line(m)));
    HeldGroup.of(job.work().outlook().held()).forEach(h -> all.add(context.words().line(h.why())));
    fanShort().ifPresent(all::add);
    Scope scope = Scope.of(job.work());
    scope
        .unmetMoisture()
        .forEach(g -> all.add(context.say("sheets.summary-page.advice-not-met", g.words())));
    Cost cost = scope.cost();
    long open = cost.lines().stream().filter(l -> !l.amount().isKnown()).count();
    if (open > 0) {
      all.add(context.say("sheets.summary-page.open-prices", open));
    }
    List<String> shown = all.stream().distinct().limit(MOST_RED).toList();
    long more = all.stream().distinct().count() - shown.size();
    if (more == 0) {
      return shown;
    }
    List<String> longer = new ArrayList<>(shown);
    longer.add(context.say("sheets.summary-page.and-more", more));
    return longer;
  }

  /** Where the fans of the job move less than the most air that a floor of the plan has. */
  private Optional<String> fanShort() {
    double plan =
        job.work().areas().stream()
            .flatMap(a -> a.air().maybe().flatMap(AirPlan::screening).stream())
            .flatMap(s -> s.stated().map(AirFigures::airflow).stream())
            .max(Comparator.naturalOrder())
            .orElse(0.0);
    OptionalDouble fans = JobTools.fansBelow(plan, job.work());
    return fans.isPresent()
        ? Optional.of(
            context.say(
                "sheets.summary-page.fan-short",
                RateFormat.airflow(fans.getAsDouble(), context.units()),
                RateFormat.airflow(plan, context.units())))
        : Optional.empty();
  }

  /**
   * What is ordered.
   *
   * @param brokenKits whether a long list of kits may go on in a second line, for the products'
   *     sake
   */
  private Block orders(List<OrderLine> lines, boolean brokenKits) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (OrderLine o : lines) {
      rows.add(
          List.of(
              TableCell.of(context.say(o.buy().name())),
              TableCell.of(
                  o.buy()
                      .kits()
                      .maybe()
                      .map(k -> QuantityFormat.volume(k.needed(), context.units()))
                      .orElse(context.say("sheets.scope-sheet.open"))),
              TableCell.of(
                  o.buy().kits().maybe().map(k -> context.say(k.said(context.units()))).orElse("")),
              TableCell.bold(date(o.neededOn())),
              TableCell.of(context.say("sheets.summary-page.blank"))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.summary-page.product")),
            TableColumn.number(context.say("sheets.summary-page.needed")),
            brokenKits
                ? TableColumn.words(context.say("sheets.summary-page.kits"))
                : TableColumn.number(context.say("sheets.summary-page.kits")),
            TableColumn.number(context.say("sheets.summary-page.on-site-by")),
            TableColumn.number(context.say("sheets.summary-page.lead-time"))),
        rows);
  }
}
