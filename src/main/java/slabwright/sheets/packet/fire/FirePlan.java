package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slabwright.drawing.FillStyle;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.TextStyle;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.DenseBlock;
import slabwright.sheets.page.KeptBlock;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.PairBlock;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;
import slabwright.sheets.plan.LabelCandidates;
import slabwright.sheets.plan.OutlineLabels;
import slabwright.sheets.plan.OverviewBlock;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.OutlineShape;
import slabwright.units.Recent;
import slabwright.work.AirPlan;
import slabwright.work.SolventPlaces;
import slabwright.work.air.AirPath;

/**
 * A floor with solvent on it as an inspector looks at it: where the vapour is, the ways out, what
 * can light it, how the air sweeps and what it misses, where the meter is held.
 */
final class FirePlan {
  private static final Set<MarkType> SHOWN =
      EnumSet.of(
          MarkType.IGNITION_SOURCE, MarkType.DETECTOR, MarkType.POWER_POINT, MarkType.AIR_OUTLET);

  private static final Pen WAY = Pen.of(0.8, Palette.BLUE).dashed(3, 1.4);

  /** Vapour lies in every corner: the whole floor is tinted. */
  private static final FillStyle VAPOUR =
      new FillStyle(Palette.tint(Palette.AMBER), HatchPattern.NONE, Palette.AMBER, 2.2, 0);

  private static final FillStyle MISSED =
      new FillStyle(Palette.tint(Palette.RED), HatchPattern.RISING, Palette.RED, 2.6, 0);

  /** Sizes of drawings kept. */
  private static final int ROOM = 64;

  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final SheetContext context;
  private final SolventPlaces places;
  private final Optional<AirPath> path;
  private final Region missed;
  private final List<Vec> meterPoints;

  /** As the page that fits is found by trying many, and the same plan stands on most of them. */
  private final Recent<Tried, List<Slice>> drawn = new Recent<>(ROOM);

  /** All that a drawing of one floor depends on. */
  private record Tried(double height, TypeSizes type, double width) {}

  FirePlan(FloorTakeoff takeoff, AirPlan air, SheetContext context) {
    this.takeoff = takeoff;
    this.area = takeoff.area();
    this.context = context;
    this.places = SolventPlaces.of(area, takeoff.net(), air, context.units());
    this.path = places.path();
    this.missed = places.missed();
    this.meterPoints = places.meterPoints();
  }

  Block block(double height) {
    OverviewBlock block = new OverviewBlock(takeoff.gross().bounds(), height, 10, this::draw);
    return (type, width) ->
        drawn.get(new Tried(height, type, width), () -> block.slices(type, width));
  }

  private String areaName() {
    return area.name();
  }

  /** From side to side, mm. */
  private double width() {
    return takeoff.gross().bounds().width();
  }

  private double size() {
    return takeoff.gross().area();
  }

  private void draw(PlanComposer sketch) {
    sketch.addInks(VAPOUR.on(takeoff.net()));
    sketch.addInks(MISSED.on(missed));
    for (Obstacle o : takeoff.standing()) {
      sketch.addInks(FillStyle.plain(Palette.GREY, Palette.SOFT).on(o.region()));
    }
    sketch.addInks(AreaInks.outline(area));
    OutlineShape shape = OutlineShape.of(area.outline(), AreaInks.TOLERANCE);
    sketch.keepOff(List.of(shape.ring()));
    path.ifPresent(p -> way(sketch, p));
    for (Mark m : shown()) {
      sketch.placeSign(AreaInks.sign(m, place(m)));
    }
    for (Doorway d : area.doorways()) {
      exit(sketch, d, shape);
    }
    int n = 0;
    for (Vec at : meterPoints) {
      n++;
      sketch.placeNumber(at, List.of(sketch.view().onPaper(at)), "M" + n, 6.1);
    }
    for (Mark m : shown()) {
      TextStyle style = context.type().label().in(MarkStyles.colour(m.kind().type()));
      sketch.placeLabel(PlanLabel.of(place(m), m.name(), style).nearBy(7).on(Palette.WHITE));
    }
    new OutlineLabels(area, context, sketch).labelWalls();
  }

  /**
   * A way out with its name, or a door that stays shut, and the extinguisher that stands beside it,
   * inside. A way out is never left without a word: where its name has no room, it says that it is
   * one.
   */
  private void exit(PlanComposer sketch, Doorway d, OutlineShape shape) {
    List<Vec> ends = LabelCandidates.chord(shape.doorway(d)).points();
    Vec along = ends.get(1).minus(ends.get(0)).unit();
    Vec in = shape.floorOnLeft() ? along.left() : along.left().times(-1);
    Vec middle = ends.get(0).towards(ends.get(1), 0.5);
    double mm = 1 / sketch.view().scale();
    Vec beside = ends.get(0).plus(in.times(4.5 * mm)).minus(along.times(3 * mm));
    Vec out = sketch.view().onPaper(middle.plus(in.times(-5 * mm)));
    TextStyle style = context.type().label().in(Palette.BLUE);
    for (String words : exitWords(d)) {
      PlanLabel label = PlanLabel.of(middle, words, style).wishing(List.of(out)).nearBy(9);
      if (sketch.placeLabel(label.on(Palette.WHITE))) {
        break;
      }
    }
    if (!places.isShut(d)) {
      // Not E: a wall may have that letter.
      String sign = context.say("sheets.fire-plan.extinguisher-sign");
      sketch.placeNumber(beside, List.of(sketch.view().onPaper(beside)), sign, 6.1);
    }
  }

  /** The longest first. */
  private List<String> exitWords(Doorway d) {
    if (places.isShut(d)) {
      return List.of(context.say("sheets.fire-plan.shut", d.name()));
    }
    String width = context.length(d.width().mm());
    return List.of(
        context.say("sheets.fire-plan.way-out", d.name(), width),
        context.say("sheets.fire-plan.way-out-width", width),
        context.say("sheets.fire-plan.way-out-alone"));
  }

  private static void way(PlanComposer sketch, AirPath p) {
    Vec from = p.inlet().at();
    Vec to = p.outlet().at();
    Vec back = from.minus(to).unit().times(3.5 / sketch.view().scale());
    Vec side = new Vec(-back.y(), back.x()).times(0.4);
    Pen barb = Pen.of(0.8, Palette.BLUE);
    sketch.addInks(
        List.of(
            Stroke.line(WAY, from, to),
            Stroke.line(barb, to.plus(back).plus(side), to),
            Stroke.line(barb, to.plus(back).minus(side), to)));
    sketch.keepOff(from, to);
  }

  private List<Mark> shown() {
    return area.marks().stream()
        .filter(m -> SHOWN.contains(m.kind().type()) && m.form() instanceof Form.Place)
        .toList();
  }

  private static Vec place(Mark m) {
    return m.form().spots().get(0).vec();
  }

  /**
   * All floors one under the other, or two side by side, with the key to their signs.
   *
   * @param high of the largest, mm; the others are no larger on paper than their floors are
   */
  static List<Block> blocks(List<FirePlan> plans, double high, boolean dense) {
    List<Block> blocks = new ArrayList<>();
    List<Block> floors = new ArrayList<>();
    for (FirePlan plan : plans) {
      double share = Math.max(0.5, Math.sqrt(plan.size() / plans.get(0).size()));
      List<Block> one = new ArrayList<>();
      if (plans.size() > 1) {
        one.add(new Paragraph(plan.areaName()));
      }
      one.add(plan.block(dense ? high : high * share));
      plan.noPath().ifPresent(t -> one.add(new Paragraph(t)));
      floors.add(new KeptBlock(one));
    }
    if (dense && floors.size() == 2) {
      double share = plans.get(0).width() / (plans.get(0).width() + plans.get(1).width());
      blocks.add(
          new PairBlock(Math.min(0.7, share), List.of(floors.get(0)), List.of(floors.get(1))));
    } else {
      blocks.addAll(floors);
    }
    Block key = key(plans, dense ? 3 : 2);
    blocks.add(dense ? new DenseBlock(key) : key);
    return blocks;
  }

  /** How many places the meter is held at. */
  int points() {
    return meterPoints.size();
  }

  /** What the signs of all plans mean, each once, in two columns or three of about one length. */
  private static Block key(List<FirePlan> plans, int columns) {
    Map<String, KeyBlock.Entry> all = new LinkedHashMap<>();
    for (FirePlan p : plans) {
      p.entries(plans.size() > 1).forEach(e -> all.putIfAbsent(e.words(), e));
    }
    return columns(List.copyOf(all.values()), columns);
  }

  private static Block columns(List<KeyBlock.Entry> entries, int columns) {
    if (columns == 1) {
      return KeyBlock.of(entries);
    }
    int first = (entries.size() + columns - 1) / columns;
    return new PairBlock(
        1.0 / columns,
        List.of(KeyBlock.of(entries.subList(0, first))),
        List.of(columns(entries.subList(first, entries.size()), columns - 1)));
  }

  private List<KeyBlock.Entry> entries(boolean several) {
    List<KeyBlock.Entry> entries = new ArrayList<>();
    entries.add(KeyBlock.look(VAPOUR, context.say("sheets.fire-plan.vapour")));
    if (!missed.isEmpty()) {
      entries.add(
          KeyBlock.look(
              MISSED,
              context.say(
                  "sheets.fire-plan.missed",
                  context.length(SolventPlaces.sweep(context.units())))));
    }
    path.ifPresent(p -> entries.add(KeyBlock.line(WAY, sweepWords(p, several))));
    entries.add(ringed("M1", context.say("sheets.fire-plan.meter")));
    entries.add(
        ringed(
            context.say("sheets.fire-plan.extinguisher-sign"),
            context.say("sheets.fire-plan.extinguisher")));
    for (MarkType type : SHOWN) {
      if (shown().stream().anyMatch(m -> m.kind().type() == type)) {
        entries.add(KeyBlock.sign(MarkStyles.sign(type), MarkStyles.colour(type), meaning(type)));
      }
    }
    return entries;
  }

  /** As large as on the plan, where words have a least size. */
  private KeyBlock.Entry ringed(String sign, String words) {
    double size = context.type().ring(sign, 5.4) / context.type().k();
    return KeyBlock.ringed(sign, words, size);
  }

  private String sweepWords(AirPath p, boolean several) {
    return several
        ? context.say("sheets.fire-plan.paths")
        : context.say("sheets.fire-plan.path", p.inlet().name(), p.outlet().name());
  }

  private String meaning(MarkType type) {
    return switch (type) {
      case IGNITION_SOURCE -> context.say("sheets.fire-plan.ignition");
      case DETECTOR -> context.say("sheets.fire-plan.detector");
      case POWER_POINT -> context.say("sheets.fire-plan.power");
      default -> context.say("sheets.fire-plan.outlet");
    };
  }

  /** What is said where no two openings make a draught. */
  private Optional<String> noPath() {
    return path.isPresent() || places.isOutdoors()
        ? Optional.empty()
        : Optional.of(context.say("sheets.fire-plan.no-path"));
  }
}
