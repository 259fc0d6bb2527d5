package slabwright.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Region;
import slabwright.site.Doorway;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.Refusal;

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
              "The outline of \"" + plan.area().name() + "\" encloses no floor; draw its walls."));
    }
    for (int i = 0; i < plan.area().marks().size(); i++) {
      Mark mark = plan.mark(i);
      int index = i;
      plan.form(i).ifPresent(form -> check(mark, index, form, gross));
      if (mark.kind().type() == MarkType.LEVEL_CHANGE) {
        notes.add(
            new FloorNote(
                "Machine reach takes level change " + name(mark) + " as passable.",
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
      refusals.add(
          Refusal.at(
              "marks[" + index + "].form",
              "Mark "
                  + name(mark)
                  + " lies wholly outside the outline; move it inside or remove it.",
              form.labelPoint()));
    } else {
      notes.add(
          new FloorNote(
              "Mark " + name(mark) + " runs past the outline; only the part inside counts.",
              mark.id(),
              Optional.of(outside.labelPoint())));
    }
  }

  private void machines(FloorArrangement plan) {
    if (plan.area().machines().isEmpty()) {
      note(
          "No machine is in the plan of \""
              + plan.area().name()
              + "\": all floor counts as hand work.");
    } else if (plan.area().doorways().stream().noneMatch(Doorway::wayIn)) {
      note(
          "No doorway of \""
              + plan.area().name()
              + "\" is a way in: no machine reaches the floor. Say which doorway machines use.");
    }
  }

  private void note(String sentence) {
    notes.add(new FloorNote(sentence, "", Optional.empty()));
  }

  private static String name(Mark m) {
    return "\"" + (m.name().isBlank() ? m.id() : m.name()) + "\"";
  }

  List<FloorNote> notes() {
    return notes;
  }

  List<Refusal> refusals() {
    return refusals;
  }
}
