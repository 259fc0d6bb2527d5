package slabwright.site.rules;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlineShape;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** What must hold of marks. */
final class MarkRules {
  private MarkRules() {}

  static void ids(FloorArea area, String path, List<Refusal> out) {
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < area.marks().size(); i++) {
      IdRules.check(area.marks().get(i).id(), path + ".marks[" + i + "].id", ids, out);
    }
  }

  static void trenches(FloorArea area, String path, List<Refusal> out) {
    for (int i = 0; i < area.marks().size(); i++) {
      Mark m = area.marks().get(i);
      if (!(m.kind() instanceof MarkKind.Trench t) || t.off().isEmpty()) {
        continue;
      }
      String field = t.lie() == TrenchLevel.LOW ? "depth" : "height";
      String at = path + ".marks[" + i + "]." + field;
      if (t.lie() == TrenchLevel.FLUSH) {
        out.add(
            Refusal.at(
                at,
                Message.of(
                    "site.mark-rules.trench-is-flush-and-yet",
                    named(m),
                    t.off().get().toString())));
      }
      SizeRules.positive(t.off().get(), size(field, m), at, out);
    }
  }

  static void sizes(FloorArea area, String path, List<Refusal> out) {
    for (int i = 0; i < area.marks().size(); i++) {
      Mark m = area.marks().get(i);
      String at = path + ".marks[" + i + "].form";
      new TreeMap<>(m.form().sizes())
          .forEach((what, v) -> SizeRules.positive(v, size(what, m), at + "." + what, out));
      if (m.form().spots().size() < m.form().fewestSpots()) {
        out.add(
            Refusal.at(
                at,
                Message.of(
                    "site.mark-rules.mark-has-corners-give-at",
                    named(m),
                    m.form().spots().size(),
                    m.form().fewestSpots())));
      }
    }
  }

  private static Message size(String which, Mark m) {
    return switch (which) {
      case "length" -> Message.of("site.mark-rules.length", named(m));
      case "width" -> Message.of("site.mark-rules.width", named(m));
      case "radius" -> Message.of("site.mark-rules.radius", named(m));
      case "depth" -> Message.of("site.mark-rules.depth", named(m));
      case "height" -> Message.of("site.mark-rules.height", named(m));
      default -> throw new IllegalArgumentException("no words for the " + which + " of a mark");
    };
  }

  private static Message named(Mark m) {
    return m.name().isBlank()
        ? Message.of("site.mark-rules.without-name", m.kind().type().label(), m.id())
        : Message.of("site.mark-rules.named", m.name());
  }

  /** A mark partly outside is clipped with a note elsewhere; wholly outside it can't be meant. */
  static void inside(FloorArea area, String path, List<Refusal> out) {
    if (area.outline().size() < 2) {
      return;
    }
    Region floor = OutlineShape.of(area.outline(), OutlineRules.TOLERANCE).region();
    for (int i = 0; i < area.marks().size(); i++) {
      Mark m = area.marks().get(i);
      if (!m.form().spots().isEmpty() && positive(m.form()) && !meets(floor, m.form())) {
        Vec at = m.form().spots().get(0).vec();
        out.add(
            Refusal.at(
                path + ".marks[" + i + "].form",
                Message.of(
                    "site.mark-rules.mark-lies-wholly-outside-the",
                    named(m),
                    area.name(),
                    OutlineRules.place(at)),
                at.x(),
                at.y()));
      }
    }
  }

  private static boolean positive(Form form) {
    return form.sizes().values().stream()
            .mapToDouble(Length::mm)
            .allMatch(v -> v > 0 && v <= SizeRules.LONGEST_MM)
        && form.spots().size() >= form.fewestSpots();
  }

  /** A line may begin and end outside and still cross the floor. */
  private static boolean crosses(Region floor, Form form) {
    return form instanceof Form.Trace t
        && floor.clip(new Line(t.path().stream().map(Spot::vec).toList())).stream()
                .mapToDouble(Line::length)
                .sum()
            > 0;
  }

  private static boolean meets(Region floor, Form form) {
    Region covered = form.region(OutlineRules.TOLERANCE);
    return covered.isEmpty()
        ? form.spots().stream().anyMatch(s -> floor.contains(s.vec())) || crosses(floor, form)
        : floor.meets(covered) && !floor.intersect(covered).isEmpty();
  }
}
