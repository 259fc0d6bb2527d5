package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/**
 * Lays a slanted photo flat: the four corners of a rectangle on the floor, then its two sides as
 * taped.
 */
public final class RectifyTool implements Tool {
  /** Lays the picture under the plan flat. */
  public interface Rectification {
    /**
     * By a rectangle on the floor.
     *
     * @param corners where they are seen now, site mm, in walking order
     * @param first true length from the first corner to the second
     * @param second true length from the second to the third
     */
    void rectify(List<Vec> corners, Length first, Length second);
  }

  private final Rectification flattening;
  private final TypedLength lengths;
  private final List<Vec> corners = new ArrayList<>();
  private Optional<Length> first = Optional.empty();
  private Vec tip = Vec.ZERO;

  /**
   * A tool.
   *
   * @param units those of the site
   */
  public RectifyTool(Rectification flattening, Supplier<UnitSystem> units) {
    this.flattening = flattening;
    lengths = new TypedLength(LengthUse.WALL, units);
  }

  @Override
  public Message prompt() {
    return switch (corners.size()) {
      case 0 -> Message.of("desk.tool.rectify.a-corner");
      case 1 -> Message.of("desk.tool.rectify.next-corner");
      case 2 -> Message.of("desk.tool.rectify.third-corner");
      case 3 -> Message.of("desk.tool.rectify.last-corner");
      default ->
          first.isEmpty()
              ? Message.of("desk.tool.rectify.first-length")
              : Message.of("desk.tool.rectify.second-length");
    };
  }

  @Override
  public boolean snaps() {
    return false;
  }

  @Override
  public void hover(Touch t) {
    tip = t.raw();
  }

  @Override
  public void press(Touch t) {
    if (corners.size() == 4) {
      clear();
    }
    corners.add(t.raw());
  }

  @Override
  public Optional<Message> entry() {
    return corners.size() < 4
        ? Optional.empty()
        : Optional.of(
            first.isEmpty()
                ? Message.of("desk.tool.rectify.side-1-to-2")
                : Message.of("desk.tool.rectify.side-2-to-3"));
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(lengths.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return lengths.meaning(line);
  }

  @Override
  public Optional<Message> type(String line) {
    Result<Length> read = lengths.read(line);
    if (read instanceof Result.Refused<Length> refused) {
      return Optional.of(refused.message());
    }
    if (!(read.orThrow().mm() > 0)) {
      return Optional.of(Message.of("desk.tool.rectify.above-nothing"));
    }
    List<Vec> square = List.of(Vec.ZERO, new Vec(1, 0), new Vec(1, 1), new Vec(0, 1));
    if (Homography.of(square, corners).isEmpty()) {
      return Optional.of(Message.of("desk.tool.rectify.no-rectangle"));
    }
    if (first.isEmpty()) {
      first = Optional.of(read.orThrow());
      return Optional.empty();
    }
    flattening.rectify(List.copyOf(corners), first.get(), read.orThrow());
    clear();
    return Optional.empty();
  }

  @Override
  public boolean stepBack() {
    if (first.isPresent()) {
      first = Optional.empty();
      return true;
    }
    if (!corners.isEmpty()) {
      corners.remove(corners.size() - 1);
      return true;
    }
    return false;
  }

  private void clear() {
    corners.clear();
    first = Optional.empty();
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    if (corners.isEmpty()) {
      return inks;
    }
    List<Vec> line = new ArrayList<>(corners);
    line.add(corners.size() == 4 ? corners.get(0) : tip);
    inks.add(OverlayInks.line(line));
    for (int k = 0; k < corners.size(); k++) {
      inks.addAll(OverlayInks.handle(corners.get(k), paper));
      Vec beside = corners.get(k).plus(new Vec(4 * paper.mm(), 4 * paper.mm()));
      inks.addAll(OverlayInks.plate(beside, String.valueOf(k + 1), paper));
    }
    return inks;
  }
}
