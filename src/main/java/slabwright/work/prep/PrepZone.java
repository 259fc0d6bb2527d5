package slabwright.work.prep;

import slabwright.units.Message;
import slabwright.work.step.StepPlace;

/**
 * A part of the floor that is prepared in one way.
 *
 * @param place its mark, or the whole floor for the old slab
 * @param machine mm² the machine reaches, after trenches are levelled
 * @param hand mm² ground by hand
 */
public record PrepZone(StepPlace place, Message name, Kind kind, double machine, double hand) {
  /** What the zone is made of, or what lies on it. */
  public enum Kind {
    OLD_CONCRETE,
    TRENCH_PROUD,
    TRENCH_LOW,
    TRENCH_FLUSH,
    PATCH,
    RESIDUE;

    public Message word() {
      return switch (this) {
        case OLD_CONCRETE -> Message.of("work.prep-zone.old-concrete");
        case TRENCH_PROUD -> Message.of("work.prep-zone.trench-proud");
        case TRENCH_LOW -> Message.of("work.prep-zone.trench-low");
        case TRENCH_FLUSH -> Message.of("work.prep-zone.trench-flush");
        case PATCH -> Message.of("work.prep-zone.patch");
        case RESIDUE -> Message.of("work.prep-zone.residue");
      };
    }

    boolean isTrench() {
      return this == TRENCH_PROUD || this == TRENCH_LOW || this == TRENCH_FLUSH;
    }
  }

  public double area() {
    return machine + hand;
  }
}
