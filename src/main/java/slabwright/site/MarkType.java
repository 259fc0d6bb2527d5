package slabwright.site;

import java.util.Optional;

/** The closed set of mark kinds, and what all marks of one kind have in common. */
public enum MarkType {
  TRENCH("trench", null, Worker.MACHINE),
  PATCH("patch", null, Worker.MACHINE),
  RESIDUE("residue", null, Worker.MACHINE),
  ISLAND("island", EdgeClass.ISLAND, Worker.NOBODY),
  BOOTH("booth", EdgeClass.BOOTH, Worker.NOBODY),
  COLUMN("column", EdgeClass.COLUMN, Worker.NOBODY),
  TOP_OR_STEP("top or step", EdgeClass.TOP_OR_STEP, Worker.HAND),
  JOINT("joint", null, Worker.MACHINE),
  CRACK("crack", null, Worker.MACHINE),
  SPALL("spall", null, Worker.MACHINE),
  DRAIN_OR_BOX("drain or box", null, Worker.HAND),
  LEVEL_CHANGE("level change", null, Worker.HAND),
  MASKED_TRIM("masked trim", null, Worker.NOBODY),
  POWER_POINT("power point", null, Worker.MACHINE),
  DETECTOR("detector", null, Worker.MACHINE),
  IGNITION_SOURCE("ignition source", null, Worker.MACHINE),
  AIR_OUTLET("air outlet", null, Worker.MACHINE);

  private final String word;
  private final EdgeClass edge;
  private final Worker worker;

  MarkType(String word, EdgeClass edge, Worker worker) {
    this.word = word;
    this.edge = edge;
    this.worker = worker;
  }

  /** The word of the plan file and the sheets. */
  public String word() {
    return word;
  }

  /** The class of edge that the mark's foot makes; only what stands on the floor makes one. */
  public Optional<EdgeClass> edge() {
    return Optional.ofNullable(edge);
  }

  /** Whether the area under the mark is floor; what is not floor always subtracts. */
  public boolean isFloor() {
    return edge == null;
  }

  /** Who may grind there; a trench that is proud or low and not levelled is hand work besides. */
  public Worker worker() {
    return worker;
  }
}
