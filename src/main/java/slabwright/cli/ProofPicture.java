package slabwright.cli;

import java.util.List;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Hatch;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pattern;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.SvgPainter;
import slabwright.inlay.proof.ProofPlan;
import slabwright.inlay.proof.ProofReport;
import slabwright.shape.Affine;
import slabwright.shape.Region;

/** Where a proof's faults are: the plan in grey, what is missing and what is added over it. */
final class ProofPicture {
  private static final double WIDTH_MM = 250;

  private ProofPicture() {}

  static String svg(ProofPlan plan, ProofReport report) {
    double scale = WIDTH_MM / plan.blank().width();
    Affine fit =
        Affine.move(-plan.blank().minX(), -plan.blank().minY()).then(Affine.scale(scale, scale));
    Region blank = Region.rectangle(plan.blank()).map(fit);
    List<Ink> inks =
        List.of(
            Fill.of(Palette.GREY, plan.openings().map(fit)),
            Fill.of(Palette.tint(Palette.RED), report.missing().map(fit)),
            Hatch.of(Pattern.RISING, Palette.RED, report.missing().map(fit)),
            Stroke.outline(Pen.of(0.4, Palette.RED), report.missing().map(fit)),
            Fill.of(Palette.tint(Palette.BLUE), report.added().map(fit)),
            Hatch.of(Pattern.CROSSES, Palette.BLUE, report.added().map(fit)),
            Stroke.outline(Pen.of(0.4, Palette.BLUE), report.added().map(fit)),
            Stroke.outline(Pen.of(0.3, Palette.INK), blank));
    return SvgPainter.write(
        Drawing.paper(WIDTH_MM, plan.blank().height() * scale, inks),
        "red: missing from the drawing; blue: added by it");
  }
}
