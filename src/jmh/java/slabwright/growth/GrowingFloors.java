package slabwright.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import slabwright.floor.HallMarks;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Machine;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

/** Invented halls of so many marks or corners, out of square; the same ones for the same number. */
final class GrowingFloors {
  /** Of floor for one mark, mm a side. */
  private static final double CELL = 4000;

  /** Of a wall with a doorway, mm. */
  private static final double STRAIGHT = 3000;

  private GrowingFloors() {}

  /** A hall as large as its marks need, twelve times as many corners in all and more. */
  static FloorArea marks(int count) {
    Random random = new Random(5);
    int across = (int) Math.ceil(Math.sqrt(count));
    double side = across * CELL;
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double x = (i % across + 0.3 + 0.4 * random.nextDouble()) * CELL;
      double y = (i / across + 0.3 + 0.4 * random.nextDouble()) * CELL;
      Length size = Length.mm(200 + 400 * random.nextDouble());
      marks.add(HallMarks.of(i, Spot.mm(x, y), size));
    }
    List<OutlinePiece> walls = new ArrayList<>();
    walls.add(OutlinePiece.wall(Spot.mm(0, 0)));
    walls.add(OutlinePiece.wall(Spot.mm(side + 217, -131)));
    walls.add(OutlinePiece.wall(Spot.mm(side - 129, side + 63)));
    walls.add(OutlinePiece.wall(Spot.mm(78, side - 100)));
    return furnished(walls).withMarks(marks);
  }

  /**
   * A hall of 40 m whose walls are more and more rugged, with a column. The first wall is straight,
   * so that machines come in at its doorway: without any they are soon done.
   */
  static FloorArea walls(int corners) {
    List<OutlinePiece> walls = new ArrayList<>();
    List<Vec> shore = GrowingDrawings.shore(new Random(6), Vec.ZERO, 20_000, corners).points();
    Vec first = shore.get(0);
    walls.add(OutlinePiece.wall(Spot.mm(first.x(), first.y())));
    int next = 1;
    while (first.distanceTo(shore.get(next)) < STRAIGHT) {
      next++;
    }
    for (Vec p : shore.subList(next, shore.size())) {
      walls.add(OutlinePiece.wall(Spot.mm(p.x(), p.y())));
    }
    Form column = new Form.Circle(Spot.mm(1000, 2000), Length.mm(400));
    return furnished(walls).withMarks(List.of(Mark.of("c", "", new MarkKind.Column(), column)));
  }

  private static FloorArea furnished(List<OutlinePiece> walls) {
    Spot a = walls.get(0).from();
    Spot b = walls.get(1).from();
    double wall = a.vec().distanceTo(b.vec());
    Length wide = Length.mm(Math.min(2400, wall));
    Doorway door = new Doorway("d", "door", 0, Length.mm((wall - wide.mm()) / 2), wide, true);
    return FloorArea.of("a", "hall", walls)
        .withDoorways(List.of(door))
        .withMachines(
            List.of(machine("ride-on", 1_250, 1_200, 60), machine("edger", 760, 700, 50)));
  }

  private static Machine machine(String id, double body, double grinding, double clearance) {
    return new Machine(id, "planetary", Length.mm(body), Length.mm(grinding), Length.mm(clearance));
  }

  static Site site(FloorArea area) {
    return Site.empty("Growing hall", UnitSystem.METRIC).withAreas(List.of(area));
  }
}
