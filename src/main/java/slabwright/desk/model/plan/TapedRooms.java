package slabwright.desk.model.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.edit.OutlineEdit;
import slabwright.store.AtomicFile;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.Reading;
import slabwright.tape.RoomAdjustment;
import slabwright.tape.RoomResult;
import slabwright.tape.TapeRoom;
import slabwright.tape.TapedOutline;
import slabwright.tape.text.TapeText;
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
  private final Map<Path, String> written = new HashMap<>();

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
      file(area).filter(Files::isReadable).ifPresent(f -> load(area, f));
    }
  }

  private void load(FloorArea area, Path file) {
    try {
      String text = Files.readString(file);
      Result<TapeRoom> read = TapeText.read(text);
      if (read instanceof Result.Ok<TapeRoom> ok
          && RoomAdjustment.of(ok.value(), desk.site().units()) instanceof RoomResult.Adjusted a
          && same(TapedOutline.inPlaceOf(area, a.room()).to(), area.outline())) {
        rooms.put(area.outline(), a.room());
        written.put(file, text);
      }
    } catch (IOException e) {
      desk.refuse(
          Message.of(
              "desk.model.taped-rooms.unreadable",
              file.toString(),
              String.valueOf(e.getMessage())));
    }
  }

  private static boolean same(List<OutlinePiece> a, List<OutlinePiece> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i).from().vec().distanceTo(b.get(i).from().vec()) > 1) {
        return false;
      }
    }
    return true;
  }

  private Optional<Path> file(FloorArea area) {
    return plan.get()
        .map(
            p -> {
              String stem = p.getFileName().toString().replaceAll("\\.site\\.json$", "");
              return p.toAbsolutePath().resolveSibling(stem + "-" + area.id() + ".tape");
            });
  }

  private void keep() {
    if (!desk.isOpen()) {
      return;
    }
    for (FloorArea area : new ArrayList<>(desk.site().areas())) {
      Optional<AdjustedRoom> room = of(area);
      Optional<Path> file = file(area);
      if (room.isPresent() && file.isPresent()) {
        keep(file.get(), TapeText.write(room.get().room()));
      }
    }
  }

  private void keep(Path file, String text) {
    if (text.equals(written.get(file))) {
      return;
    }
    try {
      written.put(file, text);
      AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      desk.refuse(Message.of("desk.model.taped-rooms.not-written", String.valueOf(e.getMessage())));
    }
  }
}
