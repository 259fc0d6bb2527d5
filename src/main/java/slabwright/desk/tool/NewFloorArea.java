package slabwright.desk.tool;

import java.util.List;
import java.util.function.BiFunction;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.edit.NewIds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;
import slabwright.site.edit.SiteEdit;

/** Makes a floor area of corners and looks at it. */
final class NewFloorArea {
  private NewFloorArea() {}

  /** A room of drawn corners; whether it went through. */
  static boolean make(DeskContext bench, List<Vec> corners) {
    List<OutlinePiece> outline = corners.stream().map(c -> OutlinePiece.wall(Spot.of(c))).toList();
    return make(bench, (id, name) -> FloorArea.of(id, name, outline));
  }

  /** The area that is made under an id and a name; whether it went through. */
  static boolean make(DeskContext bench, BiFunction<String, String, FloorArea> made) {
    int n = bench.desk().site().areas().size() + 1;
    String id = NewIds.area(bench.desk().site());
    String name = bench.words().say("desk.tool.floor-name", n);
    boolean done = bench.desk().push(new SiteEdit.AddArea(made.apply(id, name))).isOk();
    if (done) {
      bench.focus().selectArea(id);
    }
    return done;
  }
}
