package slabwright.site;

import java.util.Locale;
import java.util.Optional;
import slabwright.units.Message;

/** The closed set of mark kinds, and what all marks of one kind have in common. */
public enum MarkType {
  TRENCH(null, GrindingAccess.MACHINE),
  PATCH(null, GrindingAccess.MACHINE),
  RESIDUE(null, GrindingAccess.MACHINE),
  ISLAND(EdgeClass.ISLAND, GrindingAccess.NOBODY),
  BOOTH(EdgeClass.BOOTH, GrindingAccess.NOBODY),
  COLUMN(EdgeClass.COLUMN, GrindingAccess.NOBODY),
  TOP_OR_STEP(EdgeClass.TOP_OR_STEP, GrindingAccess.HAND),
  JOINT(null, GrindingAccess.MACHINE),
  CRACK(null, GrindingAccess.MACHINE),
  SPALL(null, GrindingAccess.MACHINE),
  DRAIN_OR_BOX(null, GrindingAccess.HAND),
  LEVEL_CHANGE(null, GrindingAccess.HAND),
  MASKED_TRIM(null, GrindingAccess.NOBODY),
  POWER_POINT(null, GrindingAccess.MACHINE),
  DETECTOR(null, GrindingAccess.MACHINE),
  IGNITION_SOURCE(null, GrindingAccess.MACHINE),
  AIR_OUTLET(null, GrindingAccess.MACHINE);

  private final EdgeClass edge;
  private final GrindingAccess worker;

  MarkType(EdgeClass edge, GrindingAccess worker) {
    this.edge = edge;
    this.worker = worker;
  }

  /** The word of the reports that programs read. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** What people call it. */
  public Message label() {
    return switch (this) {
      case TRENCH -> Message.of("site.mark-type.trench");
      case PATCH -> Message.of("site.mark-type.patch");
      case RESIDUE -> Message.of("site.mark-type.residue");
      case ISLAND -> Message.of("site.mark-type.island");
      case BOOTH -> Message.of("site.mark-type.booth");
      case COLUMN -> Message.of("site.mark-type.column");
      case TOP_OR_STEP -> Message.of("site.mark-type.top-or-step");
      case JOINT -> Message.of("site.mark-type.joint");
      case CRACK -> Message.of("site.mark-type.crack");
      case SPALL -> Message.of("site.mark-type.spall");
      case DRAIN_OR_BOX -> Message.of("site.mark-type.drain-or-box");
      case LEVEL_CHANGE -> Message.of("site.mark-type.level-change");
      case MASKED_TRIM -> Message.of("site.mark-type.masked-trim");
      case POWER_POINT -> Message.of("site.mark-type.power-point");
      case DETECTOR -> Message.of("site.mark-type.detector");
      case IGNITION_SOURCE -> Message.of("site.mark-type.ignition-source");
      case AIR_OUTLET -> Message.of("site.mark-type.air-outlet");
    };
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
