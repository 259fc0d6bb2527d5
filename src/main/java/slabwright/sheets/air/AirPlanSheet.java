package slabwright.sheets.air;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.TextStyle;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.OutlineLabels;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.sheets.plan.PlanSheet;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.units.Message;
import slabwright.work.AirPlan;
import slabwright.work.air.AirPath;
import slabwright.work.air.AirScreening;

/**
 * What has to be seen to around solvent, on the plan: ignition sources, detectors, power, where air
 * comes in and is drawn out; beside it the check lists. Part of sheet 7.
 */
public final class AirPlanSheet {
  private static final Pen WAY = Pen.of(0.8, Palette.BLUE).dashed(3, 1.4);
  private static final Set<MarkType> SHOWN =
      EnumSet.of(
          MarkType.IGNITION_SOURCE, MarkType.DETECTOR, MarkType.POWER_POINT, MarkType.AIR_OUTLET);

  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final AirPlan air;
  private final SheetContext context;

  public AirPlanSheet(FloorTakeoff takeoff, AirPlan air, SheetContext context) {
    this.takeoff = takeoff;
    this.area = takeoff.area();
    this.air = air;
    this.context = context;
  }

  public List<PageDraft> drafts() {
    return new PlanSheet(
            context,
            context.say("sheets.air-plan-sheet.title"),
            context.say("sheets.air-plan-sheet.subtitle"),
            area.name(),
            CoordinateFrame.SITE,
            takeoff.gross().bounds())
        .drafts(this::draw, blocks());
  }

  private List<Mark> shown() {
    return area.marks().stream()
        .filter(m -> SHOWN.contains(m.kind().type()) && m.form() instanceof Form.Place)
        .toList();
  }

  private void draw(PlanComposer sketch) {
    for (Obstacle s : takeoff.standing()) {
      sketch.addInks(MarkStyles.of(s.mark().kind().type()).on(s.region()));
    }
    sketch.addInks(AreaInks.outline(area));
    air.path().ifPresent(p -> way(sketch, p));
    for (Mark m : shown()) {
      sketch.placeSign(AreaInks.sign(m, m.form().spots().get(0).vec()));
    }
    new OutlineLabels(area, context, sketch).avoidWalls().labelDoorways();
    TextStyle style = context.type().label();
    for (Mark m : shown()) {
      sketch.placeLabel(PlanLabel.of(m.form().spots().get(0).vec(), m.name(), style).nearBy(5));
    }
  }

  /** From where air comes in to where it is drawn out, with two barbs at the end. */
  private static void way(PlanComposer sketch, AirPath p) {
    Vec from = p.inlet().at();
    Vec to = p.outlet().at();
    Vec back = from.minus(to).unit().times(Math.min(600, p.length() / 4));
    Vec side = new Vec(-back.y(), back.x()).times(0.4);
    sketch.addInks(List.of(Stroke.line(WAY, from, to)));
    Pen barb = Pen.of(0.8, Palette.BLUE);
    sketch.addInks(
        List.of(
            Stroke.line(barb, to.plus(back).plus(side), to),
            Stroke.line(barb, to.plus(back).minus(side), to)));
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    CautionSheet.checklist(
        blocks, context.say("sheets.air-plan-sheet.before"), said(air.ignition().before()));
    CautionSheet.checklist(
        blocks, context.say("sheets.air-plan-sheet.during"), said(air.ignition().during()));
    CautionSheet.checklist(
        blocks, context.say("sheets.air-plan-sheet.after"), said(air.ignition().after()));
    blocks.add(new Heading(context.say("sheets.air-plan-sheet.moving-air")));
    air.path()
        .ifPresent(
            p ->
                blocks.add(
                    new Paragraph(
                        context.say(
                            "sheets.air-plan-sheet.path", p.inlet().name(), p.outlet().name()))));
    air.advice().forEach(a -> blocks.add(new Paragraph(context.say(a))));
    blocks.add(new Heading(context.say("sheets.air-plan-sheet.key")));
    blocks.add(key());
    blocks.add(new Paragraph(context.say(AirScreening.NOTICE)));
    return blocks;
  }

  private List<String> said(List<Message> messages) {
    return messages.stream().map(context::say).toList();
  }

  private KeyBlock key() {
    List<KeyBlock.Entry> entries = new ArrayList<>();
    air.path()
        .ifPresent(
            p ->
                entries.add(
                    KeyBlock.line(WAY, context.say("sheets.air-plan-sheet.way-of-the-air"))));
    for (MarkType type : SHOWN) {
      if (shown().stream().anyMatch(m -> m.kind().type() == type)) {
        entries.add(
            KeyBlock.sign(
                MarkStyles.sign(type), MarkStyles.colour(type), context.say(type.label())));
      }
    }
    return KeyBlock.of(entries);
  }
}
