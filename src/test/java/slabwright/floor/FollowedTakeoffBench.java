package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import slabwright.shape.PlainFloor;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.Move;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;
import slabwright.store.PlanFile;

/**
 * CPU time of one mark moved on the depot floor, square and out of square, beside a whole take-off
 * and a plain recompute of the same floor. Runs only when asked: {@code -Dslabwright.bench=true}.
 */
@EnabledIfSystemProperty(named = "slabwright.bench", matches = "true")
class FollowedTakeoffBench {
  private static final int MOVES = 120;
  private static final int WHOLE = 6;

  /** Frames of one drag, and how far the hand gets in one, mm. */
  private static final int FRAMES = 24;

  private static final double FRAME = 20;

  private final Random random = new Random(15);

  @Test
  void a_mark_is_moved_on_the_depot_floor() {
    FloorArea depot =
        PlanFile.read(Path.of("sample-plans/depot-floor.site.json")).orThrow().areas().get(0);
    print("depot, square", depot);
    print("depot, a corner snapped out of square", snapped(depot));
    print("depot of 500 marks", crowded(depot));
    print("depot of 500 marks, a corner snapped out of square", snapped(crowded(depot)));
  }

  /** Each corner and each wall in turn, and what the same floors take without following. */
  @Test
  void corners_and_walls_are_dragged_on_the_depot_floor() {
    FloorArea depot =
        PlanFile.read(Path.of("sample-plans/depot-floor.site.json")).orThrow().areas().get(0);
    for (FloorArea area : List.of(depot, crowded(depot))) {
      printDrags("square", area);
      printDrags("a corner snapped out of square", snapped(area));
      printCorner(area);
    }
  }

  private void printDrags(String what, FloorArea area) {
    printDrag(what + ", corners", area, 1);
    printDrag(what + ", walls", area, 2);
  }

  /** Every corner, or every two, dragged about; the first half of them warms up. */
  private void printDrag(String what, FloorArea area, int corners) {
    FollowedTakeoff f = new FollowedTakeoff(FloorTakeoff.of(area));
    List<Double> followed = new ArrayList<>();
    List<Double> wall = new ArrayList<>();
    int open = 0;
    int n = area.outline().size();
    for (int i = 0; i < 2 * n; i++) {
      double way = 2 * Math.PI * random.nextDouble();
      for (int k = 1; k <= FRAMES; k++) {
        FloorArea now = dragged(area, i % n, corners, k * FRAME * Math.cos(way), way, k);
        double start = cpu();
        double from = System.nanoTime() / 1e6;
        boolean known = f.figures(now, () -> false).isPresent();
        if (i >= n) {
          followed.add(cpu() - start);
          wall.add(System.nanoTime() / 1e6 - from);
          open += known ? 0 : 1;
        }
      }
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "depot of %d marks, %s, ms: CPU of the thread p50 %.0f p95 %.0f max %.0f; on the"
                + " clock p50 %.0f p95 %.0f (%d of %d left open)",
            area.marks().size(),
            what,
            p(followed, 0.5),
            p(followed, 0.95),
            p(followed, 1),
            p(wall, 0.5),
            p(wall, 0.95),
            open,
            followed.size()));
  }

  private static FloorArea dragged(
      FloorArea area, int first, int corners, double x, double way, int frame) {
    List<OutlinePiece> outline = new ArrayList<>(area.outline());
    double y = frame * FRAME * Math.sin(way);
    for (int i = 0; i < corners; i++) {
      int at = (first + i) % outline.size();
      OutlinePiece p = outline.get(at);
      Spot to = Spot.mm(p.from().vec().x() + x, p.from().vec().y() + y);
      outline.set(at, new OutlinePiece(to, p.kind(), p.rise()));
    }
    return area.withOutline(outline);
  }

  /** What a corner that is dragged takes without following it. */
  private void printCorner(FloorArea area) {
    List<Double> rough = new ArrayList<>();
    List<Double> exact = new ArrayList<>();
    List<Double> plain = new ArrayList<>();
    for (int i = 0; i < 2 * WHOLE; i++) {
      FloorArea now = snapped(area, 300 + 40 * random.nextGaussian());
      double start = cpu();
      double near = QuickTakeoff.approximate(now, () -> false).net();
      double between = cpu();
      double net = FloorTakeoff.of(now).net().area();
      double end = cpu();
      double same = PlainFloor.netAndReach(now, FloorTakeoff.TOLERANCE);
      if (i >= WHOLE) {
        rough.add(between - start);
        exact.add(end - between);
        plain.add(cpu() - end);
      }
      assertThat(near).isBetween(0.99 * net, 1.01 * net);
      assertThat(same).isBetween(0.99 * net, 1.01 * net);
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "depot of %d marks, a corner out of square, CPU ms: rough %.0f, exact %.0f, plain"
                + " %.0f",
            area.marks().size(),
            p(rough, 0.5),
            p(exact, 0.5),
            p(plain, 0.5)));
  }

  /** The depot's marks and so many of them again, a step aside, that they are 500. */
  private static FloorArea crowded(FloorArea depot) {
    List<Mark> marks = new ArrayList<>(depot.marks());
    for (int i = 0; marks.size() < 500; i++) {
      Mark m = depot.marks().get(i);
      Form aside = m.form().map(Move.by(1_370, 905));
      marks.add(Mark.of("again" + i, m.name(), m.kind(), aside));
    }
    return depot.withMarks(marks);
  }

  private static FloorArea snapped(FloorArea depot) {
    return snapped(depot, 340);
  }

  private static FloorArea snapped(FloorArea depot, double in) {
    List<OutlinePiece> outline = new ArrayList<>(depot.outline());
    OutlinePiece p = outline.get(2);
    Spot to = Spot.mm(p.from().vec().x() - in, p.from().vec().y() - 217);
    outline.set(2, new OutlinePiece(to, p.kind(), p.rise()));
    return depot.withOutline(outline);
  }

  private FloorArea moved(FloorArea area) {
    int i = random.nextInt(area.marks().size());
    double x = 800 * random.nextGaussian();
    return HallMarks.moved(area, i, x, 800 * random.nextGaussian());
  }

  private void print(String what, FloorArea area) {
    FollowedTakeoff f = new FollowedTakeoff(FloorTakeoff.of(area));
    List<Double> followed = new ArrayList<>();
    List<Double> whole = new ArrayList<>();
    List<Double> plain = new ArrayList<>();
    int open = 0;
    for (int i = 0; i < 2 * MOVES; i++) {
      FloorArea now = moved(area);
      double start = cpu();
      boolean known = f.figures(now, () -> false).isPresent();
      if (i >= MOVES) {
        followed.add(cpu() - start);
        open += known ? 0 : 1;
      }
    }
    for (int i = 0; i < 2 * WHOLE; i++) {
      FloorArea now = moved(area);
      double start = cpu();
      double net = FloorTakeoff.of(now).net().area();
      double between = cpu();
      double same = PlainFloor.netAndReach(now, FloorTakeoff.TOLERANCE);
      if (i >= WHOLE) {
        whole.add(between - start);
        plain.add(cpu() - between);
      }
      assertThat(same).isBetween(0.99 * net, 1.01 * net);
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "%s, %d marks, CPU ms: moved p50 %.1f p95 %.1f max %.1f (%d of %d left open), whole"
                + " take-off %.0f, plain %.0f, ratio moved to plain %.2f",
            what,
            area.marks().size(),
            p(followed, 0.5),
            p(followed, 0.95),
            p(followed, 1),
            open,
            MOVES,
            p(whole, 0.5),
            p(plain, 0.5),
            p(followed, 0.5) / p(plain, 0.5)));
  }

  private static double cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
  }

  private static double p(List<Double> times, double share) {
    List<Double> sorted = new ArrayList<>(times);
    Collections.sort(sorted);
    return sorted.get((int) Math.min(sorted.size() - 1, sorted.size() * share));
  }
}
