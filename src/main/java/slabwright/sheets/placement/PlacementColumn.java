package slabwright.sheets.placement;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.figures.AreaInks;
import slabwright.figures.DyeStyle;
import slabwright.figures.MarkStyles;
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
    SettingOut settingOut,
    Ring blank,
    BlankOffsets offsets,
    SheetContext context) {
  List<Block> blocks() {
    SwingTieTable table = new SwingTieTable(settingOut, context);
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading("Where it lies"));
    blocks.add(new Paragraph(offsets.sentence(context)));
    readings()
        .forEach(
            r ->
                blocks.add(
                    new Paragraph((r.upright() ? "✓ " : "! ") + context.words().say(r.said()))));
    underneath(blocks);
    blocks.add(new Gap(2));
    blocks.add(new Heading("Swing two tapes to each panel corner"));
    blocks.add(table.ties());
    blocks.add(
        new Paragraph(
            "Corners are numbered on the plan. ± is one standard deviation by the stated tape error"
                + " (common practice: 3 mm and 0.02 %). Check:"));
    blocks.add(table.diagonals());
    blocks.add(new Gap(2));
    blocks.add(new Heading("Key"));
    blocks.add(key(placed));
    return blocks;
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
      String how = u.stands() ? "stands in the way" : "lies under it: dye takes differently there";
      blocks.add(new Paragraph("! " + u.mark().name() + " " + how + "."));
    }
  }

  /** What the lines and colours of the plan mean. */
  public static Block key(PlacedInlay placed) {
    List<KeyBlock.Entry> entries = new ArrayList<>();
    for (Stencil s : placed.plan().stencils().stencils()) {
      entries.add(KeyBlock.look(DyeStyle.flat(s.colour()), "dye " + s.layer() + ", " + s.colour()));
    }
    entries.add(KeyBlock.line(Pen.of(0.4, Palette.INK), "blank: outer edge of the vinyl"));
    entries.add(KeyBlock.line(StencilInks.seamPen(), "seam of two panels"));
    entries.add(KeyBlock.line(StencilInks.skirtPen(), "paper skirt, out to the overspray reach"));
    entries.add(KeyBlock.line(MarkStyles.WAY_IN, "way in"));
    return KeyBlock.of(entries);
  }
}
