package slabwright.sheets.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.figures.AreaInks;
import slabwright.figures.DyeStyle;
import slabwright.figures.MarkStyles;
import slabwright.figures.SettingOutInks;
import slabwright.figures.StencilInks;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.settingout.MarkUnderInlay;
import slabwright.inlay.settingout.ReadingDirection;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.LabelCandidates;
import slabwright.site.Doorway;
import slabwright.site.OutlineShape;

/**
 * What stands beside the plan of an inlay's place: how it reads, tapes, checks and the key.
 *
 * @param blank on the site
 */
public record PlacementColumn(
    FloorTakeoff takeoff,
    PlacedInlay placed,
    Optional<SettingOut> settingOut,
    Ring blank,
    SheetContext context) {
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(context.say("sheets.placement-column.where")));
    steps()
        .map(SettingOutSteps::origin)
        .filter(o -> !o.isEmpty())
        .ifPresent(o -> blocks.add(new Paragraph(o)));
    readings()
        .forEach(
            r ->
                blocks.add(
                    new Paragraph((r.upright() ? "✓ " : "! ") + context.words().say(r.said()))));
    underneath(blocks);
    blocks.add(new Gap(2));
    blocks.add(new Heading(context.say("sheets.placement-column.set-out")));
    List<String> steps = steps().map(SettingOutSteps::all).orElse(List.of());
    for (int i = 0; i < steps.size(); i++) {
      blocks.add(new Paragraph((i + 1) + "  " + steps.get(i)));
    }
    blocks.add(new Gap(2));
    blocks.add(new Heading(context.say("sheets.placement-column.key")));
    blocks.add(key(placed, context, true));
    return blocks;
  }

  private Optional<SettingOutSteps> steps() {
    return settingOut.map(s -> new SettingOutSteps(s, context.units(), context.words()));
  }

  private List<ReadingDirection> readings() {
    OutlineShape shape = OutlineShape.of(takeoff.area().outline(), AreaInks.TOLERANCE);
    List<ReadingDirection> checks = new ArrayList<>();
    for (Doorway d : takeoff.area().doorways()) {
      if (d.wayIn()) {
        List<Vec> door = LabelCandidates.chord(shape.doorway(d)).points();
        Vec middle = door.get(0).towards(door.get(1), 0.5);
        checks.add(
            ReadingDirection.of(
                d.name(), middle, placed.inlay().middle().vec(), placed.inlay().turn()));
      }
    }
    return checks;
  }

  private void underneath(List<Block> blocks) {
    Affine toSite = placed.plan().toSite().orElse(Affine.IDENTITY);
    Region openings = placed.plan().openings().map(toSite);
    for (MarkUnderInlay u :
        MarkUnderInlay.of(takeoff.area().marks(), Region.of(blank), openings, AreaInks.TOLERANCE)) {
      String name = u.mark().name();
      blocks.add(
          new Paragraph(
              u.stands()
                  ? context.say("sheets.placement-column.stands", name)
                  : context.say("sheets.placement-column.lies-under", name)));
    }
  }

  /** What the lines and colours of the plan mean that the client signs: no film, no paper. */
  public static Block approvalKey(PlacedInlay placed, SheetContext context) {
    return key(placed, context, false);
  }

  private static Block key(PlacedInlay placed, SheetContext context, boolean film) {
    List<KeyBlock.Entry> entries = new ArrayList<>();
    for (Stencil s : placed.plan().stencils().stencils()) {
      entries.add(
          KeyBlock.look(
              DyeStyle.flat(s.colour()),
              context.say(
                  "sheets.placement-column.dye", s.layer(), placed.colourName(s.colour()))));
    }
    entries.add(
        KeyBlock.line(Pen.of(0.4, Palette.INK), context.say("sheets.placement-column.blank")));
    if (film) {
      entries.add(
          KeyBlock.line(StencilInks.seamPen(), context.say("sheets.placement-column.seam")));
      entries.add(
          KeyBlock.line(StencilInks.skirtPen(), context.say("sheets.placement-column.skirt")));
    }
    entries.add(
        KeyBlock.line(SettingOutInks.measured(), context.say("sheets.placement-column.measured")));
    entries.add(
        KeyBlock.line(SettingOutInks.snapped(), context.say("sheets.placement-column.snapped")));
    entries.add(KeyBlock.line(MarkStyles.WAY_IN, context.say("sheets.placement-column.way-in")));
    return KeyBlock.of(entries);
  }
}
