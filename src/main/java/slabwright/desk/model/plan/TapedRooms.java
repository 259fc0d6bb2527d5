package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Signal;
import slabwright.project.plan.BackgroundWriter;
import slabwright.project.plan.TapeFiles;
import slabwright.project.plan.TapedPlan;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.edit.AreaEdit;
import slabwright.site.edit.Edit;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.Reading;
import slabwright.tape.RoomAdjustment;
import slabwright.tape.RoomResult;
import slabwright.tape.TapeRoom;
import slabwright.tape.TapeWalk;
import slabwright.tape.TapedOutline;
import slabwright.tape.text.TapeText;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/**
 * The readings behind rooms that were taped. They stand in the plan with their floor area, so that
 * undo, releases and what changed hold them, and are kept whatever is drawn on the outline since; a
 * tape file beside the plan has the same text. A plan of earlier days has them in that file alone.
 */
public final class TapedRooms {
  /** What adding up in another order changes at most, mm. */
  private static final double SAME = 1e-3;

  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final Map<List<OutlinePiece>, AdjustedRoom> fromFiles = new HashMap<>();
  private final Map<Text, Optional<AdjustedRoom>> adjusted = new HashMap<>();
  private final TapeFiles files = new TapeFiles();
  private final Signal changed = new Signal();
  private final BackgroundWriter writer;

  /** Readings as text, and the units that their sentences are in. */
  private record Text(List<String> lines, UnitSystem units) {}

  /**
   * Listens to the desk.
   *
   * @param plan the plan's file, beside which tape files lie
   */
  public TapedRooms(Desk desk, Supplier<Optional<Path>> plan, BackgroundWriter writer) {
    this.desk = desk;
    this.writer = writer;
    this.plan = plan;
    desk.changed().subscribe(this::keep);
  }

  /** The readings of an area, while its outline is the one they gave. */
  public Optional<AdjustedRoom> of(FloorArea area) {
    return readings(area)
        .filter(r -> sameShape(TapedOutline.inPlaceOf(area, r).to(), area.outline()));
  }

  /** The readings of an area, whatever was drawn on its outline since. */
  public Optional<AdjustedRoom> readings(FloorArea area) {
    List<String> lines = area.details().taped();
    if (!lines.isEmpty()) {
      return adjusted.computeIfAbsent(new Text(lines, desk.site().units()), TapedRooms::adjusted);
    }
    return Optional.ofNullable(fromFiles.get(area.outline()))
        .or(
            () ->
                fromFiles.entrySet().stream()
                    .filter(e -> sameShape(e.getKey(), area.outline()))
                    .map(Map.Entry::getValue)
                    .findFirst());
  }

  private static Optional<AdjustedRoom> adjusted(Text text) {
    return TapeText.read(String.join("\n", text.lines())) instanceof Result.Ok<TapeRoom> ok
            && RoomAdjustment.of(ok.value(), text.units()) instanceof RoomResult.Adjusted a
        ? Optional.of(a.room())
        : Optional.empty();
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
    Affine placing =
        first ? TapedPlan.fromZero(room) : Affine.move(walk.start().x(), walk.start().y());
    return TapedPlan.area(id, name, room, placing, words);
  }

  /** A length typed between two corners of a taped room; whether it is one. */
  public boolean typed(FloorArea area, int from, int to, Length length) {
    return readings(area)
        .map(r -> put(area, TapedOutline.withTypedLength(r, from, to, length)))
        .isPresent();
  }

  /** One reading read otherwise; the others stay. */
  public void replace(FloorArea area, int index, Reading reading) {
    readings(area).ifPresent(r -> put(area, r.room().replacing(index, reading)));
  }

  /** One reading struck out; refused when the others alone leave the shape free. */
  public void drop(FloorArea area, int index) {
    readings(area).ifPresent(r -> put(area, r.room().without(index)));
  }

  /** The outline as the tape gives it, instead of what was drawn since. */
  public void backToTape(FloorArea area) {
    readings(area).ifPresent(r -> put(area, r.room()));
  }

  private boolean put(FloorArea area, TapeRoom next) {
    RoomResult result = RoomAdjustment.of(next, desk.site().units());
    if (!(result instanceof RoomResult.Adjusted a)) {
      desk.refuse(why(result));
      return false;
    }
    Message step = Message.of("desk.model.taped-rooms.readings");
    return desk.push(
            new Edit.Several(
                step,
                List.of(
                    TapedOutline.inPlaceOf(area, a.room()),
                    new AreaEdit.SetDetails(
                        area.id(), step, area.details().withTaped(TapedPlan.lines(next))))))
        .isOk();
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

  /** Given when a room was read from its file. */
  public Signal changed() {
    return changed;
  }

  /** Reads the tape files beside a plan that was just opened, off this thread. */
  public void load() {
    plan.get().ifPresent(p -> desk.site().areas().forEach(area -> load(p, area)));
  }

  private void load(Path from, FloorArea area) {
    int opening = desk.opening();
    files.read(
        from,
        area,
        desk.site().units(),
        writer,
        room -> {
          if (desk.opening() == opening) {
            fromFiles.put(area.outline(), room);
            changed.fire();
          }
        },
        desk::refuse);
  }

  private void keep() {
    Optional<Path> now = plan.get();
    if (!desk.isOpen() || now.isEmpty()) {
      return;
    }
    for (FloorArea area : new ArrayList<>(desk.site().areas())) {
      readings(area).ifPresent(room -> files.write(now.get(), area, room, writer, desk::refuse));
    }
  }
}
