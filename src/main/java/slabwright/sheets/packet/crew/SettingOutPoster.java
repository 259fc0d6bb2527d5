package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.FillStyle;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.TextStyle;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.figures.SettingOutInks;
import slabwright.figures.StencilInks;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.settingout.SettingOutOrigin;
import slabwright.inlay.settingout.SnappedLines;
import slabwright.inlay.settingout.SquareCheck;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.placement.SettingOutSteps;
import slabwright.sheets.plan.OutlineLabels;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.sheets.plan.PlanSheet;
import slabwright.sheets.plan.Poster;
import slabwright.work.AreaResult;

/** The setting out of one graphic: the floor from the origin to the graphic, as large as fits. */
final class SettingOutPoster {
  /** The graphic pale, so that lengths can be read on it. */
  private static final FillStyle QUIET = FillStyle.plain(Palette.FIELD, Palette.RULE);

  private final FloorTakeoff takeoff;
  private final PlacedInlay inlay;
  private final SettingOut settingOut;
  private final SheetContext context;
  private final Affine toSite;
  private final Ring blank;

  SettingOutPoster(
      AreaResult area, PlacedInlay inlay, SettingOut settingOut, SheetContext context) {
    this.takeoff = area.takeoff();
    this.inlay = inlay;
    this.settingOut = settingOut;
    this.context = context;
    this.toSite = inlay.plan().toSite().orElse(Affine.IDENTITY);
    this.blank = StencilInks.ring(inlay.plan().stencils().blank()).map(toSite);
  }

  Poster poster() {
    return new PlanSheet(
            context,
            context.say("sheets.setting-out-poster.title", inlay.inlay().name()),
            context.say("sheets.setting-out-poster.subtitle"),
            takeoff.area().name(),
            CoordinateFrame.SITE,
            model())
        .poster(this::draw, blocks(), List.of());
  }

  /** All that is measured and where it leads; the whole floor where nothing can be. */
  private Bounds model() {
    return settingOut.lines().map(this::measured).orElse(takeoff.gross().bounds());
  }

  private Bounds measured(SnappedLines l) {
    return blank
        .bounds()
        .including(square(l.square()).bounds())
        .including(square(l.crossSquare()).bounds())
        .including(l.origin().at())
        .including(l.station());
  }

  private static Ring square(SquareCheck s) {
    return new Ring(List.of(s.corner(), s.onLine(), s.onSquare()));
  }

  private List<Block> blocks() {
    SettingOutSteps steps = new SettingOutSteps(settingOut, context.units(), context.words());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(context.say("sheets.setting-out-poster.steps")));
    List<String> lines = new ArrayList<>(steps.lines());
    lines.addAll(inlay.plan().panels().map(steps::beforeTheFirstFilm).orElseGet(steps::checks));
    for (int i = 0; i < lines.size(); i++) {
      blocks.add(new Paragraph((i + 1) + "  " + lines.get(i)));
    }
    return blocks;
  }

  private void draw(PlanComposer sketch) {
    for (Obstacle s : takeoff.standing()) {
      sketch.addInks(MarkStyles.of(s.mark().kind().type()).on(s.region()));
    }
    sketch.addInks(QUIET.on(inlay.plan().openings().map(toSite)));
    sketch.addInks(List.<Ink>of(Stroke.rings(Pen.of(0.4, Palette.INK), List.of(blank))));
    sketch.addInks(AreaInks.outline(takeoff.area()));
    settingOut.lines().ifPresent(l -> sketch.addInks(inks(l)));
    new OutlineLabels(takeoff.area(), context, sketch).avoidWalls();
    takeoff.standing().forEach(s -> sketch.keepOffInside(s.region()));
    sketch.keepOff(List.of(blank));
    settingOut.lines().ifPresent(l -> lengths(sketch, l));
    new OutlineLabels(takeoff.area(), context, sketch).labelDoorways().labelWalls();
  }

  /** The right angle at the mark too where the middle lies on the first line. */
  private static List<Ink> inks(SnappedLines l) {
    List<Ink> inks = new ArrayList<>(SettingOutInks.of(l));
    if (l.aside() == 0) {
      inks.add(SettingOutInks.square(l.crossSquare()));
    }
    return inks;
  }

  /** What the tape says, beside what it is said of. */
  private void lengths(PlanComposer sketch, SnappedLines l) {
    if (l.origin() instanceof SettingOutOrigin.DoorMiddle d) {
      Vec along = d.into().left().times(d.halfWidth());
      sketch.placeDimension(d.at().plus(along), d.at(), outside(d.into(), along), 8, length(d));
      sketch.placeDimension(d.at(), d.at().minus(along), outside(d.into(), along), 8, length(d));
    } else if (l.origin() instanceof SettingOutOrigin.WallPoint p) {
      label(sketch, p.from().at(), p.at(), p.distance());
    }
    label(sketch, l.origin().at(), l.station(), l.along());
    if (l.aside() > 0) {
      label(sketch, l.station(), l.cross(), l.aside());
    }
    legs(sketch, l.crossSquare());
    legs(sketch, l.square());
  }

  private String length(SettingOutOrigin.DoorMiddle d) {
    return context.length(d.halfWidth());
  }

  /** On which side of a run the wall's outside is. */
  private static double outside(Vec into, Vec along) {
    return along.times(-1).left().dot(into) > 0 ? -1 : 1;
  }

  private void legs(PlanComposer sketch, SquareCheck s) {
    label(sketch, s.corner(), s.onLine(), s.lineLeg() * s.unit());
    label(sketch, s.corner(), s.onSquare(), s.squareLeg() * s.unit());
    label(sketch, s.onLine(), s.onSquare(), s.across() * s.unit());
  }

  private void label(PlanComposer sketch, Vec from, Vec to, double mm) {
    TextStyle style = context.type().dimension().in(Palette.BLUE);
    Vec middle = from.towards(to, 0.5);
    sketch.placeLabel(PlanLabel.of(middle, context.length(mm), style).nearBy(8).on(Palette.WHITE));
  }
}
