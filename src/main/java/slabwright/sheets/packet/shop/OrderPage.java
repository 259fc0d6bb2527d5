package slabwright.sheets.packet.shop;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slabwright.drawing.Ink;
import slabwright.drawing.View;
import slabwright.figures.DyeStyle;
import slabwright.figures.StencilInks;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.OpenQuestions;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.cutfile.FilmOrder;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.StopNotice;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.DenseBlock;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PairBlock;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.page.TypeSizes;
import slabwright.site.FloorArea;
import slabwright.site.job.Party;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;

/** The order of one inlay's stencils: who orders what, by when, and what it looks like. */
final class OrderPage {
  /** Height of the preview beside who orders, the same on a full page, and alone on a page, mm. */
  private static final double BESIDE = 62;

  private static final double LOW = 44;

  private static final double ALONE = 120;

  private final PacketContents job;
  private final FloorArea area;
  private final PlacedInlay placed;
  private final InlayPlan plan;
  private final SheetContext context;

  OrderPage(PacketContents job, FloorArea area, PlacedInlay placed, SheetContext context) {
    this.job = job;
    this.area = area;
    this.placed = placed;
    this.plan = placed.plan();
    this.context = context;
  }

  List<PageDraft> drafts() {
    PageDraft draft =
        new PageDraft(
            context.say("sheets.order-page.title", placed.inlay().name()),
            context.say("sheets.order-page.subtitle"),
            "",
            Optional.empty(),
            List.of());
    for (boolean dense : List.of(false, true)) {
      List<PageDraft> one = ColumnPages.of(context, draft, blocks(false, dense));
      if (one.size() == 1) {
        return one;
      }
    }
    return ColumnPages.of(context, draft, blocks(true, false));
  }

  /** With much to say first the preview goes to the next page, and is large there. */
  private List<Block> blocks(boolean large, boolean dense) {
    List<Block> blocks = new ArrayList<>(StopNotice.blocks(job, context));
    blocks.addAll(open());
    blocks.add(
        large
            ? who()
            : new PairBlock(
                0.56, List.of(who()), List.of(new Preview(plan, dense ? LOW : BESIDE))));
    blocks.add(new Heading(context.say("sheets.order-page.what")));
    blocks.add(dense ? new DenseBlock(what()) : what());
    blocks.add(new Heading(context.say("sheets.order-page.colours")));
    blocks.add(dense ? new DenseBlock(colours()) : colours());
    if (large) {
      blocks.add(new Preview(plan, ALONE));
    }
    blocks.add(
        new BulletBlock(
            List.of(
                context.say("sheets.order-page.weed"),
                context.say("sheets.order-page.never"),
                context.say("sheets.order-page.proof"))));
    return blocks;
  }

  /** Nothing is cut while something is asked. */
  private List<Block> open() {
    String asked =
        OpenQuestions.of(placed.artwork(), placed.inlay().spec()).stream()
            .map(q -> context.say(q.message()))
            .collect(Collectors.joining(" "));
    return asked.isEmpty()
        ? List.of()
        : List.of(
            CautionBlock.stop(context.say("sheets.order-page.question-open"), asked), new Gap(3));
  }

  private Block who() {
    Party us = job.site().job().contractor();
    List<List<TableCell>> rows = new ArrayList<>();
    row(rows, context.say("sheets.order-page.from"), or(us.name()));
    row(rows, context.say("sheets.order-page.contact"), or(us.contact()));
    row(rows, context.say("sheets.order-page.phone"), or(us.phone()));
    row(rows, context.say("sheets.order-page.mail"), or(us.mail()));
    row(rows, context.say("sheets.order-page.ship-to"), or(us.address().replace("\n", ", ")));
    row(rows, context.say("sheets.order-page.needed-by"), needed());
    return TableBlock.of(List.of(TableColumn.narrow(""), TableColumn.words("")), rows);
  }

  private static void row(List<List<TableCell>> rows, String label, String value) {
    rows.add(List.of(TableCell.of(label), TableCell.bold(value)));
  }

  private String or(String known) {
    return known.isBlank() ? context.say("sheets.order-page.blank") : known;
  }

  /** The film is wanted for the tack test already, so a day before it. */
  private String needed() {
    Optional<LocalDate> first =
        job.work()
            .days()
            .maybe()
            .filter(d -> job.work().dated())
            .flatMap(
                d ->
                    d.steps().stream()
                        .filter(s -> s.task().type().isOn(area.id()) && usesFilm(s))
                        .map(s -> d.lastDayBefore(s.start().toLocalDate()))
                        .findFirst());
    boolean addressed = !job.site().job().contractor().address().isBlank();
    return first
        .map(d -> context.times().day(d.atStartOfDay(), true))
        .map(d -> addressed ? context.say("sheets.order-page.on-site", d) : d)
        .orElseGet(() -> context.say("sheets.order-page.blank"));
  }

  private static boolean usesFilm(ScheduledStep step) {
    StepKind kind = step.task().type().kind();
    return kind == StepKind.TACK_TEST || kind == StepKind.LAY_STENCIL;
  }

  private Block what() {
    int stencils = plan.stencils().stencils().size();
    Bounds blank = plan.stencils().blank();
    List<List<TableCell>> rows = new ArrayList<>();
    row(
        rows,
        context.say("sheets.order-page.size"),
        context.say(
            "sheets.order-page.by", context.length(blank.width()), context.length(blank.height())));
    row(rows, context.say("sheets.order-page.film"), context.say(FilmOrder.film()));
    row(rows, context.say("sheets.order-page.film-colour"), context.say(FilmOrder.colour()));
    row(
        rows,
        context.say("sheets.order-page.roll"),
        context.say(
            "sheets.order-page.by",
            context.length(placed.inlay().spec().roll().mm()),
            context.length(plan.rollLength())));
    row(
        rows,
        context.say("sheets.order-page.tape"),
        plan.panels()
            .map(
                p ->
                    context.say(
                        "sheets.order-page.tape-and-length",
                        FilmOrder.tape(),
                        context.length(FilmOrder.tapeLength(p, plan.stencils()))))
            .orElse(context.say(FilmOrder.tape())));
    row(
        rows,
        context.say("sheets.order-page.quantity"),
        context.say("sheets.order-page.one-of-each", stencils));
    plan.panels().ifPresent(p -> row(rows, context.say("sheets.order-page.panels"), panels(p)));
    row(
        rows,
        context.say("sheets.order-page.test-piece"),
        context.say(FilmOrder.testPiece(context.units())));
    row(rows, context.say("sheets.order-page.packing"), context.say(FilmOrder.packing()));
    row(rows, context.say("sheets.order-page.files"), context.say(FilmOrder.files()));
    return TableBlock.of(List.of(TableColumn.narrow(""), TableColumn.words("")), rows);
  }

  private String panels(PanelPlan p) {
    return p.cut(plan.stencils().stencils()).stream()
        .map(this::panel)
        .collect(Collectors.joining("; "));
  }

  /** A panel's size is never broken over lines: half of it reads as another. */
  private String panel(Panel panel) {
    String size =
        context.say(
            "sheets.order-page.panel",
            panel.name(),
            context.length(panel.box().width()),
            context.length(panel.box().height()));
    return size.replace(' ', '\u00a0');
  }

  private Block colours() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (Stencil s : plan.stencils().stencils()) {
      rows.add(
          List.of(
              new TableCell.Swatch(DyeStyle.flat(s.colour())),
              TableCell.bold(context.say("sheets.order-page.stencil", s.layer())),
              TableCell.of(
                  plan.panels()
                      .map(p -> colourAndPanels(s, p))
                      .orElseGet(() -> context.say(placed.colourName(s.colour())))),
              TableCell.of(context.say("sheets.order-page.stays", s.loosePieces().size()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(""),
            TableColumn.narrow(""),
            TableColumn.words(""),
            TableColumn.narrow("")),
        rows);
  }

  private String colourAndPanels(Stencil s, PanelPlan p) {
    List<String> names = p.cut(s).stream().map(Panel::name).toList();
    return context.say(
        "sheets.order-page.colour-and-panels",
        placed.colourName(s.colour()),
        names.size(),
        String.join(", ", names));
  }

  /** The graphic as it will be, no higher than so many mm. */
  private record Preview(InlayPlan plan, double most) implements Block {
    @Override
    public List<Slice> slices(TypeSizes type, double width) {
      Bounds b = plan.openings().bounds();
      double scale = Math.max(b.width() / width, b.height() / most);
      View view = View.yDown(scale, new Vec(b.middle().x(), b.minY()), new Vec(width / 2, 0));
      List<Ink> inks = new ArrayList<>();
      StencilInks.flat(plan).forEach(i -> inks.add(i.placed(view)));
      return List.of(new Slice(b.height() / scale + 2, false, inks));
    }
  }
}
