package slabwright.project.plan;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/**
 * One figure of a plan at two times.
 *
 * @param area name of its floor area; empty when it is of the whole site
 * @param then absent when it could not be computed or the area was not there
 * @param now absent when it can't be computed or the area is gone
 */
public record FigureChange(
    Optional<String> area, Kind kind, OptionalDouble then, OptionalDouble now) {
  /** What is compared, with what it is counted in. */
  public enum Kind {
    NET_FLOOR,
    MACHINE,
    HAND,
    EDGES,
    CUT_IN,
    INLAY,
    CREW,
    /** Hours of presence: with setting up, masking, cleaning up, waiting and breaks. */
    PRESENCE,
    COST;

    /** What the figure is called. */
    public Message label() {
      return switch (this) {
        case NET_FLOOR -> Message.of("project.figure-change.net-floor");
        case MACHINE -> Message.of("project.figure-change.machine");
        case HAND -> Message.of("project.figure-change.hand");
        case EDGES -> Message.of("project.figure-change.edges");
        case CUT_IN -> Message.of("project.figure-change.cut-in");
        case INLAY -> Message.of("project.figure-change.inlay");
        case CREW -> Message.of("project.figure-change.crew");
        case PRESENCE -> Message.of("project.figure-change.presence");
        case COST -> Message.of("project.figure-change.cost");
      };
    }

    /** A value of it: mm², mm, hours or money, as a person reads it. */
    String show(double value, UnitSystem units) {
      return switch (this) {
        case NET_FLOOR, MACHINE, HAND, INLAY -> QuantityFormat.area(value, units);
        case EDGES, CUT_IN -> QuantityFormat.run(value, units);
        case CREW, PRESENCE -> QuantityFormat.number(value, 1);
        case COST -> QuantityFormat.number(value, 2);
      };
    }
  }

  /** Before, after and difference as a person reads them; a dash for what is not known. */
  public record Shown(String then, String now, String difference) {}

  /** Whether the figure reads otherwise than before. */
  public boolean isOther(UnitSystem units) {
    Shown s = shown(units);
    return !Objects.equals(s.then(), s.now());
  }

  /** In the units that the plan is read in. */
  public Shown shown(UnitSystem units) {
    return new Shown(show(then, units), show(now, units), difference(units));
  }

  private String show(OptionalDouble value, UnitSystem units) {
    return value.isPresent() ? kind.show(value.getAsDouble(), units) : "–";
  }

  private String difference(UnitSystem units) {
    if (then.isEmpty() || now.isEmpty()) {
      return "–";
    }
    double by = now.getAsDouble() - then.getAsDouble();
    String size = kind.show(Math.abs(by), units);
    if (size.equals(kind.show(0, units))) {
      return size;
    }
    return (by < 0 ? "−" : "+") + size;
  }
}
