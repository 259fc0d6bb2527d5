package slabwright.desk.model.compute;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.floor.FloorNote;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.MarkType;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Message;

/**
 * What a floor person would point at: things that stand in one another, and a graphic over what
 * takes no dye well.
 */
final class FloorWarnings {
  /** Flattening of curved forms, mm. */
  private static final double TOLERANCE = 1;

  /** Less than this counts as touching, mm². */
  private static final double TOUCHING = 1000;

  private static final Set<MarkType> STANDING =
      Set.of(MarkType.BOOTH, MarkType.ISLAND, MarkType.COLUMN);

  private final List<FloorNote> all = new ArrayList<>();
  private final FloorTakeoff takeoff;

  private FloorWarnings(FloorTakeoff takeoff) {
    this.takeoff = takeoff;
  }

  /** Warnings of a floor and of the graphics on it, those of its take-off first. */
  static List<FloorNote> of(FloorTakeoff takeoff, List<ComputedInlay> inlays) {
    FloorWarnings w = new FloorWarnings(takeoff);
    w.all.addAll(takeoff.notes());
    w.standing();
    for (Inlay i : takeoff.area().inlays()) {
      inlays.stream().filter(c -> c.inlay().id().equals(i.id())).forEach(c -> w.graphic(i, c));
    }
    return List.copyOf(w.all);
  }

  private void standing() {
    List<Mark> marks =
        takeoff.area().marks().stream().filter(m -> STANDING.contains(m.kind().type())).toList();
    for (int i = 0; i < marks.size(); i++) {
      for (int j = i + 1; j < marks.size(); j++) {
        Mark a = marks.get(i);
        Mark b = marks.get(j);
        Region both = a.form().region(TOLERANCE).intersect(b.form().region(TOLERANCE));
        if (both.area() > TOUCHING) {
          note(
              Message.of("desk.model.floor-warnings.stand-in-one-another", a.name(), b.name()),
              a,
              both.labelPoint());
        }
      }
    }
  }

  private void graphic(Inlay inlay, ComputedInlay computed) {
    Optional<Affine> place = computed.toSite(inlay);
    if (place.isEmpty() || computed.plan().isEmpty()) {
      return;
    }
    Region dyed =
        Region.union(
                computed.plan().get().stencils().stencils().stream()
                    .map(Stencil::openings)
                    .toList())
            .map(place.get());
    takeoff.area().marks().forEach(m -> over(inlay, dyed, m));
  }

  private void over(Inlay inlay, Region dyed, Mark m) {
    Optional<Message> why = why(inlay, m);
    if (why.isEmpty()) {
      return;
    }
    if (m.form() instanceof Form.Trace t && t.path().size() > 1) {
      List<Line> on = dyed.clip(new Line(t.path().stream().map(Spot::vec).toList()));
      on.stream().findFirst().ifPresent(l -> note(why.get(), m, l.points().get(0)));
    } else if (!(m.form() instanceof Form.Trace) && m.form().spots().size() > 0) {
      Region both = dyed.intersect(m.form().region(TOLERANCE));
      if (both.area() > TOUCHING) {
        note(why.get(), m, both.labelPoint());
      }
    }
  }

  private static Optional<Message> why(Inlay inlay, Mark m) {
    if (m.kind() instanceof MarkKind.Trench t && !t.levelled() && t.lie() != TrenchLevel.FLUSH) {
      return Optional.of(
          t.lie() == TrenchLevel.PROUD
              ? Message.of("desk.model.floor-warnings.over-proud-trench", inlay.name(), m.name())
              : Message.of("desk.model.floor-warnings.over-low-trench", inlay.name(), m.name()));
    }
    return switch (m.kind().type()) {
      case RESIDUE ->
          Optional.of(Message.of("desk.model.floor-warnings.over-residue", inlay.name(), m.name()));
      case JOINT, CRACK ->
          Optional.of(Message.of("desk.model.floor-warnings.over-joint", inlay.name(), m.name()));
      default -> Optional.empty();
    };
  }

  private void note(Message message, Mark m, Vec where) {
    all.add(new FloorNote(message, m.id(), Optional.of(where)));
  }
}
