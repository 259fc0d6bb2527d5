package slabwright.work.step;

/** Where on its floor area a step happens. */
public sealed interface StepPlace {
  StepPlace WHOLE_FLOOR = new WholeFloor();

  /** All of it, or what no mark names. */
  record WholeFloor() implements StepPlace {}

  /** A zone of the floor by the id of its mark: a trench, a residue. */
  record Zone(String markId) implements StepPlace {}

  /** A counter top or a flight of steps by the id of its mark. */
  record TopOrStep(String markId) implements StepPlace {}

  /** An inlay by its id. */
  record Inlay(String id) implements StepPlace {}
}
