package slabwright.desk.tool.select;

import java.util.Optional;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.tool.Tool.Drag;
import slabwright.desk.tool.Touch;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.edit.Edit;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Length;

/** A doorway slid along its wall. */
final class DoorwayDrag implements Drag {
  private final FloorPicture picture;
  private final Optional<Doorway> doorway;
  private final Vec start;

  DoorwayDrag(FloorPicture picture, String id, Vec start) {
    this.picture = picture;
    this.doorway = picture.area().doorways().stream().filter(d -> d.id().equals(id)).findFirst();
    this.start = start;
  }

  @Override
  public Optional<Edit> to(Touch t) {
    return doorway.flatMap(d -> slid(d, t));
  }

  private Optional<Edit> slid(Doorway d, Touch t) {
    Line wall = picture.shape().pieces().get(d.piece());
    double by = Walls.along(wall, t.raw()) - Walls.along(wall, start);
    if (Math.abs(by) < t.reach() / 3) {
      return Optional.empty();
    }
    double most = wall.length() - d.width().mm();
    double offset = Math.max(0, Math.min(most, d.offset().mm() + by));
    return Optional.of(
        new OutlineEdit.PutDoorway(picture.area().id(), d.at(d.piece(), Length.mm(offset))));
  }
}
