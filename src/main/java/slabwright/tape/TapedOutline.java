package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.PieceKind;
import slabwright.site.Spot;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Length;
import slabwright.units.Message;

/**
 * An adjusted room as the outline of a floor area. Piece {@code k} is wall {@code k}; the outline
 * runs the way the room was walked.
 */
public final class TapedOutline {
  private TapedOutline() {}

  /**
   * A new floor area with the room's walls, open edges, kerbs and doorways.
   *
   * @param placing from the room's frame (first corner at the origin, first wall along x) to the
   *     site's; it may move and turn, no more
   * @param words name the doorways
   */
  public static FloorArea area(
      String id, String name, AdjustedRoom room, Affine placing, Function<Message, String> words) {
    return FloorArea.of(id, name, outline(room, kinds(room.room()), placing))
        .withDoorways(doorways(room.room(), words));
  }

  /**
   * The edit that gives an area the room's shape. The first corner and the direction of the first
   * wall stay where they are, and every piece stays what it is.
   */
  public static OutlineEdit.SetOutline inPlaceOf(FloorArea area, AdjustedRoom room) {
    List<PieceKind> kinds = kinds(room.room());
    for (int k = 0; k < Math.min(kinds.size(), area.outline().size()); k++) {
      kinds.set(k, area.outline().get(k).kind());
    }
    return new OutlineEdit.SetOutline(area.id(), outline(room, kinds, placing(area)));
  }

  /**
   * The readings after someone typed a length between two corners of a taped room: one reading
   * more, or instead of a reading there that was left out or is to be measured again.
   */
  public static TapeRoom withTypedLength(AdjustedRoom room, int from, int to, Length length) {
    TapeRoom taped = room.room();
    for (TapeAdvice a : room.advice()) {
      boolean blamed =
          a.kind() == TapeAdvice.Kind.LEFT_OUT || a.kind() == TapeAdvice.Kind.MEASURE_AGAIN;
      for (int index : blamed ? a.readings() : List.<Integer>of()) {
        Optional<Reading> again = retaken(taped.readings().get(index), taped, from, to, length);
        if (again.isPresent()) {
          return taped.replacing(index, again.get());
        }
      }
    }
    return taped.with(new Reading.Diagonal(from, to, length, Optional.empty()));
  }

  /** The reading taken again, if it runs between these corners. */
  private static Optional<Reading> retaken(
      Reading old, TapeRoom room, int from, int to, Length length) {
    if (old instanceof Reading.Along a && joins(a.wall(), room, from, to)) {
      return Optional.of(
          a instanceof Reading.Curve c
              ? new Reading.Curve(c.wall(), length, c.rise(), c.outward(), c.error())
              : new Reading.Wall(a.wall(), length, a.error()));
    }
    boolean same =
        old instanceof Reading.Diagonal d
            && Math.min(d.from(), d.to()) == Math.min(from, to)
            && Math.max(d.from(), d.to()) == Math.max(from, to);
    return same
        ? Optional.of(new Reading.Diagonal(from, to, length, ((Reading.Diagonal) old).error()))
        : Optional.empty();
  }

  private static boolean joins(int wall, TapeRoom room, int from, int to) {
    int next = (wall + 1) % room.corners();
    return (wall == from && next == to) || (wall == to && next == from);
  }

  /** From the frame of a room to the site's, for an area whose outline the room gave. */
  public static Affine placing(FloorArea area) {
    if (area.outline().size() < 2) {
      return Affine.IDENTITY;
    }
    Vec first = area.outline().get(0).from().vec();
    Vec second = area.outline().get(1).from().vec();
    return Affine.turn(second.minus(first).angle()).then(Affine.move(first.x(), first.y()));
  }

  private static List<OutlinePiece> outline(
      AdjustedRoom room, List<PieceKind> kinds, Affine placing) {
    List<OutlinePiece> outline = new ArrayList<>();
    for (int k = 0; k < room.corners().size(); k++) {
      Spot from = Spot.of(placing.apply(room.corners().get(k).at()));
      outline.add(new OutlinePiece(from, kinds.get(k), rise(room, k)));
    }
    return outline;
  }

  /** As it was typed where that has the right sign. */
  private static Length rise(AdjustedRoom room, int wall) {
    double mm = room.rises().get(wall);
    return room.room().readings().stream()
        .filter(r -> r instanceof Reading.Curve c && c.wall() == wall && c.rise().mm() == mm)
        .map(r -> ((Reading.Curve) r).rise())
        .findFirst()
        .orElse(Length.mm(mm));
  }

  private static List<PieceKind> kinds(TapeRoom room) {
    List<PieceKind> kinds = new ArrayList<>();
    for (int k = 0; k < room.corners(); k++) {
      kinds.add(PieceKind.WALL);
    }
    for (WallNote note : room.notes()) {
      if (note instanceof WallNote.Ends e) {
        kinds.set(e.wall(), e.kind());
      }
    }
    return kinds;
  }

  private static List<Doorway> doorways(TapeRoom room, Function<Message, String> words) {
    List<Doorway> doorways = new ArrayList<>();
    for (WallNote note : room.notes()) {
      if (note instanceof WallNote.Door d) {
        String number = String.valueOf(doorways.size() + 1);
        doorways.add(
            new Doorway(
                "doorway-" + number,
                words.apply(Message.of("tape.taped-outline.doorway", number)),
                d.wall(),
                d.along(),
                d.width(),
                d.wayIn()));
      }
    }
    return doorways;
  }
}
