package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.machine;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.withDoor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import slabwright.site.EdgeClass;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

/** Invented halls whose figures are followed, and what the followed figures must be. */
final class FollowedFloors {
  private static final Machine RIDE_ON = machine(1_250, 1_200, 60);
  static final Machine WALK_BEHIND = machine(760, 700, 50);

  /** Half a step of the grid, mm. */
  static final double HALF_STEP = 0.0005;

  private FollowedFloors() {}

  static FloorArea square() {
    return furnished(walled(0, 0, 25_000, 0, 25_000, 15_000, 0, 15_000));
  }

  static FloorArea outOfSquare() {
    return furnished(walled(0, 0, 25_217, -131, 24_871.5, 15_063.25, 77.7, 14_900));
  }

  /** An invented hall, set out on no rule but a seed. */
  private static FloorArea furnished(FloorArea bare) {
    Random r = new Random(7);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < 22; i++) {
      Spot at = Spot.mm(500 + 24_000 * r.nextDouble(), 500 + 14_000 * r.nextDouble());
      Length size = Length.mm(150 + 500 * r.nextDouble());
      marks.add(HallMarks.of(i, at, size));
    }
    FloorArea area = withDoor(withDoor(bare, 0, 4_000, 2_400), 2, 9_000, 1_800);
    return area.withMarks(marks).withMachines(List.of(WALK_BEHIND));
  }

  /** The same with trenches that nothing rolls over, and a second machine. */
  static FloorArea busy(FloorArea area) {
    MarkKind proud = new MarkKind.Trench(TrenchLevel.PROUD, false);
    List<Mark> marks =
        area.marks().stream()
            .map(
                m ->
                    m.kind() instanceof MarkKind.Trench
                        ? Mark.of(m.id(), m.name(), proud, m.form())
                        : m)
            .toList();
    return area.withMarks(marks).withMachines(List.of(RIDE_ON, WALK_BEHIND));
  }

  static Optional<FloorFigures> followed(FollowedTakeoff f, FloorArea area) {
    return f.figures(area, () -> false);
  }

  /** What follows a floor must give the figures of another one. */
  static void assertFollowed(FloorArea rests, FloorArea area) {
    assertSame(followed(new FollowedTakeoff(FloorTakeoff.of(rests)), area).orElseThrow(), area);
  }

  /** Moves one thing after the other on a floor that rests; a tenth may be left open. */
  static void assertFollowed(FloorArea rests, int times, UnaryOperator<FloorArea> moved) {
    FollowedTakeoff f = new FollowedTakeoff(FloorTakeoff.of(rests));
    int open = 0;
    for (int i = 0; i < times; i++) {
      FloorArea area = moved.apply(rests);
      Optional<FloorFigures> figures = followed(f, area);
      figures.ifPresent(g -> assertSame(g, area));
      open += figures.isEmpty() ? 1 : 0;
    }
    assertThat(open).isLessThanOrEqualTo(times / 10);
  }

  /** Lots of as many moves each, farther and farther, on all kinds of hall in turn. */
  static void assertFollowedInLots(
      int lots, int times, double step, BiFunction<FloorArea, Double, FloorArea> moved) {
    for (int i = 0; i < lots; i++) {
      FloorArea floor = i % 2 == 0 ? square() : outOfSquare();
      double by = step * (1 + i);
      assertFollowed(i % 3 == 0 ? busy(floor) : floor, times, area -> moved.apply(area, by));
    }
  }

  /** Followed figures are those of a whole take-off but for what the grid rounds. */
  static void assertSame(FloorFigures followed, FloorArea area) {
    FloorFigures whole = FloorFigures.of(FloorTakeoff.of(area));
    double rounding = HALF_STEP * whole.edgeLength();
    assertThat(followed.net()).isCloseTo(whole.net(), within(rounding));
    assertThat(followed.machine()).isCloseTo(whole.machine(), within(rounding));
    assertThat(followed.hand()).isCloseTo(whole.hand(), within(rounding));
    assertThat(followed.edgeLength()).isCloseTo(whole.edgeLength(), within(1e-4));
    assertThat(followed.cutIn()).isCloseTo(whole.cutIn(), within(1e-4));
    for (EdgeClass kind : EdgeClass.values()) {
      assertThat(followed.edges().getOrDefault(kind, 0.0))
          .as(kind.word())
          .isCloseTo(whole.edges().getOrDefault(kind, 0.0), within(1e-4));
    }
  }
}
