package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextStyle;
import slabwright.figures.SettingOutInks;
import slabwright.figures.StencilInks;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.masking.PaperRun;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.RegistrationTick;
import slabwright.inlay.settingout.PanelPlace;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.placement.SettingOutSteps;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.sheets.plan.PlanSheet;
import slabwright.sheets.plan.Poster;
import slabwright.site.FloorArea;

/** How the panels of one graphic are laid on the snapped lines, as the graphic is read. */
final class LayingPoster {
  /** Paper that begins so near a corner begins at it, mm. */
  private static final double AT_CORNER = 2;

  private final FloorArea area;
  private final PlacedInlay inlay;
  private final InlayPlan plan;
  private final SettingOut settingOut;
  private final SheetContext context;
  private final Bounds blank;
  private final Vec cross;

  LayingPoster(FloorArea area, PlacedInlay inlay, SettingOut settingOut, SheetContext context) {
    this.area = area;
    this.inlay = inlay;
    this.plan = inlay.plan();
    this.settingOut = settingOut;
    this.context = context;
    this.blank = plan.stencils().blank();
    Affine toSite = plan.toSite().orElse(Affine.IDENTITY);
    this.cross = toSite.inverse().apply(inlay.inlay().middle().vec());
  }

  Poster poster() {
    return new PlanSheet(
            context,
            context.say("sheets.laying-poster.title", inlay.inlay().name()),
            context.say("sheets.laying-poster.subtitle", plan.stencils().stencils().size()),
            area.name(),
            CoordinateFrame.GRAPHIC,
            blank)
        .poster(this::draw, blocks(), key());
  }

  /** What is laid when, and how large it is: so that nobody takes the wrong panel off the roll. */
  private List<Block> key() {
    List<String> order = settingOut.panels().stream().map(PanelPlace::panel).toList();
    List<List<TableCell>> rows = new ArrayList<>();
    plan.panels()
        .ifPresent(
            p ->
                p.all().stream()
                    .sorted(Comparator.comparingInt(panel -> order.indexOf(panel.name())))
                    .forEach(panel -> rows.add(row(panel, order.indexOf(panel.name()) + 1))));
    List<Block> blocks = new ArrayList<>();
    if (!rows.isEmpty()) {
      blocks.add(new Heading(context.say("sheets.laying-poster.key")));
      blocks.add(TableBlock.of(List.of(TableColumn.words(""), TableColumn.number("")), rows));
    }
    blocks.add(new Heading(context.say("sheets.laying-poster.signs")));
    blocks.add(signs());
    return blocks;
  }

  private KeyBlock signs() {
    List<KeyBlock.Entry> entries = new ArrayList<>();
    entries.add(
        KeyBlock.sign(Symbol.Kind.POINT, Palette.BLUE, context.say("sheets.laying-poster.middle")));
    entries.add(
        KeyBlock.line(SettingOutInks.snapped(), context.say("sheets.laying-poster.snapped")));
    if (plan.panels().filter(p -> !p.ticks().isEmpty()).isPresent()) {
      entries.add(
          KeyBlock.sign(Symbol.Kind.LOOK, Palette.BLUE, context.say("sheets.laying-poster.tick")));
    }
    if (plan.panels().filter(p -> !p.laps(plan.stencils().stencils()).isEmpty()).isPresent()) {
      entries.add(KeyBlock.line(StencilInks.seamPen(), context.say("sheets.stencil-column.seam")));
      entries.add(
          KeyBlock.sign(
              Symbol.Kind.WITNESS, Palette.INK, context.say("sheets.stencil-column.witness")));
    }
    return KeyBlock.of(entries);
  }

  private List<TableCell> row(Panel panel, int place) {
    String size =
        context.say(
            "sheets.laying-poster.size",
            context.length(panel.box().width()),
            context.length(panel.box().height()));
    return List.of(
        TableCell.bold(
            context.say("sheets.laying-poster.panel", panel.name(), place).replace(' ', '\u00a0')),
        TableCell.of(size.replace(' ', '\u00a0')));
  }

  /** Stencil after stencil: two never lie on the floor together. */
  private List<Block> blocks() {
    List<Stencil> all = plan.stencils().stencils();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(context.say("sheets.laying-poster.lay")));
    blocks.add(new Paragraph(context.say("sheets.laying-poster.set-out-first")));
    plan.panels()
        .filter(p -> !p.ticks().isEmpty())
        .ifPresent(
            p -> {
              blocks.add(new Heading(context.say("sheets.stencil-column.ticks")));
              blocks.add(new Paragraph(context.say("sheets.laying-poster.ticks-say")));
              blocks.add(ticks(p));
            });
    if (all.size() > 1) {
      blocks.add(new Paragraph(context.say("sheets.laying-poster.one-at-a-time")));
    }
    Optional<Stencil> whole = Optional.empty();
    for (Stencil s : all) {
      if (all.size() > 1) {
        blocks.add(new Heading(context.say("sheets.laying-poster.stencil", s.layer(), all.size())));
        blocks.add(new Paragraph(context.say(inlay.colourName(s.colour()))));
      }
      boolean local = isLocal(s);
      if (!local && whole.isPresent()) {
        blocks.add(
            new Paragraph(context.say("sheets.laying-poster.as-before", whole.get().layer())));
      } else {
        blocks.addAll(numbered(steps(s, local)));
        whole = local ? whole : Optional.of(s);
      }
    }
    return blocks;
  }

  /** Where each tick lies on the marked blank. */
  private Block ticks(PanelPlan panels) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (RegistrationTick t : panels.ticks()) {
      rows.add(
          List.of(
              TableCell.bold(Integer.toString(t.number())),
              TableCell.of(context.length(t.at().x() - panels.blank().minX())),
              TableCell.of(context.length(t.at().y() - panels.blank().minY()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(context.say("sheets.laying-poster.tick-number")),
            TableColumn.number(context.say("sheets.laying-poster.tick-left")),
            TableColumn.number(context.say("sheets.laying-poster.tick-top"))),
        rows);
  }

  private static List<Block> numbered(List<String> steps) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      blocks.add(new Paragraph((i + 1) + "  " + steps.get(i)));
    }
    return blocks;
  }

  private boolean isLocal(Stencil s) {
    return plan.panels().filter(p -> p.isLocal(s)).isPresent();
  }

  /** All that is done with one stencil, from the film on the floor to the film off it. */
  private List<String> steps(Stencil s, boolean local) {
    SettingOutSteps steps = new SettingOutSteps(settingOut, context.units(), context.words());
    List<String> lines = new ArrayList<>(steps.panels(local ? s.layer() : 0));
    lines.add(local ? context.say("sheets.laying-poster.check-local") : steps.checks().get(0));
    lines.add(
        context.say(
            "sheets.laying-poster.press", context.length(inlay.inlay().spec().press().mm())));
    if (local) {
      lines.add(context.say("sheets.laying-poster.paper-local", context.area(plan.skirtArea(s))));
    } else {
      plan.masking().stream().flatMap(m -> m.paper().stream()).forEach(p -> lines.add(paper(p)));
    }
    plan.masking().stream()
        .flatMap(m -> m.upright().stream())
        .map(u -> context.say("sheets.laying-poster.upright", u.what()))
        .distinct()
        .forEach(lines::add);
    lines.add(context.say("sheets.laying-poster.mist"));
    lines.add(context.say("sheets.laying-poster.pull-up"));
    return lines;
  }

  private String paper(PaperRun p) {
    String width = context.length(p.width());
    String length = context.length(p.length());
    String off = context.length(Math.abs(p.from()));
    int beyond = Math.abs(p.from()) < AT_CORNER ? 0 : p.from() > 0 ? 1 : -1;
    int n = p.strips();
    return switch (p.side()) {
      case TOP -> context.say("sheets.laying-poster.paper-top", n, width, length, beyond, off);
      case BOTTOM ->
          context.say("sheets.laying-poster.paper-bottom", n, width, length, beyond, off);
      case LEFT -> context.say("sheets.laying-poster.paper-left", n, width, length, beyond, off);
      case RIGHT -> context.say("sheets.laying-poster.paper-right", n, width, length, beyond, off);
    };
  }

  private void draw(PlanComposer sketch) {
    sketch.addInks(StencilInks.flat(plan));
    List<Stencil> all = plan.stencils().stencils();
    sketch.addInks(StencilInks.blank(plan));
    sketch.addInks(StencilInks.seams(plan));
    sketch.addInks(StencilInks.witnesses(plan, all, sketch.view().scale()));
    sketch.addInks(StencilInks.ticks(plan, all));
    sketch.addInks(lines());
    sketch.keepOff(List.of(StencilInks.ring(blank)));
    sketch.keepOff(new Vec(cross.x(), blank.minY()), new Vec(cross.x(), blank.maxY()));
    sketch.keepOff(new Vec(blank.minX(), cross.y()), new Vec(blank.maxX(), cross.y()));
    settingOut.panels().stream()
        .filter(p -> p.lap() == PanelPlace.Lap.FIRST)
        .forEach(p -> first(sketch, p));
    Vec topLeft = new Vec(blank.minX(), blank.minY());
    Vec topRight = new Vec(blank.maxX(), blank.minY());
    sketch.placeDimension(topLeft, topRight, 1, 8, context.length(blank.width()));
    Vec bottomLeft = new Vec(blank.minX(), blank.maxY());
    sketch.placeDimension(bottomLeft, topLeft, 1, 8, context.length(blank.height()));
    letters(sketch);
    numbers(sketch);
    TextStyle style = context.type().label();
    double off = 8 * context.type().k() / sketch.view().scale();
    Vec up = new Vec(blank.maxX() + off, blank.middle().y());
    sketch.placeSign(Symbol.of(Symbol.Kind.NEEDLE, up, 8, Palette.INK));
    sketch.placeLabel(PlanLabel.of(up, context.say("sheets.laying-poster.top"), style).nearBy(9));
  }

  /** The snapped lines, past the blank so that one sees what the panels are laid to. */
  private List<Ink> lines() {
    double past = 0.04 * Math.max(blank.width(), blank.height());
    Line up =
        Line.of(new Vec(cross.x(), blank.minY() - past), new Vec(cross.x(), blank.maxY() + past));
    Line level =
        Line.of(new Vec(blank.minX() - past, cross.y()), new Vec(blank.maxX() + past, cross.y()));
    return List.of(
        Stroke.lines(SettingOutInks.snapped(), List.of(up, level)),
        Symbol.of(Symbol.Kind.POINT, cross, 5, Palette.BLUE));
  }

  /** From the cross to the edges of the panel that is laid first. */
  private void first(PlanComposer sketch, PanelPlace p) {
    Vec left = cross.minus(new Vec(p.left(), 0));
    Vec top = cross.minus(new Vec(0, p.above()));
    TextStyle style = context.type().dimension().in(Palette.BLUE);
    sketch.addInks(
        List.of(
            Stroke.lines(
                Pen.of(0.7, Palette.BLUE), List.of(Line.of(left, cross), Line.of(top, cross)))));
    sketch.placeLabel(
        PlanLabel.of(left.towards(cross, 0.5), context.length(p.left()), style)
            .nearBy(9)
            .on(Palette.WHITE));
    sketch.placeLabel(
        PlanLabel.of(top.towards(cross, 0.35), context.length(p.above()), style)
            .nearBy(9)
            .on(Palette.WHITE));
  }

  /** Of the ticks, as they stand on films and floor. */
  private void numbers(PlanComposer sketch) {
    TextStyle style = context.type().label().in(Palette.BLUE);
    for (RegistrationTick t : StencilInks.ticksOf(plan, plan.stencils().stencils())) {
      sketch.placeLabel(
          PlanLabel.of(t.at(), Integer.toString(t.number()), style).nearBy(4).on(Palette.WHITE));
    }
  }

  /** The panel's letter below it, with its place in the order of laying. */
  private void letters(PlanComposer sketch) {
    TextStyle style = context.type().title();
    double off = 6 * context.type().k() / sketch.view().scale();
    List<String> order = settingOut.panels().stream().map(PanelPlace::panel).toList();
    for (Panel panel : plan.panels().map(p -> p.all()).orElse(List.of())) {
      boolean lowest = panel.box().maxY() >= blank.maxY() - 1;
      Vec m = panel.box().middle();
      Vec at = lowest ? new Vec(m.x(), blank.maxY() + off) : m;
      String words =
          context.say("sheets.laying-poster.panel", panel.name(), order.indexOf(panel.name()) + 1);
      sketch.placeLabel(PlanLabel.of(at, words, style).on(Palette.WHITE).nearBy(14));
    }
  }
}
