package slabwright.sheets.packet.client;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.ColumnPages;
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
import slabwright.site.Exposure;
import slabwright.site.Finish;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.coat.CoatPlan;
import slabwright.work.handover.Cost;
import slabwright.work.handover.Scope;

/** What is done, what is not, the price as one number, and the line to sign under it. */
final class OfferPage {
  private final PacketContents job;
  private final SheetContext context;
  private final Scope scope;

  OfferPage(PacketContents job, SheetContext context) {
    this.job = job;
    this.context = context;
    this.scope = Scope.of(job.work());
  }

  List<PageDraft> drafts() {
    PageDraft draft =
        new PageDraft(
            context.say("sheets.offer-page.title"),
            context.say("sheets.offer-page.subtitle"),
            "",
            Optional.empty(),
            List.of());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(context.say("sheets.offer-page.we-do")));
    job.work().areas().forEach(a -> done(blocks, a));
    blocks.add(new Heading(context.say("sheets.offer-page.we-do-not")));
    blocks.add(new BulletBlock(scope.excluded().stream().map(context::say).toList()));
    List<Block> signed = new ArrayList<>();
    price(signed, scope.cost());
    signed.add(
        new PairBlock(
            0.5,
            List.of(new SignBlock(context.say("sheets.offer-page.client"), context)),
            List.of(new SignBlock(context.say("sheets.offer-page.contractor"), context))));
    blocks.add(new KeptBlock(signed));
    scope
        .declined()
        .forEach(
            g ->
                blocks.add(
                    new KeptBlock(
                        List.of(
                            new Gap(6),
                            new SignBlock(
                                context.say(
                                    "sheets.offer-page.declined",
                                    context.say(g.words()),
                                    context.say(g.status())),
                                context)))));
    return ColumnPages.of(context, draft, blocks);
  }

  /** One floor: its size, how it is ground, what goes on it. */
  private void done(List<Block> blocks, AreaWorkPlan area) {
    List<String> lines = new ArrayList<>();
    area.floor().area().finish().exposure().ifPresent(e -> lines.add(context.say(ground(e))));
    for (CoatPlan c : area.coats()) {
      int coats = c.job().coats();
      lines.add(
          c.job().target() == Finish.Target.INLAY
              ? context.say("sheets.offer-page.graphic", coats)
              : context.say("sheets.offer-page.coats", product(c), coats));
    }
    blocks.add(new Paragraph(context.say("sheets.offer-page.floor", area.name(), size(area))));
    blocks.add(new BulletBlock(lines));
  }

  private static Message ground(Exposure exposure) {
    return switch (exposure) {
      case CREAM -> Message.of("sheets.offer-page.ground-cream");
      case FINE -> Message.of("sheets.offer-page.ground-fine");
      case MEDIUM -> Message.of("sheets.offer-page.ground-medium");
      case COARSE -> Message.of("sheets.offer-page.ground-coarse");
    };
  }

  private String size(AreaWorkPlan area) {
    return job.area(area.id()).map(a -> context.wholeArea(a.takeoff().net().area())).orElse("");
  }

  /** Without the book's word that it is invented, which stands once a packet. */
  private static String product(CoatPlan c) {
    return c.product().label().replaceFirst(" \\([^)]*\\)$", "");
  }

  private void price(List<Block> blocks, Cost cost) {
    blocks.add(new Heading(context.say("sheets.offer-page.price")));
    Optional<BigDecimal> total = cost.total().maybe();
    List<List<TableCell>> rows = new ArrayList<>();
    rows.add(
        List.of(
            TableCell.of(context.say("sheets.offer-page.for-all")),
            TableCell.bold(
                total
                    .map(t -> context.say("sheets.offer-page.amount", t, cost.currency()))
                    .orElse(context.say("sheets.offer-page.blank-amount", cost.currency())))));
    rows.add(
        List.of(
            TableCell.of(context.say("sheets.offer-page.valid-until")),
            TableCell.of(context.say("sheets.offer-page.blank-date"))));
    blocks.add(TableBlock.of(List.of(TableColumn.words(""), TableColumn.number("")), rows));
    blocks.add(
        new Paragraph(
            (total.isEmpty() ? context.say("sheets.offer-page.not-complete") + " " : "")
                + context.say("sheets.offer-page.changes")
                + " "
                + context.say(job.work().book().origin())));
  }
}
