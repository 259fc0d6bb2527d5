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

  private record TapeRead(String text, AdjustedRoom room) {}

  /**
   * Reads the room behind a floor area from its tape file, in its turn among what is written.
   *
   * @param found told the room; not where there is no file, or it gives another outline than the
   *     area's
   * @param fault told why it can't be read
   */
  public void read(
      Path plan,
      FloorArea area,
      UnitSystem units,
      BackgroundWriter writer,
      Consumer<AdjustedRoom> found,
      Consumer<Message> fault) {
    Path file = file(plan, area);
    writer.write(
        List.of("read", file),
        () -> read(file, area, units),
        read ->
            read.ifPresent(
                r -> {
                  onDisk.putIfAbsent(file, r.text());
                  found.accept(r.room());
                }),
        why -> fault.accept(Message.of("project.plan.tape-unreadable", file.toString(), why)));
  }

  private static Optional<TapeRead> read(Path file, FloorArea area, UnitSystem units)
      throws IOException {
    if (!Files.isReadable(file)) {
      return Optional.empty();
    }
    String text = Files.readString(file);
    return room(text, area, units).map(r -> new TapeRead(text, r));
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
