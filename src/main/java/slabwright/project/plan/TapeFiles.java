package slabwright.project.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.store.AtomicFile;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.RoomAdjustment;
import slabwright.tape.RoomResult;
import slabwright.tape.TapeRoom;
import slabwright.tape.TapedOutline;
import slabwright.tape.text.TapeText;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/**
 * The tape files beside plans: for each taped floor area its readings, as they can also be written
 * by hand. For one thread.
 */
public final class TapeFiles {
  /** A corner that lies farther than this from where the readings put it was moved since, mm. */
  private static final double MOVED = 1;

  private final Map<Path, String> onDisk = new HashMap<>();

  private static Path file(Path plan, FloorArea area) {
    String stem = plan.getFileName().toString().replaceAll("\\.site\\.json$", "");
    return plan.toAbsolutePath().resolveSibling(stem + "-" + area.id() + ".tape");
  }

  /**
   * The room behind a floor area, from its tape file; empty when there is none or it gives another
   * outline than the area has now.
   */
  public Result<Optional<AdjustedRoom>> read(Path plan, FloorArea area, UnitSystem units) {
    Path file = file(plan, area);
    if (!Files.isReadable(file)) {
      return Result.ok(Optional.empty());
    }
    try {
      String text = Files.readString(file);
      Optional<AdjustedRoom> room = room(text, area, units);
      room.ifPresent(r -> onDisk.put(file, text));
      return Result.ok(room);
    } catch (IOException e) {
      return Result.refused(
          Message.of(
              "project.plan.tape-unreadable", file.toString(), String.valueOf(e.getMessage())));
    }
  }

  private static Optional<AdjustedRoom> room(String text, FloorArea area, UnitSystem units) {
    return TapeText.read(text) instanceof Result.Ok<TapeRoom> ok
            && RoomAdjustment.of(ok.value(), units) instanceof RoomResult.Adjusted a
            && same(TapedOutline.inPlaceOf(area, a.room()).to(), area.outline())
        ? Optional.of(a.room())
        : Optional.empty();
  }

  private static boolean same(List<OutlinePiece> a, List<OutlinePiece> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i).from().vec().distanceTo(b.get(i).from().vec()) > MOVED) {
        return false;
      }
    }
    return true;
  }

  /**
   * Writes the readings behind a floor area soon, unless they lie there.
   *
   * @param fault told why they can't be
   */
  public void write(
      Path plan,
      FloorArea area,
      AdjustedRoom room,
      BackgroundWriter writer,
      Consumer<Message> fault) {
    Path file = file(plan, area);
    String text = TapeText.write(room.room());
    if (!text.equals(onDisk.put(file, text))) {
      writer.write(
          file,
          () -> {
            AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8));
            return text;
          },
          t -> {},
          why -> fault.accept(Message.of("project.plan.tape-not-written", why)));
    }
  }
}
