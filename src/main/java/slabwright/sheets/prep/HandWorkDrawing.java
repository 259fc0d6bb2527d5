package slabwright.sheets.prep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slabwright.drawing.FillStyle;
import slabwright.drawing.Ink;
import slabwright.drawing.InkIndex;
import slabwright.drawing.Palette;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextStyle;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.HandWorkKind;
import slabwright.floor.HandWorkPiece;
import slabwright.floor.MachineShare;
import slabwright.floor.Obstacle;
import slabwright.floor.TrenchWork;
import slabwright.floor.reach.MachinePassage;
import slabwright.floor.reach.PocketAccess;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.OutlineLabels;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.MarkType;

/** The drawing of sheet 2: hatched is hand work; where several machines work, who does what. */
final class HandWorkDrawing {
  private static final double SIGN = 3.2;

  private final ReachAnalysis ways;
  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final SheetContext context;

  /** Of what stands, in its order: sought once, though a plan in tiles is drawn many times. */
  private final List<Vec> middles;

  private final InkIndex inks;

  HandWorkDrawing(ReachAnalysis ways, SheetContext context) {
    this.ways = ways;
    this.takeoff = ways.takeoff();
    this.area = takeoff.area();
    this.context = context;
    middles = takeoff.standing().stream().map(s -> s.region().labelPoint()).toList();
    inks = new InkIndex(floor());
  }

  void draw(PlanComposer sketch) {
    sketch.addInks(inks);
    for (int i = 0; i < middles.size(); i++) {
      name(sketch, takeoff.standing().get(i), middles.get(i));
    }
    takeoff.standing().forEach(s -> sketch.keepOffInside(s.region()));
    new OutlineLabels(area, context, sketch)
        .avoidWalls()
        .labelDoorways()
        .placeDimensions()
        .labelWalls();
    for (HandWorkPiece p : takeoff.asFound().pieces(HandWorkKind.CORNER)) {
      sketch.placeSign(corner(p.place()));
    }
    ways.takeoff().tally().ends().forEach(e -> sketch.placeSign(end(e)));
  }

  /** On the thing itself, where its name has room there. */
  private void name(PlanComposer sketch, Obstacle s, Vec at) {
    if (sketch.shows(s.region().bounds())) {
      sketch.keepOff(s.region().rings());
    }
    TextStyle style = context.type().label();
    sketch.placeLabel(PlanLabel.of(at, s.mark().name(), style).withReach(0.5).nearBy(3));
  }

  /**
   * The machines' shares, hand work, trenches, what stands and the walls, in the order they are
   * laid.
   */
  private List<Ink> floor() {
    List<Ink> laid = new ArrayList<>();
    List<MachineShare> shares = ways.takeoff().asFound().shares();
    for (int i = 1; i < shares.size(); i++) {
      laid.addAll(MarkStyles.share(i).on(shares.get(i).region()));
    }
    laid.addAll(MarkStyles.HAND.on(takeoff.asFound().hand()));
    for (HandWorkPiece p : takeoff.asFound().pieces(HandWorkKind.TRENCH)) {
      laid.addAll(MarkStyles.of(MarkType.TRENCH).on(p.region()));
    }
    for (Obstacle s : takeoff.standing()) {
      laid.addAll(MarkStyles.of(s.mark().kind().type()).on(s.region()));
    }
    laid.addAll(AreaInks.outline(area));
    return laid;
  }

  private Symbol corner(Vec at) {
    return Symbol.of(Symbol.Kind.LOOK, at, SIGN * context.type().k(), Palette.AMBER);
  }

  private Symbol end(Vec at) {
    return Symbol.of(Symbol.Kind.LOOK, at, SIGN * context.type().k(), Palette.PURPLE);
  }

  /** The narrowest pass to each pocket, with its width. */
  void gaps(PlanComposer sketch) {
    TextStyle style = context.type().label();
    List<Vec> done = new ArrayList<>();
    for (PocketAccess way : ways.pockets()) {
      if (way.pass().isPresent() && done.stream().noneMatch(way.pass().get().where()::equals)) {
        Vec at = way.pass().get().where();
        done.add(at);
        sketch.addInks(List.of(Stroke.lines(MarkStyles.GAP, List.of(way.pass().get().across()))));
        String words =
            context.say("sheets.hand-work-drawing.gap", context.length(way.pass().get().width()));
        sketch.placeLabel(PlanLabel.of(at, words, style).nearBy(4).on(Palette.WHITE));
      }
    }
  }

  /** Where a machine is stuck for its length. */
  void bends(PlanComposer sketch) {
    double k = context.type().k();
    TextStyle style = context.type().label().in(Palette.RED);
    for (MachinePassage p : ways.passages()) {
      if (p.kind() == MachinePassage.Kind.BEND) {
        sketch.placeSign(Symbol.of(Symbol.Kind.LOOK, p.where(), SIGN * k, Palette.RED));
        String words =
            context.say(
                "sheets.hand-work-drawing.stuck", p.machine().name(), context.length(-p.spare()));
        sketch.placeLabel(PlanLabel.of(p.where(), words, style).nearBy(4).on(Palette.WHITE));
      }
    }
  }

  /** What is due on the trenches, as the list says it of each: one fill for all of them. */
  private String due() {
    return TrenchWork.of(takeoff).stream()
        .filter(t -> t.kind().stopsMachine())
        .map(t -> context.say(t.due()))
        .distinct()
        .collect(Collectors.joining(" / "));
  }

  Block key() {
    List<KeyBlock.Entry> entries = new ArrayList<>();
    entries.add(KeyBlock.look(MarkStyles.HAND, hand()));
    if (!takeoff.asFound().pieces(HandWorkKind.TRENCH).isEmpty()) {
      entries.add(
          KeyBlock.look(
              MarkStyles.of(MarkType.TRENCH),
              context.say("sheets.hand-work-drawing.trench-key", due())));
    }
    List<MachineShare> shares = ways.takeoff().asFound().shares();
    for (int i = 0; i < shares.size(); i++) {
      String words =
          shares.size() == 1
              ? context.say("sheets.hand-work-drawing.machine-floor")
              : shares.get(i).machine().name();
      entries.add(KeyBlock.look(i == 0 ? MarkStyles.MACHINE : MarkStyles.share(i), words));
    }
    Map<FillStyle, List<String>> looks = new LinkedHashMap<>();
    takeoff.standing().stream()
        .map(s -> s.mark().kind().type())
        .distinct()
        .forEach(
            t ->
                looks
                    .computeIfAbsent(MarkStyles.of(t), k -> new ArrayList<>())
                    .add(context.say(t.label())));
    looks.forEach(
        (look, kinds) ->
            entries.add(
                KeyBlock.look(
                    look,
                    context.say(
                        "sheets.hand-work-drawing.stands",
                        String.join(", ", kinds),
                        kinds.size()))));
    signs(entries);
    return KeyBlock.of(entries);
  }

  private String hand() {
    double strip = area.machines().stream().mapToDouble(Machine::strip).min().orElse(0);
    return strip > 0
        ? context.say("sheets.hand-work-drawing.edge-strip-by-hand", context.length(strip))
        : context.say("sheets.hand-work-drawing.by-hand");
  }

  private void signs(List<KeyBlock.Entry> entries) {
    if (!takeoff.asFound().pieces(HandWorkKind.CORNER).isEmpty()) {
      entries.add(
          KeyBlock.sign(
              Symbol.Kind.LOOK, Palette.AMBER, context.say("sheets.hand-work-drawing.corner")));
    }
    if (!ways.takeoff().tally().ends().isEmpty()) {
      entries.add(
          KeyBlock.sign(
              Symbol.Kind.LOOK, Palette.PURPLE, context.say("sheets.hand-work-drawing.end")));
    }
    if (ways.passages().stream().anyMatch(p -> p.kind() == MachinePassage.Kind.BEND)) {
      entries.add(
          KeyBlock.sign(
              Symbol.Kind.LOOK, Palette.RED, context.say("sheets.hand-work-drawing.bend")));
    }
    if (ways.pockets().stream().anyMatch(w -> w.pass().isPresent())) {
      entries.add(KeyBlock.line(MarkStyles.GAP, context.say("sheets.hand-work-drawing.gap-key")));
    }
  }
}
