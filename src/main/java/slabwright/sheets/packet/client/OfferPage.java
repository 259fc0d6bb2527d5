package slabwright.sheets.packet.client;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.StopNotice;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.DenseBlock;
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
import slabwright.site.Mark;
import slabwright.units.ColourNaming;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.book.ProductKind;
import slabwright.work.coat.CoatPlan;
import slabwright.work.handover.Cost;
import slabwright.work.handover.Scope;
import slabwright.work.prep.PrepStep;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepPlace;

/** What is done, what is not, the price as one number, and the line to sign under it. */
final class OfferPage {
  /** More places of one kind are told by their number. */
  private static final int MOST_NAMED = 3;

  private final PacketContents job;
  private final SheetContext context;
  private final Scope scope;

  OfferPage(PacketContents job, SheetContext context) {
    this.job = job;
    this.context = context;
    this.scope = Scope.of(job.work());
  }

  List<PageDraft> drafts() {
    boolean offer = job.work().areas().stream().anyMatch(a -> !lines(a).isEmpty());
    PageDraft draft =
        new PageDraft(
            context.say("sheets.offer-page.title"),
            StopNotice.held(
                job,
                context,
                offer
                    ? context.say("sheets.offer-page.subtitle")
                    : context.say("sheets.offer-page.no-offer")),
            "",
            Optional.empty(),
            List.of());
    List<Block> blocks = new ArrayList<>(StopNotice.brief(job, context));
    blocks.add(new Heading(context.say("sheets.offer-page.we-do")));
    job.work().areas().forEach(a -> done(blocks, a));
    blocks.add(new Heading(context.say("sheets.offer-page.we-do-not")));
    blocks.add(new BulletBlock(scope.excluded().stream().map(context::say).toList()));
    int lists = blocks.size();
    if (offer) {
      blocks.add(signed());
    }
    blocks.addAll(advice());
    List<PageDraft> pages = ColumnPages.of(context, draft, blocks);
    if (pages.size() == 1) {
      return pages;
    }
    // rather than a page with a line to sign alone: the lists smaller, the price and all lines not
    blocks.subList(0, lists).replaceAll(DenseBlock::new);
    List<PageDraft> dense = ColumnPages.of(context, draft, blocks);
    if (dense.size() > 1) {
      // then the advice too; what is ordered, the price and its lines stay as they are
      blocks.subList(offer ? lists + 1 : lists, blocks.size()).replaceAll(DenseBlock::new);
      dense = ColumnPages.of(context, draft, blocks);
    }
    return dense.size() < pages.size() ? dense : pages;
  }

  /** Lines to sign for advice that the work does not follow, two beside each other. */
  private List<Block> advice() {
    List<Block> lines =
        Stream.concat(
                scope.unmetMoisture().stream().map(this::unmet),
                scope.declined().stream().map(this::declined))
            .map(sentence -> (Block) new SignBlock(sentence, context))
            .toList();
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i += 2) {
      Block row =
          i + 1 < lines.size()
              ? new PairBlock(0.5, List.of(lines.get(i)), List.of(lines.get(i + 1)))
              : lines.get(i);
      blocks.add(new KeptBlock(List.of(new Gap(2), row)));
    }
    return blocks;
  }

  private String declined(Scope.GivenAdvice g) {
    return context.say(
        "sheets.offer-page.declined", context.say(g.words()), context.say(g.status()));
  }

  /** Nobody decided on it, and the work on this page does otherwise. */
  private String unmet(Scope.GivenAdvice g) {
    return context.say("sheets.offer-page.advice-not-met", context.say(g.words()));
  }

  private Block signed() {
    List<Block> signed = new ArrayList<>();
    price(signed, scope.cost());
    signed.add(
        new PairBlock(
            0.5,
            List.of(new SignBlock(context.say("sheets.offer-page.client"), context)),
            List.of(new SignBlock(context.say("sheets.offer-page.contractor"), context))));
    return new KeptBlock(signed);
  }

  /** One floor: its size, how it is made ready and ground, what goes on it. */
  private void done(List<Block> blocks, AreaWorkPlan area) {
    List<String> lines = lines(area);
    blocks.add(new Paragraph(context.say("sheets.offer-page.floor", area.name(), size(area))));
    blocks.add(
        lines.isEmpty()
            ? new Paragraph(context.say("sheets.offer-page.nothing-chosen"))
            : new BulletBlock(lines));
  }

  private List<String> lines(AreaWorkPlan area) {
    List<String> lines = new ArrayList<>();
    List<Message> ready = made(area);
    area.floor().area().finish().exposure().ifPresent(e -> ready.add(ground(e)));
    if (!ready.isEmpty()) {
      String first = context.words().line(ready.get(0));
      Stream<String> rest = ready.stream().skip(1).map(context::say);
      lines.add(Stream.concat(Stream.of(first), rest).collect(Collectors.joining("; ")));
    }
    for (CoatPlan c : area.coats()) {
      int coats = c.job().coats();
      lines.add(
          context
              .words()
              .line(
                  c.job().target() == Finish.Target.INLAY
                      ? Message.of("sheets.offer-page.graphic", coats)
                      : Message.of("sheets.offer-page.coats", named(c), coats)));
    }
    return lines;
  }

  /** A dye for the floor with its colour, for the client signs for it. */
  private Object named(CoatPlan c) {
    Optional<String> hex =
        c.product().is(ProductKind.BASE_DYE) ? c.product().colour().maybe() : Optional.empty();
    return hex.isPresent()
        ? Message.of(
            "sheets.offer-page.of-colour", c.product().shortLabel(), ColourNaming.of(hex.get()))
        : c.product().shortLabel();
  }

  /**
   * What a client sees of the steps that make the floor ready, many alike as one; grinding is told
   * by what it shows.
   */
  private static List<Message> made(AreaWorkPlan area) {
    Map<StepKind, List<String>> places = new LinkedHashMap<>();
    for (PrepStep step : area.prep().steps()) {
      List<String> names = places.computeIfAbsent(step.subject().kind(), k -> new ArrayList<>());
      if (step.subject().place() instanceof StepPlace.Zone zone) {
        area.floor().area().mark(zone.markId()).map(Mark::name).ifPresent(names::add);
      }
    }
    List<Message> made = new ArrayList<>();
    places.forEach(
        (kind, names) -> {
          if (names.size() > MOST_NAMED) {
            together(kind, names.size()).ifPresent(made::add);
          } else if (kind == StepKind.FILL_GAPS) {
            made.add(Message.of("sheets.offer-page.filled"));
          } else {
            names.forEach(n -> alone(kind, n).ifPresent(made::add));
          }
        });
    return made;
  }

  private static Optional<Message> alone(StepKind kind, String place) {
    return switch (kind) {
      case LEVEL_TRENCH -> Optional.of(Message.of("sheets.offer-page.trench-flush", place));
      case FILL_TRENCH -> Optional.of(Message.of("sheets.offer-page.trench-filled", place));
      case TAKE_OFF_RESIDUE -> Optional.of(Message.of("sheets.offer-page.taken-off", place));
      default -> Optional.empty();
    };
  }

  private static Optional<Message> together(StepKind kind, int count) {
    return switch (kind) {
      case LEVEL_TRENCH -> Optional.of(Message.of("sheets.offer-page.trenches-flush", count));
      case FILL_TRENCH -> Optional.of(Message.of("sheets.offer-page.trenches-filled", count));
      case TAKE_OFF_RESIDUE -> Optional.of(Message.of("sheets.offer-page.all-taken-off", count));
      default -> Optional.empty();
    };
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
