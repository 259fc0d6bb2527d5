package slabwright.desk.tool.select;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.tool.Tool.Drag;
import slabwright.desk.tool.Touch;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.edit.Edit;
import slabwright.site.edit.OutlineEdit;

/** A wall slid square to itself. */
final class WallDrag implements Drag {
  private final FloorArea area;
  private final int wall;
  private final Vec start;

  WallDrag(FloorArea area, int wall, Vec start) {
    this.area = area;
    this.wall = wall;
    this.start = start;
  }

  @Override
  public Optional<Edit> to(Touch t) {
    Vec square = Walls.end(area, wall).minus(Walls.start(area, wall)).unit().left();
    double by = t.at().minus(start).dot(square);
    if (Math.abs(by) < t.reach() / 2) {
      return Optional.empty();
    }
    List<Integer> both = List.of(wall, (wall + 1) % area.outline().size());
    return Optional.of(
        new OutlineEdit.SetOutline(area.id(), Walls.shifted(area, square.times(by), both)));
  }
}
