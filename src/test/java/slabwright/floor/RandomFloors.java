package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.PieceKind;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

/**
 * Invented floors of every sort: bent and curved walls, notches, overlapping marks of all kinds.
 */
final class RandomFloors {
  private final Random random;

  RandomFloors(long seed) {
    random = new Random(seed);
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** About 8 m across: a star-shaped ring of corners round the origin, some walls bulging. */
  FloorArea area() {
    int n = 4 + random.nextInt(6);
    List<OutlinePiece> pieces = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + between(-0.3, 0.3)) / n;
      double r = between(2_500, 5_000);
      pieces.add(
          new OutlinePiece(
              Spot.mm(r * Math.cos(angle), r * Math.sin(angle)),
              one(List.of(PieceKind.values())),
              Length.mm(random.nextInt(4) == 0 ? between(-150, 400) : 0)));
    }
    FloorArea area = FloorArea.of("r", "random", pieces).withMarks(marks());
    area = Floors.withDoor(area, 0, between(50, 200), between(900, 1_600));
    return Floors.withDoor(area, 2, between(50, 200), between(700, 1_200));
  }

  private List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    int n = random.nextInt(9);
    for (int i = 0; i < n; i++) {
      marks.add(Mark.of("m" + i, "", kind(), form()));
    }
    return marks;
  }

  private MarkKind kind() {
    return switch (random.nextInt(8)) {
      case 0 -> new MarkKind.Trench(one(List.of(TrenchLevel.values())), random.nextBoolean());
      case 1 -> new MarkKind.Patch();
      case 2 -> new MarkKind.Residue("thinset");
      case 3 -> new MarkKind.Island();
      case 4 -> new MarkKind.Booth();
      case 5 -> new MarkKind.Column();
      case 6 -> new MarkKind.DrainOrBox();
      default -> new MarkKind.TopOrStep(Length.mm(40), 1);
    };
  }

  private Form form() {
    Spot at = Spot.mm(between(-2_000, 2_000), between(-2_000, 2_000));
    Length small = Length.mm(between(100, 500));
    Length large = Length.mm(between(500, 2_500));
    return switch (random.nextInt(4)) {
      case 0 -> new Form.Circle(at, small);
      case 1 -> new Form.Rectangle(at, large, small, Length.mm(50), between(0, 180));
      case 2 -> new Form.RoundEnded(at, large, small, between(0, 180));
      default ->
          new Form.Strip(
              List.of(at, Spot.mm(between(-4_000, 4_000), between(-4_000, 4_000))), small);
    };
  }
}
