package slabwright.inlay.settingout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.OutlineShape;
import slabwright.units.UnitSystem;

/**
 * Finds the origin that an inlay is best set out from: the nearest way in that sees it, else
 * another doorway, else the wall that is nearest.
 */
final class SnappedLinesSearch {
  /** Less than this is no turn: 1 mm on 3 m. */
  private static final double STRAIGHT = 1 / 3000.0;

  private static final double FLATTENED = 0.5;

  /** The lines are snapped this far past the blank, mm. */
  private static final double PAST = 150;

  private final SettingOutFloor floor;
  private final SettingOutParameters rules;
  private final OutlineShape shape;
  private final SightLine sight;
  private final SquareCheckSearch squares;

  SnappedLinesSearch(SettingOutFloor floor, SettingOutParameters rules) {
    this.floor = floor;
    this.rules = rules;
    this.shape = OutlineShape.of(floor.outline(), FLATTENED);
    this.sight = new SightLine(floor.free(), rules.longest());
    this.squares = new SquareCheckSearch(sight, floor.units());
  }

  Optional<SnappedLines> to(Vec cross, Affine toSite, Bounds blank) {
    for (SettingOutOrigin origin : origins(cross)) {
      Optional<SnappedLines> found = from(origin, cross, toSite, blank);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** In the order they are tried. */
  private List<SettingOutOrigin> origins(Vec cross) {
    List<SettingOutOrigin> all = new ArrayList<>();
    floor.doorways().stream()
        .filter(d -> isStraight(d.piece()))
        .sorted(
            Comparator.comparing((Doorway d) -> !d.wayIn())
                .thenComparing(d -> walk(door(d), cross)))
        .map(this::door)
        .filter(o -> walk(o, cross) <= rules.doorNear())
        .forEach(all::add);
    List<SettingOutOrigin> walls = new ArrayList<>();
    for (int i = 0; i < shape.pieces().size(); i++) {
      if (isStraight(i)) {
        wall(i, cross).ifPresent(walls::add);
      }
    }
    walls.sort(Comparator.comparingDouble(o -> walk(o, cross)));
    all.addAll(walls);
    return all;
  }

  private boolean isStraight(int piece) {
    return shape.pieces().get(piece).points().size() == 2;
  }

  private Vec into(int piece) {
    List<Vec> p = shape.pieces().get(piece).points();
    return p.get(1).minus(p.get(0)).unit().left().times(shape.floorOnLeft() ? 1 : -1);
  }

  private SettingOutOrigin.DoorMiddle door(Doorway d) {
    Line opening = shape.doorway(d);
    Vec middle = opening.points().get(0).towards(opening.points().get(1), 0.5);
    return new SettingOutOrigin.DoorMiddle(
        d.name(), d.piece(), opening.length() / 2, middle, into(d.piece()));
  }

  /** The foot of the cross on a wall, measured from the wall's nearer corner. */
  private Optional<SettingOutOrigin> wall(int piece, Vec cross) {
    Vec a = shape.pieces().get(piece).points().get(0);
    Vec b = shape.pieces().get(piece).points().get(1);
    double along = cross.minus(a).dot(b.minus(a).unit());
    double length = a.distanceTo(b);
    if (along < 0 || along > length) {
      return Optional.empty();
    }
    List<KnownCorner> corners = KnownCorner.of(floor.outline());
    boolean nearer = along <= length / 2;
    KnownCorner from = corners.get(nearer ? piece : (piece + 1) % corners.size());
    Vec foot = a.towards(b, along / length);
    Vec off = into(piece).times(1);
    boolean taped = sight.reaches(from.at().plus(off), foot.plus(off));
    return taped
        ? Optional.of(
            new SettingOutOrigin.WallPoint(
                piece, from, nearer ? along : length - along, foot, into(piece)))
        : Optional.empty();
  }

  /** Along and aside together, mm; without end where the cross lies behind the wall. */
  private static double walk(SettingOutOrigin o, Vec cross) {
    Vec way = cross.minus(o.at());
    double along = way.dot(o.into());
    return along <= 0 ? Double.MAX_VALUE : along + Math.abs(way.cross(o.into()));
  }

  private Optional<SnappedLines> from(
      SettingOutOrigin origin, Vec cross, Affine toSite, Bounds blank) {
    Vec in = origin.into();
    Vec way = cross.minus(origin.at());
    double along = way.dot(in);
    double right = way.cross(in);
    double aside = Math.abs(right) < SettingOutOrigin.ON_LINE ? 0 : Math.abs(right);
    Vec station = origin.at().plus(in.times(along));
    if (along <= 0 || !sight.reaches(origin.at(), station) || !sight.reaches(station, cross)) {
      return Optional.empty();
    }
    Optional<SquareCheck> atWall =
        squares.of(origin.at(), in.left(), in, false, room(origin, in.left()));
    if (atWall.isEmpty()) {
      return Optional.empty();
    }
    // straight ahead of the origin neither side is the graphic's: both legs lie on one, so that
    // the drawing of them stays as large as it can be
    Vec alongWall = atWall.get().onLine().minus(origin.at()).unit();
    Vec side = aside > 0 ? in.left().times(right >= 0 ? -1 : 1) : alongWall;
    Optional<SquareCheck> atStation =
        squares.of(station, in, side, true, SquareCheckSearch.Room.FREE);
    if (atStation.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SnappedLines(
            origin,
            atWall.get(),
            along,
            station,
            aside,
            right >= 0 ? Hand.RIGHT : Hand.LEFT,
            cross,
            atStation.get(),
            turned(cross, in, toSite),
            snapped(cross, toSite, blank, new Vec(0, 1)),
            snapped(cross, toSite, blank, new Vec(1, 0))));
  }

  /** How far the wall's own line runs from the origin, ahead in the direction and behind. */
  private SquareCheckSearch.Room room(SettingOutOrigin origin, Vec ahead) {
    List<Vec> p = shape.pieces().get(origin.wall()).points();
    double first = p.get(0).minus(origin.at()).dot(ahead);
    double last = p.get(1).minus(origin.at()).dot(ahead);
    return new SquareCheckSearch.Room(Math.max(first, last), -Math.min(first, last));
  }

  /** The line through the cross along one of the blank's axes, a little past the blank. */
  private static Line snapped(Vec cross, Affine toSite, Bounds blank, Vec axis) {
    Vec c = toSite.inverse().apply(cross);
    double back = axis.x() > 0 ? c.x() - blank.minX() : c.y() - blank.minY();
    double on = axis.x() > 0 ? blank.maxX() - c.x() : blank.maxY() - c.y();
    return Line.of(
        toSite.apply(c.minus(axis.times(back + PAST))),
        toSite.apply(c.plus(axis.times(on + PAST))));
  }

  /** The blank's axis nearest to the way in, against it. */
  private Optional<SnappedLines.Turned> turned(Vec cross, Vec in, Affine toSite) {
    Vec x = toSite.apply(new Vec(1, 0)).minus(toSite.apply(Vec.ZERO)).unit();
    Vec axis = Math.abs(x.dot(in)) > Math.abs(x.cross(in)) ? x : x.left();
    double tangent = axis.cross(in) / axis.dot(in);
    if (Math.abs(tangent) < STRAIGHT) {
      return Optional.empty();
    }
    double unit = floor.units() == UnitSystem.FEET_INCHES ? 304.8 : 1000;
    for (int k = (int) Math.floor(3000 / unit); k >= 1; k--) {
      for (int way : new int[] {1, -1}) {
        double on = way * k * unit;
        Vec through = cross.plus(in.times(on)).plus(in.left().times(-1).times(on * tangent));
        if (sight.reaches(cross, cross.plus(in.times(on)))
            && sight.reaches(cross.plus(in.times(on)), through)) {
          Hand side = on * tangent >= 0 ? Hand.RIGHT : Hand.LEFT;
          return Optional.of(new SnappedLines.Turned(on, Math.abs(on * tangent), side, through));
        }
      }
    }
    return Optional.empty();
  }
}
