package slabwright.site.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntUnaryOperator;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.job.PinnedPhoto;
import slabwright.units.Length;

/** Corners added and taken away, with the doorways and marks that count pieces kept right. */
final class CornerEdits {
  private CornerEdits() {}

  static FloorArea addCorner(FloorArea area, int piece, Spot at) {
    List<OutlinePiece> next = new ArrayList<>(area.outline());
    OutlinePiece old = next.get(piece);
    next.set(piece, new OutlinePiece(old.from(), old.kind(), Length.ZERO));
    next.add(piece + 1, new OutlinePiece(at, old.kind(), Length.ZERO));
    double first = old.from().vec().distanceTo(at.vec());
    List<Doorway> doorways =
        area.doorways().stream().map(d -> afterSplit(d, piece, first)).toList();
    return area.withOutline(next)
        .withDoorways(doorways)
        .withMarks(renumber(area.marks(), piece, 1));
  }

  private static Doorway afterSplit(Doorway d, int piece, double first) {
    if (d.piece() < piece || (d.piece() == piece && d.offset().mm() < first)) {
      return d;
    }
    Length offset = d.piece() == piece ? Length.mm(d.offset().mm() - first) : d.offset();
    return d.at(d.piece() + 1, offset);
  }

  static FloorArea removeCorner(FloorArea area, int corner) {
    int n = area.outline().size();
    int before = (corner + n - 1) % n;
    double shift = length(area.outline(), before);
    List<OutlinePiece> next = new ArrayList<>(area.outline());
    OutlinePiece p = next.get(before);
    next.set(before, new OutlinePiece(p.from(), p.kind(), Length.ZERO));
    next.remove(corner);
    int onto = corner == 0 ? before - 1 : before;
    List<Doorway> doorways =
        area.doorways().stream().map(d -> afterJoin(d, corner, onto, shift)).toList();
    return area.withOutline(next)
        .withDoorways(doorways)
        .withMarks(renumber(area.marks(), corner, -1));
  }

  private static Doorway afterJoin(Doorway d, int corner, int onto, double shift) {
    if (d.piece() < corner) {
      return d;
    }
    boolean joined = d.piece() == corner;
    Length offset = joined ? Length.mm(d.offset().mm() + shift) : d.offset();
    int piece = joined ? onto : d.piece() - 1;
    return d.at(piece, offset);
  }

  private static double length(List<OutlinePiece> outline, int piece) {
    return OutlineShape.of(outline, 0.5).pieces().get(piece).length();
  }

  /** Marks behind the changed piece follow the piece of the new number. */
  private static List<Mark> renumber(List<Mark> marks, int after, int by) {
    return marks.stream()
        .map(
            m ->
                m.follows().orElse(-1) > after || (by < 0 && m.follows().orElse(-1) == after)
                    ? new Mark(
                        m.id(),
                        m.name(),
                        m.kind(),
                        m.form(),
                        OptionalInt.of(Math.max(0, m.follows().getAsInt() + by)))
                    : m)
        .toList();
  }

  /** The site with the photos of an area's corners pinned by other numbers. */
  static Site renumbered(Site site, String area, IntUnaryOperator corner) {
    List<PinnedPhoto> photos =
        site.job().photos().stream()
            .map(
                p ->
                    p.area().equals(area) && p.pin() instanceof PinnedPhoto.OnCorner c
                        ? p.on(new PinnedPhoto.OnCorner(corner.applyAsInt(c.corner())))
                        : p)
            .toList();
    return photos.equals(site.job().photos()) ? site : site.withJob(site.job().withPhotos(photos));
  }
}
