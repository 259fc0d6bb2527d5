package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Hatch;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.inlay.proof.ProofPlan;
import slabwright.inlay.proof.ProofReport;
import slabwright.shape.Affine;
import slabwright.shape.Region;

/** Where a proof's faults are: red what is missing from the drawing, blue what it adds. */
public final class ProofFaultInks {
  private ProofFaultInks() {}

  /** The faults alone, mapped from the blank's frame. */
  public static List<Ink> of(ProofReport report, Affine map) {
    Region missing = report.missing().map(map);
    Region added = report.added().map(map);
    return List.of(
        Fill.of(Palette.tint(Palette.RED), missing),
        Hatch.of(HatchPattern.RISING, Palette.RED, missing),
        Stroke.outline(Pen.of(0.4, Palette.RED), missing),
        Fill.of(Palette.tint(Palette.BLUE), added),
        Hatch.of(HatchPattern.CROSSES, Palette.BLUE, added),
        Stroke.outline(Pen.of(0.4, Palette.BLUE), added));
  }

  /** A picture on paper: the plan in grey, the faults over it, the blank round it. */
  public static Drawing picture(ProofPlan plan, ProofReport report, double widthMm) {
    double scale = widthMm / plan.blank().width();
    Affine fit =
        Affine.move(-plan.blank().minX(), -plan.blank().minY()).then(Affine.scale(scale, scale));
    List<Ink> inks = new ArrayList<>();
    inks.add(Fill.of(Palette.GREY, plan.openings().map(fit)));
    inks.addAll(of(report, fit));
    inks.add(Stroke.outline(Pen.of(0.3, Palette.INK), Region.rectangle(plan.blank()).map(fit)));
    return Drawing.paper(widthMm, plan.blank().height() * scale, inks);
  }
}
