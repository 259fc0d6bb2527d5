package slabwright.sheets.air;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;
import slabwright.words.Words;
import slabwright.work.WorkPlan;
import slabwright.work.air.AirScreening;

/** The picture of sheet 7, vapour over time against its limits, as small as a card. */
public final class VapourDrawing {
  private static final double SIZE = 0.72;

  private VapourDrawing() {}

  /** A drawing on paper of the width in mm. */
  public static Drawing of(AirScreening air, WorkPlan plan, Words words, double width) {
    List<Ink> inks = new ArrayList<>();
    double y = 0;
    VapourBlock block = new VapourBlock(air, JobClock.of(plan, words), words);
    for (Slice s : block.slices(new TypeSizes(SIZE, false), width)) {
      inks.addAll(s.at(0, y));
      y += s.height();
    }
    return Drawing.paper(width, y, inks);
  }
}
