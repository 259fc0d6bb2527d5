package slabwright.sheets.prep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.floor.EdgeStrip;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.GrindingSplit;
import slabwright.floor.HandWorkKind;
import slabwright.floor.HandWorkPiece;
import slabwright.floor.TrenchWork;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.shape.Line;
import slabwright.shape.PreparedRegion;
import slabwright.shape.Vec;
import slabwright.site.EdgeClass;
import slabwright.site.Mark;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/**
 * The hand work of a floor area as a numbered list: edges and what else a strip is left along, each
 * with its strip, then trenches, pockets and the like. Every bit of hand work stands in one row.
 */
final class HandWorkList {
  private static final Set<EdgeClass> STANDS =
      EnumSet.of(EdgeClass.ISLAND, EdgeClass.BOOTH, EdgeClass.COLUMN);

  /** Free floor farther on than this tells nothing more, mm. */
  private static final double FAR = 4000;

  private final FloorTakeoff takeoff;
  private final UnitSystem units;
  private final Words words;
  private final EdgeName names;
  private final List<EdgeStrip> strips;
  private final PreparedRegion net;
  private final List<HandWorkItem> edges;
  private final List<HandWorkItem> along;
  private final List<HandWorkItem> pieces;

  HandWorkList(ReachAnalysis ways, UnitSystem units, Words words) {
    this.words = words;
    this.takeoff = ways.takeoff();
    this.units = units;
    this.names = new EdgeName(takeoff.area(), words);
    this.strips = ways.strips();
    this.net = new PreparedRegion(takeoff.net());
    edges = listEdges();
    along = List.copyOf(listAlong());
    pieces = List.copyOf(listPieces());
  }

  /** The edges worked along by hand; ways in are not among them. */
  List<HandWorkItem> edges() {
    return edges;
  }

  private List<HandWorkItem> listEdges() {
    return strips.stream()
        .filter(s -> s.edge().filter(e -> !e.lines().isEmpty()).isPresent())
        .map(
            s ->
                strip(
                    names.of(s.edge().get()),
                    names.kind(s.edge().get()),
                    s,
                    s.edge().get().lines()))
        .toList();
  }

  /** What lies in the floor and keeps the machine off: a strip is left along it. */
  List<HandWorkItem> along() {
    return along;
  }

  private List<HandWorkItem> listAlong() {
    List<HandWorkItem> items = new ArrayList<>();
    for (EdgeStrip s : strips) {
      if (s.along().isPresent() && !s.region().isEmpty()) {
        Mark mark = s.along().get();
        List<Line> lines =
            takeoff.transitions().stream()
                .filter(t -> t.above().equals(mark) || t.below().filter(mark::equals).isPresent())
                .flatMap(t -> t.lines().stream())
                .toList();
        String kind = words.say("sheets.hand-work-list.floor-along", mark.kind().type().label());
        items.add(
            strip(words.say("sheets.hand-work-list.floor-along", mark.name()), kind, s, lines));
      }
    }
    return items;
  }

  private HandWorkItem strip(String words, String kind, EdgeStrip s, List<Line> lines) {
    Line longest = lines.stream().max(Comparator.comparingDouble(Line::length)).orElseThrow();
    boolean stands = s.edge().filter(e -> STANDS.contains(e.kind())).isPresent();
    int side = stands ? openestSide(longest) : longestSide(longest);
    Vec a = longest.points().get(side);
    Vec b = longest.points().get(side + 1);
    Vec left = b.minus(a).unit().left();
    return HandWorkItem.edge(words, kind, s.length(), s.area(), a.towards(b, 0.5), left);
  }

  /**
   * Of the sides at least half as long as the longest, the one with most free floor before it: a
   * number between two booths would not say whose it is.
   */
  private int openestSide(Line line) {
    int best = longestSide(line);
    double least = length(line, best) / 2;
    double most = open(line, best);
    for (int i = 0; i + 1 < line.points().size() && most < FAR - 2; i++) {
      double open = length(line, i) >= least ? open(line, i) : 0;
      if (open > most + 1) {
        best = i;
        most = open;
      }
    }
    return best;
  }

  /** How far the floor runs on square off the middle of a side, mm, up to {@link #FAR}. */
  private double open(Line line, int i) {
    Vec a = line.points().get(i);
    Vec b = line.points().get(i + 1);
    Vec middle = a.towards(b, 0.5);
    Vec out = b.minus(a).unit().left();
    Line ray = Line.of(middle.plus(out), middle.plus(out.times(FAR)));
    if (net.covers(ray)) {
      return ray.length();
    }
    return takeoff.net().clip(ray).stream()
        .filter(l -> l.points().stream().anyMatch(p -> p.distanceTo(ray.points().get(0)) < 1))
        .mapToDouble(Line::length)
        .max()
        .orElse(0);
  }

  private static int longestSide(Line line) {
    int best = 0;
    for (int i = 1; i + 1 < line.points().size(); i++) {
      best = length(line, i) > length(line, best) ? i : best;
    }
    return best;
  }

  private static double length(Line line, int i) {
    return line.points().get(i).distanceTo(line.points().get(i + 1));
  }

  /** Pieces of floor: trenches, places for hand tools only and pockets each, corners as a sum. */
  List<HandWorkItem> pieces() {
    return pieces;
  }

  private List<HandWorkItem> listPieces() {
    GrindingSplit g = takeoff.asFound();
    List<HandWorkItem> items = new ArrayList<>(trenches());
    for (HandWorkPiece p : g.pieces(HandWorkKind.HAND_ONLY)) {
      items.add(
          HandWorkItem.piece(
              words.say("sheets.hand-work-list.hand-tools-only", at(p.place())),
              words.say("sheets.hand-work-list.hand-tools-only", kindAt(p.place())),
              p.area(),
              p.place()));
    }
    List<HandWorkPiece> pockets = new ArrayList<>(g.pieces(HandWorkKind.POCKET));
    pockets.sort(Comparator.comparingDouble(p -> -p.area()));
    for (HandWorkPiece p : pockets) {
      String what = words.say("sheets.hand-work-list.pocket");
      items.add(HandWorkItem.piece(what, what, p.area(), p.place()));
    }
    List<HandWorkPiece> corners = g.pieces(HandWorkKind.CORNER);
    if (!corners.isEmpty()) {
      String count = words.say("sheets.hand-work-list.corners", corners.size());
      items.add(HandWorkItem.sum(count, g.handArea(HandWorkKind.CORNER)));
    }
    return items;
  }

  /** A trench that a patch or a booth cuts up is listed part by part, without its whole size. */
  private List<HandWorkItem> trenches() {
    List<HandWorkItem> items = new ArrayList<>();
    List<HandWorkPiece> left = new ArrayList<>(takeoff.asFound().pieces(HandWorkKind.TRENCH));
    for (TrenchWork t : TrenchWork.of(takeoff)) {
      List<HandWorkPiece> parts =
          left.stream().filter(p -> t.region().contains(p.place())).toList();
      left.removeIf(p -> t.region().contains(p.place()));
      for (int i = 0; i < parts.size(); i++) {
        String what =
            parts.size() == 1
                ? whole(t)
                : words.say(
                    "sheets.hand-work-list.part-of-trench",
                    t.mark().name(),
                    t.state(),
                    t.due(),
                    i + 1,
                    parts.size());
        items.add(
            HandWorkItem.piece(what, unmeasured(t), parts.get(i).area(), parts.get(i).place()));
      }
    }
    left.forEach(
        p -> items.add(HandWorkItem.piece(at(p.place()), at(p.place()), p.area(), p.place())));
    return items;
  }

  private String whole(TrenchWork t) {
    String name = t.mark().name();
    return t.length().isPresent() && t.width().isPresent()
        ? words.say(
            "sheets.hand-work-list.measured-trench",
            name,
            t.state(),
            t.due(),
            show(t.length().getAsDouble()),
            show(t.width().getAsDouble()))
        : unmeasured(t);
  }

  private String unmeasured(TrenchWork t) {
    return words.say("sheets.hand-work-list.trench", t.mark().name(), t.state(), t.due());
  }

  private String show(double mm) {
    return LengthFormat.show(mm, units);
  }

  /** The name of the mark whose zone holds the point. */
  private String at(Vec p) {
    return mark(p).map(Mark::name).orElseGet(() -> words.say("sheets.hand-work-list.floor"));
  }

  private String kindAt(Vec p) {
    return mark(p)
        .map(m -> words.say(m.kind().type().label()))
        .orElseGet(() -> words.say("sheets.hand-work-list.floor"));
  }

  private Optional<Mark> mark(Vec p) {
    return takeoff.zones().stream()
        .filter(z -> z.region().contains(p))
        .flatMap(z -> z.mark().stream())
        .findFirst();
  }
}
