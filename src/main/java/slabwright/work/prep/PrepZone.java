package slabwright.work.prep;

import slabwright.work.step.StepPlace;

/**
 * A part of the floor that is prepared in one way.
 *
 * @param place its mark, or the whole floor for the old slab
 * @param machine mm² the machine reaches, after trenches are levelled
 * @param hand mm² ground by hand
 */
public record PrepZone(StepPlace place, String name, Kind kind, double machine, double hand) {
  /** What the zone is made of, or what lies on it. */
  public enum Kind {
    OLD_CONCRETE("old concrete"),
    TRENCH_PROUD("trench, proud"),
    TRENCH_LOW("trench, low"),
    TRENCH_FLUSH("trench, flush"),
    PATCH("patch"),
    RESIDUE("residue");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    boolean isTrench() {
      return this == TRENCH_PROUD || this == TRENCH_LOW || this == TRENCH_FLUSH;
    }
  }

  public double area() {
    return machine + hand;
  }
}
