package slabwright.site.rules;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.shape.check.RingSelfCrossing;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** What must hold of an outline and its doorways. */
final class OutlineRules {
  /** Fine enough to see where an outline crosses itself, in mm. */
  static final double TOLERANCE = 0.5;

  /** Half a grid of the tape: offsets typed to 1/16 in may overrun the wall by rounding. */
  private static final double SLACK = 1.0;

  private OutlineRules() {}

  static void corners(FloorArea area, String path, List<Refusal> out) {
    int n = area.outline().size();
    boolean curved = area.outline().stream().anyMatch(p -> p.rise().mm() != 0);
    if (n < (curved ? 2 : 3)) {
      out.add(
          Refusal.at(
              path + ".outline",
              Message.of("site.outline-rules.the-outline-of-has-corners", area.name(), n)));
    }
    for (int i = 0; i < n; i++) {
      if (n > 1 && length(area, i) < 1) {
        out.add(
            Refusal.at(
                path + ".outline[" + i + "]",
                Message.of("site.outline-rules.wall-of-has-no-length", i + 1, area.name()),
                area.outline().get(i).from().vec().x(),
                area.outline().get(i).from().vec().y()));
      }
    }
  }

  private static double length(FloorArea area, int i) {
    Vec next = area.outline().get((i + 1) % area.outline().size()).from().vec();
    return area.outline().get(i).from().vec().distanceTo(next);
  }

  static void extent(FloorArea area, String path, List<Refusal> out) {
    Bounds b = Bounds.of(area.outline().stream().map(p -> p.from().vec()).toList());
    if (!(Math.max(b.width(), b.height()) <= SizeRules.LONGEST_MM)) {
      out.add(
          Refusal.at(
              path + ".outline",
              Message.of("site.outline-rules.is-longer-than-km-check", area.name())));
    }
  }

  static void crossing(FloorArea area, String path, List<Refusal> out) {
    if (area.outline().size() < 3) {
      return;
    }
    RingSelfCrossing.selfCrossing(OutlineShape.of(area.outline(), TOLERANCE).ring())
        .ifPresent(
            at ->
                out.add(
                    Refusal.at(
                        path + ".outline",
                        Message.of(
                            "site.outline-rules.the-outline-of-crosses-or", area.name(), place(at)),
                        at.x(),
                        at.y())));
  }

  static Message place(Vec at) {
    return Message.of(
        "site.outline-rules.place", LengthFormat.plain(at.x()), LengthFormat.plain(at.y()));
  }

  static void doorways(FloorArea area, String path, List<Refusal> out) {
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < area.doorways().size(); i++) {
      Doorway d = area.doorways().get(i);
      String at = path + ".doorways[" + i + "]";
      IdRules.check(d.id(), at + ".id", ids, out);
      SizeRules.positive(
          d.width(),
          Message.of("site.outline-rules.the-width-of-doorway", d.name()),
          at + ".width",
          out);
      SizeRules.notNegative(
          d.offset(),
          Message.of("site.outline-rules.the-offset-of-doorway", d.name()),
          at + ".offset",
          out);
      d.passage().clear().ifPresent(v -> clear(d, v, at + ".clear", out));
      if (d.piece() < 0 || d.piece() >= area.outline().size()) {
        out.add(
            Refusal.at(
                at + ".piece",
                Message.of(
                    "site.outline-rules.doorway-stands-in-wall-which", d.name(), d.piece())));
      } else if (area.outline().size() >= 2) {
        fits(area, d, at, out);
      }
    }
    overlaps(area, path, out);
  }

  private static void clear(Doorway d, Length clear, String at, List<Refusal> out) {
    SizeRules.positive(
        clear, Message.of("site.outline-rules.the-clear-width-of-doorway", d.name()), at, out);
    if (clear.mm() > d.width().mm() + SLACK) {
      out.add(
          Refusal.at(
              at,
              Message.of(
                  "site.outline-rules.the-clear-width-of-doorway-2",
                  d.name(),
                  clear.toString(),
                  d.width().toString())));
    }
  }

  private static void fits(FloorArea area, Doorway d, String at, List<Refusal> out) {
    Line wall = OutlineShape.of(area.outline(), TOLERANCE).pieces().get(d.piece());
    if (d.offset().mm() + d.width().mm() > wall.length() + SLACK) {
      Vec end = wall.points().get(wall.points().size() - 1);
      out.add(
          Refusal.at(
              at,
              Message.of(
                  "site.outline-rules.doorway-ends-mm-beyond-its",
                  d.name(),
                  LengthFormat.plain(d.offset().mm() + d.width().mm() - wall.length())),
              end.x(),
              end.y()));
    }
  }

  private static void overlaps(FloorArea area, String path, List<Refusal> out) {
    List<Doorway> sorted =
        area.doorways().stream()
            .sorted(Comparator.comparingInt(Doorway::piece).thenComparing(Doorway::offset))
            .toList();
    for (int i = 0; i + 1 < sorted.size(); i++) {
      Doorway a = sorted.get(i);
      Doorway b = sorted.get(i + 1);
      if (a.piece() == b.piece() && a.offset().mm() + a.width().mm() > b.offset().mm() + SLACK) {
        out.add(
            Refusal.at(
                path + ".doorways",
                Message.of(
                    "site.outline-rules.doorways-and-overlap-move-one", a.name(), b.name())));
      }
    }
  }
}
