package slabwright.desk.tool;

import java.util.List;
import slabwright.desk.model.Bench;
import slabwright.desk.model.NewIds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.SiteEdit;
import slabwright.site.Spot;

/** Makes a floor area of corners and looks at it. */
final class NewRoom {
  private NewRoom() {}

  /** Whether it went through. */
  static boolean make(Bench bench, List<Vec> corners) {
    int n = bench.desk().site().areas().size() + 1;
    String id = NewIds.area(bench.desk().site());
    List<OutlinePiece> outline = corners.stream().map(c -> OutlinePiece.wall(Spot.of(c))).toList();
    FloorArea area = FloorArea.of(id, "Floor " + n, outline);
    boolean done = bench.desk().push(new SiteEdit.AddArea(area)).isDone();
    if (done) {
      bench.focus().look(id);
    }
    return done;
  }
}
