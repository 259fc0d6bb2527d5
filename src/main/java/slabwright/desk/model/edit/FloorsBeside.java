package slabwright.desk.model.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Move;
import slabwright.site.OutlineShape;
import slabwright.site.Site;
import slabwright.site.edit.AreaEdit;
import slabwright.site.edit.Edit;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Message;

/** Floor areas side by side: which doorway leads where, and laying floors so that they meet. */
public final class FloorsBeside {
  /** So far apart two doorways still face each other, mm: a wall, a step or a strip of yard. */
  private static final double FAR = 3000;

  /** So far aside of each other they still do, mm, besides what they differ in width. */
  private static final double ASIDE = 25;

  /** So many degrees off they still do. */
  private static final double ASKEW = 0.5;

  private FloorsBeside() {}

  /** A doorway by the ids of its floor area and its own. */
  public record Side(String area, String doorway) {
    Doorway.LeadsTo asTarget() {
      return new Doorway.LeadsTo(area, doorway);
    }
  }

  /**
   * A doorway of a floor that was found.
   *
   * @param middle of the opening, mm on the site
   * @param out away from the floor, length 1
   */
  private record Opening(FloorArea area, Doorway door, Vec middle, Vec out) {
    static Optional<Opening> of(FloorArea area, Doorway d) {
      OutlineShape shape = OutlineShape.of(area.outline(), 1);
      List<Vec> gap = shape.doorway(d).points();
      if (gap.size() < 2) {
        return Optional.empty();
      }
      Vec a = gap.get(0);
      Vec b = gap.get(gap.size() - 1);
      Vec out = b.minus(a).unit().left().times(shape.floorOnLeft() ? -1 : 1);
      return Optional.of(new Opening(area, d, a.towards(b, 0.5), out));
    }
  }

  private static Optional<Opening> opening(Site site, Side side) {
    return site.area(side.area())
        .flatMap(a -> a.doorway(side.doorway()).flatMap(d -> Opening.of(a, d)));
  }

  /** The doorway at the other side, as either of the two says it. */
  public static Optional<Side> otherSide(Site site, Side side) {
    Optional<Side> own =
        site.area(side.area())
            .flatMap(a -> a.doorway(side.doorway()))
            .flatMap(d -> d.passage().leadsTo())
            .map(to -> new Side(to.area(), to.doorway()));
    return own.or(() -> sides(site).filter(s -> leads(site, s, side)).findFirst());
  }

  private static Stream<Side> sides(Site site) {
    return site.areas().stream()
        .flatMap(a -> a.doorways().stream().map(d -> new Side(a.id(), d.id())));
  }

  private static boolean leads(Site site, Side from, Side to) {
    return site.area(from.area())
        .flatMap(a -> a.doorway(from.doorway()))
        .flatMap(d -> d.passage().leadsTo())
        .filter(to.asTarget()::equals)
        .isPresent();
  }

  /**
   * Says where a doorway leads, and lays the floors so that the two doorways meet unless they face
   * each other already. The floor that the site begins with stays where it is; floors that hang
   * together by their doorways move together.
   *
   * @param to empty for nowhere known
   */
  public static Edit lead(Site site, Side from, Optional<Side> to) {
    List<Edit> edits = new ArrayList<>(linking(site, from, to));
    Message name = Message.of("desk.model.floors-beside.lead");
    Site bare =
        new Edit.Several(name, linking(site, from, Optional.empty())).change(site).orElse(site);
    to.ifPresent(t -> edits.addAll(meeting(bare, from, t)));
    return new Edit.Several(name, edits);
  }

  /** The links of one doorway alone; whoever else led here no longer does. */
  private static List<Edit> linking(Site site, Side from, Optional<Side> to) {
    List<Edit> edits = new ArrayList<>();
    sides(site)
        .filter(s -> leads(site, s, from) && !to.equals(Optional.of(s)))
        .forEach(s -> edits.add(put(site, s, Optional.empty())));
    edits.add(put(site, from, to));
    return edits;
  }

  private static Edit put(Site site, Side side, Optional<Side> to) {
    Doorway d = site.area(side.area()).flatMap(a -> a.doorway(side.doorway())).orElseThrow();
    Doorway.Passage next = d.passage().withLeadsTo(to.map(Side::asTarget));
    return new OutlineEdit.PutDoorway(
        side.area(), d.withPassage(to.isEmpty() ? next.withSealed(false) : next));
  }

  /** Seals a doorway or opens it, at whichever sides say that the two belong together. */
  public static Edit seal(Site site, Side side, boolean sealed) {
    Set<Side> both = new LinkedHashSet<>(List.of(side));
    otherSide(site, side).filter(o -> leads(site, o, side)).ifPresent(both::add);
    List<Edit> edits = new ArrayList<>();
    for (Side s : both) {
      Doorway d = site.area(s.area()).flatMap(a -> a.doorway(s.doorway())).orElseThrow();
      edits.add(
          new OutlineEdit.PutDoorway(s.area(), d.withPassage(d.passage().withSealed(sealed))));
    }
    return new Edit.Several(Message.of("desk.model.floors-beside.seal"), edits);
  }

  private static List<Edit> meeting(Site site, Side from, Side to) {
    Optional<Opening> a = opening(site, from);
    Optional<Opening> b = opening(site, to);
    Set<String> here = together(site, from.area());
    if (a.isEmpty() || b.isEmpty() || here.contains(to.area()) || facing(a.get(), b.get())) {
      return List.of();
    }
    boolean fromStays = here.contains(site.areas().get(0).id());
    Set<String> there = together(site, to.area());
    boolean toMoves = fromStays || !there.contains(site.areas().get(0).id());
    Move how = toMoves ? onto(b.get(), a.get()) : onto(a.get(), b.get());
    return (toMoves ? there : here).stream().<Edit>map(id -> new AreaEdit.Shift(id, how)).toList();
  }

  /** Floor areas that hang together by doorways that lead to each other. */
  private static Set<String> together(Site site, String area) {
    Set<String> all = new LinkedHashSet<>(List.of(area));
    boolean more = true;
    while (more) {
      more = false;
      for (FloorArea a : site.areas()) {
        for (Doorway d : a.doorways()) {
          Optional<String> to = d.passage().leadsTo().map(Doorway.LeadsTo::area);
          if (to.isPresent() && (all.contains(a.id()) || all.contains(to.get()))) {
            more |= all.add(a.id());
            more |= all.add(to.get());
          }
        }
      }
    }
    return all;
  }

  private static boolean facing(Opening a, Opening b) {
    Vec way = b.middle().minus(a.middle());
    double apart = way.dot(a.out());
    double aside = Math.abs(way.dot(a.out().left()));
    double slack = Math.abs(a.door().width().mm() - b.door().width().mm()) / 2 + ASIDE;
    return Math.abs(turn(a, b)) <= ASKEW && apart > -1 && apart <= FAR && aside <= slack;
  }

  /** By how many degrees {@code b} has to be turned so that it faces {@code a}. */
  private static double turn(Opening b, Opening a) {
    double turn =
        SelectionEdits.normalAngle(Math.toDegrees(a.out().times(-1).angle() - b.out().angle()));
    double quarter = Math.rint(turn / 90) * 90;
    return Math.abs(turn - quarter) < 1e-6 ? quarter + 0.0 : turn;
  }

  /** The move that lays the first opening on the second, the floors at opposite sides. */
  private static Move onto(Opening moved, Opening stays) {
    double turn = turn(moved, stays);
    Vec turned = Affine.turn(Math.toRadians(turn)).apply(moved.middle());
    Vec shift = stays.middle().minus(turn == 0 ? moved.middle() : turned);
    return new Move(turn, shift);
  }

  /**
   * A floor area dragged, and with it those that hang together with it by their doorways: a doorway
   * that comes near one of another floor is drawn onto it, and leads there from then on; else a
   * wall that comes near one is laid along it.
   *
   * @param reach within which it is drawn, mm; 0 for not at all
   */
  public static Edit dragged(Site site, String area, Vec by, double reach) {
    Set<String> group = together(site, area);
    Edit plain = shift(group, by);
    Optional<Site> moved = plain.change(site);
    if (reach <= 0 || moved.isEmpty()) {
      return plain;
    }
    for (String id : group) {
      FloorArea held = moved.get().area(id).orElseThrow();
      for (Doorway d : held.doorways()) {
        Optional<Opening> own = Opening.of(held, d);
        Optional<Opening> near = own.flatMap(o -> near(moved.get(), o, group, reach));
        if (near.isPresent()) {
          Vec rest = by.plus(onto(own.get(), near.get()).shift());
          Side other = new Side(near.get().area().id(), near.get().door().id());
          List<Edit> edits =
              new ArrayList<>(linking(site, new Side(id, d.id()), Optional.of(other)));
          edits.add(shift(group, rest));
          return new Edit.Several(Message.of("desk.model.floors-beside.lay"), edits);
        }
      }
    }
    return shift(group, by.plus(alongWalls(moved.get(), group, reach)));
  }

  private static Edit shift(Set<String> group, Vec by) {
    List<Edit> each =
        group.stream().<Edit>map(id -> new AreaEdit.Shift(id, Move.by(by.x(), by.y()))).toList();
    return each.size() == 1
        ? each.get(0)
        : new Edit.Several(Message.of("desk.model.floors-beside.lay"), each);
  }

  /** A free doorway of a floor that is not moved, which this free one nearly lies on. */
  private static Optional<Opening> near(Site site, Opening own, Set<String> group, double reach) {
    if (otherSide(site, new Side(own.area().id(), own.door().id())).isPresent()) {
      return Optional.empty();
    }
    return sides(site)
        .filter(s -> !group.contains(s.area()))
        .filter(s -> otherSide(site, s).isEmpty())
        .flatMap(s -> opening(site, s).stream())
        .filter(o -> turn(own, o) == 0 && o.middle().distanceTo(own.middle()) <= 2 * reach)
        .findFirst();
  }

  /** What is missing until a wall lies along one of another floor, back to back. */
  private static Vec alongWalls(Site site, Set<String> group, double reach) {
    List<Line> there = walls(site, a -> !group.contains(a.id()));
    return walls(site, a -> group.contains(a.id())).stream()
        .flatMap(wall -> there.stream().flatMap(t -> gap(wall, t, reach).stream()))
        .findFirst()
        .orElse(Vec.ZERO);
  }

  private static List<Line> walls(Site site, Predicate<FloorArea> which) {
    return site.areas().stream()
        .filter(which)
        .flatMap(a -> OutlineShape.of(a.outline(), 1).pieces().stream())
        .toList();
  }

  private static Optional<Vec> gap(Line wall, Line there, double reach) {
    Vec a = wall.points().get(0);
    Vec c = there.points().get(0);
    Vec d = there.points().get(there.points().size() - 1);
    Vec way = wall.points().get(wall.points().size() - 1).minus(a).unit();
    Vec side = way.left();
    boolean level = Math.abs(d.minus(c).unit().dot(side)) < 1e-6;
    double off = c.minus(a).dot(side);
    double from = Math.min(c.minus(a).dot(way), d.minus(a).dot(way));
    double to = Math.max(c.minus(a).dot(way), d.minus(a).dot(way));
    boolean beside = from < wall.length() && to > 0;
    return level && beside && wall.points().size() == 2 && Math.abs(off) <= reach
        ? Optional.of(side.times(off))
        : Optional.empty();
  }

  /** The floor area turned about its middle. */
  public static Edit turned(FloorArea area, double degrees) {
    Bounds b = Bounds.of(area.outline().stream().map(p -> p.from().vec()).toList());
    return new AreaEdit.Shift(area.id(), Move.turnAbout(b.middle(), degrees));
  }
}
