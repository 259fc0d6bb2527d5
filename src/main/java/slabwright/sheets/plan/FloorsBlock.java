package slabwright.sheets.plan;

import java.util.List;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Drawing;
import slabwright.drawing.FillStyle;
import slabwright.drawing.Palette;
import slabwright.drawing.View;
import slabwright.figures.AreaInks;
import slabwright.figures.StencilInks;
import slabwright.floor.Obstacle;
import slabwright.inlay.PlacedInlay;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.sheets.page.SheetContext;
import slabwright.work.AreaResult;

/** All floors of a site small, each with its name: to know the place by. */
public final class FloorsBlock {
  private FloorsBlock() {}

  /** No higher than so many mm. */
  public static OverviewBlock of(List<AreaResult> areas, double height, SheetContext context) {
    Bounds all =
        areas.stream()
            .map(a -> a.takeoff().gross().bounds())
            .reduce(Bounds.EMPTY, Bounds::including);
    return new OverviewBlock(
        all.isEmpty() ? new Bounds(0, 0, 1, 1) : all,
        height,
        2,
        s -> areas.forEach(a -> draw(s, a, context)));
  }

  private static void draw(PlanComposer sketch, AreaResult a, SheetContext context) {
    sketch.addInks(FillStyle.plain(Palette.FIELD, Palette.FIELD).on(a.takeoff().gross()));
    for (Obstacle o : a.takeoff().standing()) {
      sketch.addInks(FillStyle.plain(Palette.GREY, Palette.GREY).on(o.region()));
    }
    for (PlacedInlay i : a.inlays()) {
      Affine to = i.plan().toSite().orElse(Affine.IDENTITY);
      sketch.addInks(
          new View(to)
              .place(Drawing.of(CoordinateFrame.GRAPHIC, StencilInks.flat(i.plan())))
              .inks());
      sketch.keepOffWhole(StencilInks.ring(i.plan().openings().bounds()).map(to));
    }
    sketch.addInks(AreaInks.outline(a.takeoff().area()));
    sketch.placeLabel(
        PlanLabel.of(
                a.takeoff().net().labelPoint(), a.takeoff().area().name(), context.type().label())
            .nearBy(20));
  }
}
