package slabwright.sheets;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slabwright.drawing.Frame;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.TextStyle;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Standing;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.work.AirWork;
import slabwright.work.air.AirPath;
import slabwright.work.air.AirScreening;

/**
 * What has to be seen to around solvent, on the plan: ignition sources, detectors, power, where air
 * comes in and is drawn out; beside it the check lists. Part of sheet 7.
 */
final class AirPlanSheet {
  private static final Pen WAY = Pen.of(0.8, Palette.BLUE).dashed(3, 1.4);
  private static final Set<MarkType> SHOWN =
      EnumSet.of(
          MarkType.IGNITION_SOURCE, MarkType.DETECTOR, MarkType.POWER_POINT, MarkType.AIR_OUTLET);

  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final AirWork air;
  private final SheetContext context;

  AirPlanSheet(FloorTakeoff takeoff, AirWork air, SheetContext context) {
    this.takeoff = takeoff;
    this.area = takeoff.area();
    this.air = air;
    this.context = context;
  }

  List<Draft> drafts() {
    return new PlanSheet(
            context,
            "7",
            "Ignition and moving air",
            "What is made safe before the first can is opened, and which way the air sweeps",
            area.name(),
            Frame.SITE,
            takeoff.gross().bounds())
        .drafts(this::draw, blocks());
  }

  private List<Mark> shown() {
    return area.marks().stream()
        .filter(m -> SHOWN.contains(m.kind().type()) && m.form() instanceof Form.Place)
        .toList();
  }

  private void draw(Sketch sketch) {
    for (Standing s : takeoff.standing()) {
      sketch.ink(MarkLooks.of(s.mark().kind().type()).on(s.region()));
    }
    sketch.ink(AreaInks.outline(area));
    air.path().ifPresent(p -> way(sketch, p));
    for (Mark m : shown()) {
      sketch.sign(AreaInks.sign(m, m.form().spots().get(0).vec()));
    }
    new OutlineWords(area, context.units(), sketch).walls().doorways();
    TextStyle style = context.type().strong().sized(2.9 * context.type().k());
    for (Mark m : shown()) {
      sketch.words(PlanWords.of(m.form().spots().get(0).vec(), m.name(), style).nearBy(5));
    }
  }

  /** From where air comes in to where it is drawn out, with two barbs at the end. */
  private static void way(Sketch sketch, AirPath p) {
    Vec from = p.inlet().at();
    Vec to = p.outlet().at();
    Vec back = from.minus(to).unit().times(Math.min(600, p.length() / 4));
    Vec side = new Vec(-back.y(), back.x()).times(0.4);
    sketch.ink(List.of(Stroke.line(WAY, from, to)));
    Pen barb = Pen.of(0.8, Palette.BLUE);
    sketch.ink(
        List.of(
            Stroke.line(barb, to.plus(back).plus(side), to),
            Stroke.line(barb, to.plus(back).minus(side), to)));
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    CautionSheet.checklist(blocks, "Before the first can is opened", air.ignition().before());
    CautionSheet.checklist(blocks, "When the air is clear", air.ignition().after());
    blocks.add(new Heading("Moving air"));
    air.path()
        .ifPresent(
            p ->
                blocks.add(
                    new Prose(
                        "In by " + p.inlet().name() + ", out by " + p.outlet().name() + ".")));
    air.advice().forEach(a -> blocks.add(new Prose(a)));
    blocks.add(new Heading("Key"));
    blocks.add(key());
    blocks.add(new Prose(AirScreening.NOTICE));
    return blocks;
  }

  private Key key() {
    List<Key.Entry> entries = new ArrayList<>();
    air.path().ifPresent(p -> entries.add(Key.line(WAY, "the way of the air, inlet to outlet")));
    for (MarkType type : SHOWN) {
      if (shown().stream().anyMatch(m -> m.kind().type() == type)) {
        entries.add(Key.sign(MarkLooks.sign(type), MarkLooks.colour(type), type.word()));
      }
    }
    return Key.of(entries);
  }
}
