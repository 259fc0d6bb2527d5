package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.project.plan.TapeFiles;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.edit.OutlineEdit;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.Reading;
import slabwright.tape.RoomAdjustment;
import slabwright.tape.RoomResult;
import slabwright.tape.TapeRoom;
import slabwright.tape.TapeWalk;
import slabwright.tape.TapedOutline;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;

/**
 * The readings behind rooms that were taped. They are known by the shape they gave, so that undo
 * and redo find theirs again, and so do rooms that were moved as a whole or whose walls became
 * kerbs; an outline that was dragged since is a drawn one. Kept in a tape file beside the plan.
 */
public final class TapedRooms {
  /** What adding up in another order changes at most, mm. */
  private static final double SAME = 1e-3;

  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final Map<List<OutlinePiece>, AdjustedRoom> rooms = new HashMap<>();
  private final TapeFiles files = new TapeFiles();

  /**
   * Listens to the desk.
   *
   * @param plan the plan's file, beside which tape files lie
   */
  public TapedRooms(Desk desk, Supplier<Optional<Path>> plan) {
    this.desk = desk;
    this.plan = plan;
    desk.changed().subscribe(this::keep);
  }

  /** The readings of an area, while its outline is the one they gave. */
  public Optional<AdjustedRoom> of(FloorArea area) {
    AdjustedRoom same = rooms.get(area.outline());
    return same != null
        ? Optional.of(same)
        : rooms.keySet().stream()
            .filter(o -> sameShape(o, area.outline()))
            .findFirst()
            .map(rooms::get);
  }

  /** Whether two outlines differ at most in where they lie and in what their walls are. */
  private static boolean sameShape(List<OutlinePiece> a, List<OutlinePiece> b) {
    if (a.size() != b.size() || a.isEmpty()) {
      return false;
    }
    Vec shift = b.get(0).from().vec().minus(a.get(0).from().vec());
    for (int i = 0; i < a.size(); i++) {
      Vec moved = a.get(i).from().vec().plus(shift);
      boolean bulges = Math.abs(a.get(i).rise().mm() - b.get(i).rise().mm()) > SAME;
      if (bulges || moved.distanceTo(b.get(i).from().vec()) > SAME) {
        return false;
      }
    }
    return true;
  }

  /** The room of a walk: every wall and turn is a reading, brought to agree. */
  public RoomResult adjust(TapeWalk walk) {
    int walls = walk.walls().size();
    TapeRoom room = TapeRoom.of(walk.hasComeBack() ? walls : walls + 1);
    for (int k = 0; k < walls; k++) {
      TapeWalk.Wall w = walk.walls().get(k);
      if (k > 0) {
        room = room.with(new Reading.Turn(k, w.turn(), Reading.Trust.READ, Optional.empty()));
      }
      room = room.with(new Reading.Wall(k, w.length(), Optional.empty()));
    }
    return RoomAdjustment.of(room, desk.site().units());
  }

  /**
   * A floor area of an adjusted room, its first corner where the walk began. The first room of a
   * site lies right of and above the site's zero point, whichever way it was walked, so that places
   * on it are typed without a minus.
   *
   * @param words name its doorways
   */
  public FloorArea area(String id, String name, AdjustedRoom room, TapeWalk walk, Words words) {
    boolean first = desk.site().areas().isEmpty() && walk.start().equals(Vec.ZERO);
    Bounds b = Bounds.of(room.corners().stream().map(c -> c.at()).toList());
    Affine placing =
        first ? Affine.move(-b.minX(), -b.minY()) : Affine.move(walk.start().x(), walk.start().y());
    FloorArea area = TapedOutline.area(id, name, room, placing, words::say);
    rooms.put(area.outline(), room);
    return area;
  }

  /** A length typed between two corners of a taped room; refused with its reason. */
  public boolean typed(FloorArea area, int from, int to, Length length) {
    Optional<AdjustedRoom> room = of(area);
    if (room.isEmpty()) {
      return false;
    }
    TapeRoom next = TapedOutline.withTypedLength(room.get(), from, to, length);
    RoomResult result = RoomAdjustment.of(next, desk.site().units());
    if (result instanceof RoomResult.Adjusted a) {
      OutlineEdit.SetOutline edit = TapedOutline.inPlaceOf(area, a.room());
      rooms.put(edit.to(), a.room());
      return desk.push(edit).isOk();
    }
    desk.refuse(why(result));
    return true;
  }

  /** Why a room could not be adjusted. */
  public static Message why(RoomResult result) {
    if (result instanceof RoomResult.Refused r) {
      return r.sentence();
    }
    if (result instanceof RoomResult.NeedsMore m) {
      return m.sentence();
    }
    throw new IllegalArgumentException("an adjusted room has no reason");
  }

  /** Reads the tape files beside a plan that was just opened. */
  public void load() {
    for (FloorArea area : desk.site().areas()) {
      plan.get().map(p -> files.read(p, area, desk.site().units())).ifPresent(r -> take(area, r));
    }
  }

  private void take(FloorArea area, Result<Optional<AdjustedRoom>> read) {
    if (read instanceof Result.Refused<Optional<AdjustedRoom>> refused) {
      desk.refuse(refused.refusals().get(0));
    } else {
      read.orThrow().ifPresent(room -> rooms.put(area.outline(), room));
    }
  }

  private void keep() {
    Optional<Path> now = plan.get();
    if (!desk.isOpen() || now.isEmpty()) {
      return;
    }
    for (FloorArea area : new ArrayList<>(desk.site().areas())) {
      of(area).flatMap(room -> files.write(now.get(), area, room)).ifPresent(desk::refuse);
    }
  }
}
