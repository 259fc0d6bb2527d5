package slabwright.desk.tool.select;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;
import slabwright.desk.model.edit.FloorsBeside;
import slabwright.desk.model.input.Snap;
import slabwright.desk.model.scene.PaleFloor;
import slabwright.desk.model.scene.PaleFloors;
import slabwright.desk.tool.Touch;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.edit.Edit;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Message;

/**
 * A floor area beside the one looked at, held with the pointer: a click looks at it, a drag lays it
 * elsewhere. With a doorway picked, a click on a doorway of it says that the one leads to the
 * other.
 */
final class FloorHand {
  private final DeskContext bench;
  private final String area;
  private final Vec from;
  private boolean moved;

  private FloorHand(DeskContext bench, String area, Vec from) {
    this.bench = bench;
    this.area = area;
    this.from = from;
  }

  /** What a touch beside the floor holds; empty where no floor lies, or where it said its part. */
  static Optional<FloorHand> at(DeskContext bench, List<PaleFloor> others, Touch t) {
    return PaleFloors.at(others, t.raw(), t.reach())
        .map(f -> new FloorHand(bench, f.area().id(), t.raw()));
  }

  /** Whether the touch said where the picked doorway leads. */
  static boolean led(DeskContext bench, List<PaleFloor> others, Touch t) {
    Optional<FloorsBeside.Side> picked = doorway(bench);
    Optional<FloorsBeside.Side> there =
        PaleFloors.at(others, t.raw(), t.reach())
            .flatMap(f -> f.doorwayAt(t.raw(), t.reach()).map(d -> side(f.area(), d)));
    if (picked.isEmpty() || there.isEmpty()) {
      return false;
    }
    bench.desk().push(FloorsBeside.lead(bench.desk().site(), picked.get(), there));
    return true;
  }

  /** The picked doorway on a site of several floor areas. */
  static Optional<FloorsBeside.Side> doorway(DeskContext bench) {
    return bench
        .focus()
        .single()
        .filter(PlanItem.OfDoorway.class::isInstance)
        .filter(p -> bench.desk().site().areas().size() > 1)
        .flatMap(
            p ->
                bench
                    .focus()
                    .area()
                    .map(a -> new FloorsBeside.Side(a.id(), ((PlanItem.OfDoorway) p).id())));
  }

  private static FloorsBeside.Side side(FloorArea area, Doorway d) {
    return new FloorsBeside.Side(area.id(), d.id());
  }

  void drag(Touch t) {
    edit(t).ifPresent(bench.desk()::preview);
  }

  void release(Touch t) {
    edit(t).ifPresent(this::lay);
    bench.desk().endPreview();
    bench.focus().selectAreaInView(area);
  }

  /** Says so where the floors now belong together. */
  private void lay(Edit edit) {
    boolean done = bench.desk().push(edit).isOk();
    if (done
        && edit instanceof Edit.Several all
        && all.edits().stream().anyMatch(FloorHand::leads)) {
      bench.desk().announce(Message.of("desk.tool.select.doorways-meet"));
    }
  }

  private static boolean leads(Edit edit) {
    return edit instanceof OutlineEdit.PutDoorway;
  }

  /** Floors are laid while rooms are measured; later a hand that slips moves none. */
  private Optional<Edit> edit(Touch t) {
    moved |= t.raw().distanceTo(from) > t.reach();
    if (!moved || bench.focus().stage() != Stage.MEASURE) {
      return Optional.empty();
    }
    boolean free = t.snap().kind() == Snap.Kind.FREE;
    return Optional.of(
        FloorsBeside.dragged(
            bench.desk().site(), area, t.raw().minus(from), free ? 0 : 1.5 * t.reach()));
  }
}
