package slabwright.growth;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.FollowedTakeoff;
import slabwright.floor.HallMarks;
import slabwright.shape.PlainFloor;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.store.PlanFile;
import slabwright.units.Length;

/**
 * CPU time of one thread for each frame of a mark that is dragged, with the plan's machines and
 * with wide ones, beside a plain recompute and a whole take-off of the same floor in the same run.
 * A plain program and no part of any build.
 */
public final class DraggedMarkBench {
  /** Frames of one drag, and how far the hand gets in one, mm. */
  private static final int FRAMES = 40;

  private static final double STEP = 35;

  private static final int MARKS = 12;
  private static final int WHOLE = 6;

  /** After so many frames the floor is recomputed plainly. */
  private static final int PLAIN = 10;

  private DraggedMarkBench() {}

  /** Takes the plan to drag marks of; its first area is used. */
  public static void main(String[] args) {
    FloorArea area = PlanFile.read(Path.of(args[0])).orThrow().areas().get(0);
    print("as planned", area);
    for (double body : new double[] {1_250, 1_800}) {
      Machine wide =
          new Machine("wide", "planetary", Length.mm(body), Length.mm(body - 50), Length.mm(60));
      List<Machine> all = new ArrayList<>(area.machines());
      all.set(0, wide);
      print("widest " + Math.round(body) + " mm", area.withMachines(all));
    }
  }

  private static void print(String what, FloorArea area) {
    FollowedTakeoff followed = new FollowedTakeoff(FloorTakeoff.of(area));
    List<Double> frames = new ArrayList<>();
    List<Double> plain = new ArrayList<>();
    int open = 0;
    Random random = new Random(15);
    for (int i = 0; i < MARKS; i++) {
      int mark = random.nextInt(area.marks().size());
      double way = 2 * Math.PI * random.nextDouble();
      for (int k = 1; k <= FRAMES; k++) {
        FloorArea now =
            HallMarks.moved(area, mark, k * STEP * Math.cos(way), k * STEP * Math.sin(way));
        double start = cpu();
        boolean told = followed.figures(now, () -> false).isPresent();
        double between = cpu();
        if (i >= MARKS / 2) {
          frames.add(between - start);
          open += told ? 0 : 1;
        }
        if (k % PLAIN == 0) {
          PlainFloor.netAndReach(now, FloorTakeoff.TOLERANCE);
          if (i >= MARKS / 2) {
            plain.add(cpu() - between);
          }
        }
      }
    }
    List<Double> whole = new ArrayList<>();
    for (int i = 0; i < WHOLE; i++) {
      double start = cpu();
      FloorTakeoff.of(area);
      whole.add(cpu() - start);
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "%s, CPU ms a frame: p50 %.1f, p95 %.1f, max %.1f; left open %d of %d; plain %.1f,"
                + " p50 to plain %.2f; whole take-off %.0f",
            what,
            p(frames, 0.5),
            p(frames, 0.95),
            p(frames, 1),
            open,
            frames.size(),
            p(plain, 0.5),
            p(frames, 0.5) / p(plain, 0.5),
            p(whole, 0.5)));
  }

  private static double p(List<Double> values, double share) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    return sorted.get((int) Math.min(sorted.size() - 1.0, Math.floor(share * sorted.size())));
  }

  private static double cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
  }
}
