package slabwright.figures;

import java.util.List;
import slabwright.drawing.FillStyle;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Palette;
import slabwright.work.coat.BatchLanes;
import slabwright.work.coat.Lane;

/**
 * How lanes look: by the batch they are begun with, or quarter by quarter where nothing is mixed.
 */
public final class BatchStyle {
  private static final List<FillStyle> LOOKS =
      List.of(
          FillStyle.of(HatchPattern.RISING, Palette.BLUE).outlined(0.25),
          FillStyle.of(HatchPattern.DOTS, Palette.GREEN).outlined(0.25),
          FillStyle.of(HatchPattern.FALLING, Palette.PURPLE).outlined(0.25),
          FillStyle.of(HatchPattern.CROSSES, Palette.OLIVE).outlined(0.25));

  private BatchStyle() {}

  /** The look of a batch, by its number. */
  public static FillStyle of(int batch) {
    return LOOKS.get((batch - 1) % LOOKS.size());
  }

  /** The look of a lane of so many; where nothing is mixed, by the quarter it is rolled in. */
  public static FillStyle of(Lane lane, int lanes, List<BatchLanes> batches) {
    if (batches.isEmpty()) {
      return of(quarter(lane.number(), lanes));
    }
    int batch = 1;
    for (BatchLanes b : batches) {
      batch = lane.number() > b.from() || b.batch() == 1 ? b.batch() : batch;
    }
    return of(batch);
  }

  /** In which quarter of the lanes, from 1, a lane is rolled. */
  static int quarter(int number, int lanes) {
    return 1 + (number - 1) * LOOKS.size() / Math.max(1, lanes);
  }
}
