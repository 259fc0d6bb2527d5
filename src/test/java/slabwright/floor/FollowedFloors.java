package slabwright.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static slabwright.floor.Floors.machine;
import static slabwright.floor.Floors.walled;
import static slabwright.floor.Floors.withDoor;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import slabwright.site.EdgeClass;
import slabwright.site.FloorArea;
import slabwright.site.Form;
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
      Form form =
          switch (i % 3) {
            case 0 -> new Form.Circle(at, size);
            case 1 -> new Form.Rectangle(at, size, Length.mm(700), Length.mm(0), 17 * i);
            default -> new Form.RoundEnded(at, Length.mm(1_900), size, 31 * i);
          };
      marks.add(Mark.of("m" + i, "", kind(i), form));
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

  private static MarkKind kind(int i) {
    return switch (i % 7) {
      case 0 -> new MarkKind.Patch();
      case 1 -> new MarkKind.Island();
      case 2 -> new MarkKind.Trench(TrenchLevel.FLUSH, false);
      case 3 -> new MarkKind.Booth();
      case 4 -> new MarkKind.DrainOrBox();
      default -> new MarkKind.Column();
    };
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
