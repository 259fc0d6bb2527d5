package slabwright.sheets.packet.client;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.shape.Bounds;
import slabwright.sheets.packet.AgreedBefore;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.StopNotice;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.KeptBlock;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PairBlock;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.work.AreaResult;
import slabwright.work.WorkPlan;
import slabwright.work.handover.Cost;

/**
 * What a release agreed beside what the plan says now: before, after, difference, and the lines to
 * sign. Floors, graphics and the price as one number; no hours and no cost line.
 */
public final class ChangeOrder {
  private final PacketContents job;
  private final AgreedBefore before;
  private final SheetContext context;

  private ChangeOrder(PacketContents job, AgreedBefore before) {
    this.job = job;
    this.before = before;
    this.context = job.portrait();
  }

  /** The pages; none where nothing was agreed otherwise. */
  public static List<FramedDraft> drafts(PacketContents job) {
    return FramedDraft.all(job.portrait(), pageDrafts(job));
  }

  static List<PageDraft> pageDrafts(PacketContents job) {
    return job.agreed().map(b -> new ChangeOrder(job, b).pages()).orElse(List.of());
  }

  private List<PageDraft> pages() {
    PageDraft page =
        new PageDraft(
            context.say("sheets.change-order.title"),
            context.say("sheets.change-order.subtitle", before.release()),
            "",
            Optional.empty(),
            List.of());
    // it lies before the page that has the reasons
    List<Block> blocks = new ArrayList<>(StopNotice.blocks(job, context));
    blocks.add(new Heading(context.say("sheets.change-order.what")));
    blocks.add(new BulletBlock(before.changes().stream().map(context.words()::line).toList()));
    pictures(blocks);
    List<Block> signed = new ArrayList<>();
    signed.add(table());
    signed.add(new Paragraph(context.say("sheets.change-order.rest", before.release())));
    signed.add(
        new PairBlock(
            0.5,
            List.of(new SignBlock(context.say("sheets.change-order.client"), context)),
            List.of(new SignBlock(context.say("sheets.change-order.contractor"), context))));
    blocks.add(new KeptBlock(signed));
    return ColumnPages.of(context, page, blocks);
  }

  /** Floors that look otherwise, before and after. */
  private void pictures(List<Block> blocks) {
    Map<String, AreaResult> then = byId(before.areas());
    ClientPlan plan = new ClientPlan(context);
    for (AreaResult now : job.areas()) {
      AreaResult was = then.get(now.takeoff().area().id());
      if (was != null && !was.takeoff().area().equals(now.takeoff().area())) {
        blocks.add(new Heading(now.takeoff().area().name()));
        blocks.add(
            new PairBlock(
                0.5,
                side(plan, context.say("sheets.change-order.before"), was, before.work()),
                side(plan, context.say("sheets.change-order.after"), now, job.work())));
      }
    }
    if (blocks.stream().anyMatch(PairBlock.class::isInstance)) {
      blocks.add(
          new Paragraph(
              job.pictured()
                  ? context.say("sheets.change-order.picture")
                  : context.say("sheets.change-order.no-picture")));
    }
    blocks.add(new Gap(2));
  }

  private List<Block> side(ClientPlan plan, String said, AreaResult area, WorkPlan work) {
    Optional<ExpectedFloor> picture =
        job.pictured() ? Optional.of(new ExpectedFloor(area, work.book())) : Optional.empty();
    return List.of(new Paragraph(said), plan.floor(area, picture, 62));
  }

  private static Map<String, AreaResult> byId(List<AreaResult> areas) {
    Map<String, AreaResult> all = new LinkedHashMap<>();
    areas.forEach(a -> all.put(a.takeoff().area().id(), a));
    return all;
  }

  private Block table() {
    List<List<TableCell>> rows = new ArrayList<>();
    Map<String, AreaResult> then = byId(before.areas());
    Map<String, AreaResult> now = byId(job.areas());
    Map<String, AreaResult> all = new LinkedHashMap<>(now);
    then.forEach(all::putIfAbsent);
    all.forEach(
        (id, named) -> {
          floor(rows, named, Optional.ofNullable(then.get(id)), Optional.ofNullable(now.get(id)));
          graphics(rows, Optional.ofNullable(then.get(id)), Optional.ofNullable(now.get(id)));
        });
    end(rows);
    price(rows);
    return TableBlock.of(
        List.of(
            TableColumn.words(""),
            TableColumn.number(context.say("sheets.change-order.before")),
            TableColumn.number(context.say("sheets.change-order.after")),
            TableColumn.number(context.say("sheets.change-order.difference"))),
        rows);
  }

  private void floor(
      List<List<TableCell>> rows,
      AreaResult named,
      Optional<AreaResult> then,
      Optional<AreaResult> now) {
    String was = then.map(a -> context.wholeArea(a.takeoff().net().area())).orElse("–");
    String is = now.map(a -> context.wholeArea(a.takeoff().net().area())).orElse("–");
    if (!was.equals(is)) {
      double by =
          now.map(a -> a.takeoff().net().area()).orElse(0.0)
              - then.map(a -> a.takeoff().net().area()).orElse(0.0);
      row(
          rows,
          named.takeoff().area().name(),
          was,
          is,
          signed(by, context.wholeArea(Math.abs(by))));
    }
  }

  private void graphics(
      List<List<TableCell>> rows, Optional<AreaResult> then, Optional<AreaResult> now) {
    Map<String, PlacedInlay> was = inlays(then);
    Map<String, PlacedInlay> is = inlays(now);
    Map<String, PlacedInlay> all = new LinkedHashMap<>(is);
    was.forEach(all::putIfAbsent);
    all.forEach(
        (id, named) -> {
          String before = size(was.get(id));
          String after = size(is.get(id));
          if (!before.equals(after)) {
            row(rows, named.inlay().name(), before, after, "");
          }
        });
  }

  private static Map<String, PlacedInlay> inlays(Optional<AreaResult> area) {
    Map<String, PlacedInlay> all = new LinkedHashMap<>();
    area.ifPresent(a -> a.inlays().forEach(i -> all.put(i.inlay().id(), i)));
    return all;
  }

  private String size(PlacedInlay placed) {
    if (placed == null) {
      return "–";
    }
    Bounds b = placed.plan().openings().bounds();
    return context.length(b.width()) + " × " + context.length(b.height());
  }

  private void end(List<List<TableCell>> rows) {
    String was = end(before.work());
    String is = end(job.work());
    if (!was.equals(is)) {
      row(rows, context.say("sheets.change-order.end"), was, is, "");
    }
  }

  private String end(WorkPlan work) {
    return work.days()
        .maybe()
        .filter(d -> work.dated() && work.outlook().canStart())
        .map(d -> context.times().day(d.end(), true))
        .orElse("–");
  }

  /** An open price is written by hand. */
  private void price(List<List<TableCell>> rows) {
    Cost was = Cost.of(before.work());
    Cost is = Cost.of(job.work());
    Optional<BigDecimal> then = was.total().maybe();
    Optional<BigDecimal> now = is.total().maybe();
    String by =
        then.flatMap(t -> now.map(n -> n.subtract(t)))
            .map(d -> signed(d.doubleValue(), amount(Optional.of(d.abs()), is.currency())))
            .orElse(amount(Optional.empty(), is.currency()));
    row(
        rows,
        context.say("sheets.change-order.price"),
        amount(then, was.currency()),
        amount(now, is.currency()),
        by);
  }

  private String amount(Optional<BigDecimal> known, String currency) {
    return known
        .map(v -> context.say("sheets.offer-page.amount", v, currency))
        .orElse(context.say("sheets.change-order.blank", currency));
  }

  private String signed(double by, String size) {
    return by == 0 ? size : (by < 0 ? "−" : "+") + size;
  }

  private static void row(
      List<List<TableCell>> rows, String what, String before, String after, String by) {
    rows.add(
        List.of(
            TableCell.of(what), TableCell.of(before), TableCell.bold(after), TableCell.bold(by)));
  }
}
