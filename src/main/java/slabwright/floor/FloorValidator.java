package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.Spot;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** What the person should know about a take-off, and what is refused. */
final class FloorValidator {
  /** Overhang that is only rounding; mm². */
  private static final double CRUMB = 1;

  private final List<FloorNote> notes = new ArrayList<>();
  private final List<Refusal> refusals = new ArrayList<>();

  FloorValidator(FloorArrangement plan, Region gross) {
    if (gross.isEmpty()) {
      refusals.add(
          Refusal.at(
              "outline",
              Message.of("floor.validator.outline-encloses-no-floor", plan.area().name())));
    }
    for (int i = 0; i < plan.area().marks().size(); i++) {
      Mark mark = plan.mark(i);
      int index = i;
      plan.form(i).ifPresent(form -> check(mark, index, form, gross));
      line(mark, gross);
      if (mark.kind().type() == MarkType.LEVEL_CHANGE) {
        notes.add(
            new FloorNote(
                Message.of("floor.validator.level-change-taken-as-passable", name(mark)),
                mark.id(),
                Optional.of(mark.form().spots().get(0).vec())));
      }
    }
    machines(plan);
  }

  private void check(Mark mark, int index, Region form, Region gross) {
    Region outside = form.minus(gross);
    if (outside.area() < CRUMB) {
      return;
    }
    if (form.area() - outside.area() < CRUMB) {
      Vec at = form.labelPoint();
      refusals.add(
          Refusal.at(
              "marks[" + index + "].form",
              Message.of("floor.validator.mark-outside-outline", name(mark)),
              at.x(),
              at.y()));
    } else {
      notes.add(
          new FloorNote(
              Message.of("floor.validator.mark-runs-past-outline", name(mark)),
              mark.id(),
              Optional.of(outside.labelPoint())));
    }
  }

  /** Of a line only what lies on the floor counts. */
  private void line(Mark mark, Region gross) {
    if (!(mark.form() instanceof Form.Trace t) || t.path().size() < 2) {
      return;
    }
    List<Vec> path = t.path().stream().map(Spot::vec).toList();
    double outside = new Line(path).length() - EdgeTally.length(mark, gross);
    if (outside > CRUMB) {
      Optional<Vec> where = path.stream().filter(p -> !gross.contains(p)).findFirst();
      notes.add(
          new FloorNote(
              Message.of("floor.validator.mark-runs-past-outline", name(mark)), mark.id(), where));
    }
  }

  private void machines(FloorArrangement plan) {
    if (plan.area().machines().isEmpty()) {
      note(Message.of("floor.validator.no-machine", plan.area().name()));
    } else if (plan.area().doorways().stream().noneMatch(Doorway::wayIn)) {
      note(Message.of("floor.validator.no-way-in", plan.area().name()));
    }
  }

  private void note(Message message) {
    notes.add(new FloorNote(message, "", Optional.empty()));
  }

  private static String name(Mark m) {
    return m.name().isBlank() ? m.id() : m.name();
  }

  List<FloorNote> notes() {
    return notes;
  }

  List<Refusal> refusals() {
    return refusals;
  }
}
