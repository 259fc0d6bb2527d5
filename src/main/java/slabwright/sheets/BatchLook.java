package slabwright.sheets;

import java.util.List;
import slabwright.drawing.Look;
import slabwright.drawing.Palette;
import slabwright.drawing.Pattern;
import slabwright.work.coat.BatchLanes;
import slabwright.work.coat.Lane;

/** How lanes look: by the batch they are begun with, or every other one where nothing is mixed. */
public final class BatchLook {
  private static final Look PLAIN = new Look(Palette.WHITE, Pattern.NONE, Palette.BLUE, 2, 0.25);
  private static final List<Look> LOOKS =
      List.of(
          Look.of(Pattern.RISING, Palette.BLUE).outlined(0.25),
          Look.of(Pattern.DOTS, Palette.GREEN).outlined(0.25),
          Look.of(Pattern.FALLING, Palette.PURPLE).outlined(0.25),
          Look.of(Pattern.CROSSES, Palette.OLIVE).outlined(0.25));

  private BatchLook() {}

  /** The look of a batch, by its number. */
  public static Look of(int batch) {
    return LOOKS.get((batch - 1) % LOOKS.size());
  }

  /** The look of a lane. */
  public static Look of(Lane lane, List<BatchLanes> batches) {
    if (batches.isEmpty()) {
      return lane.number() % 2 == 0 ? of(1) : PLAIN;
    }
    int batch = 1;
    for (BatchLanes b : batches) {
      batch = lane.number() > b.from() || b.batch() == 1 ? b.batch() : batch;
    }
    return of(batch);
  }
}
