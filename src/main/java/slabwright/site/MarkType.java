package slabwright.site;

import java.util.Optional;

/** The closed set of mark kinds, and what all marks of one kind have in common. */
public enum MarkType {
  TRENCH("trench", null, GrindingAccess.MACHINE),
  PATCH("patch", null, GrindingAccess.MACHINE),
  RESIDUE("residue", null, GrindingAccess.MACHINE),
  ISLAND("island", EdgeClass.ISLAND, GrindingAccess.NOBODY),
  BOOTH("booth", EdgeClass.BOOTH, GrindingAccess.NOBODY),
  COLUMN("column", EdgeClass.COLUMN, GrindingAccess.NOBODY),
  TOP_OR_STEP("top or step", EdgeClass.TOP_OR_STEP, GrindingAccess.HAND),
  JOINT("joint", null, GrindingAccess.MACHINE),
  CRACK("crack", null, GrindingAccess.MACHINE),
  SPALL("spall", null, GrindingAccess.MACHINE),
  DRAIN_OR_BOX("drain or box", null, GrindingAccess.HAND),
  LEVEL_CHANGE("level change", null, GrindingAccess.HAND),
  MASKED_TRIM("masked trim", null, GrindingAccess.NOBODY),
  POWER_POINT("power point", null, GrindingAccess.MACHINE),
  DETECTOR("detector", null, GrindingAccess.MACHINE),
  IGNITION_SOURCE("ignition source", null, GrindingAccess.MACHINE),
  AIR_OUTLET("air outlet", null, GrindingAccess.MACHINE);

  private final String word;
  private final EdgeClass edge;
  private final GrindingAccess worker;

  MarkType(String word, EdgeClass edge, GrindingAccess worker) {
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
  public GrindingAccess worker() {
    return worker;
  }
}
