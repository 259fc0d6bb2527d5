package slabwright.desk.tool;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.desk.model.Stage;
import slabwright.site.MarkType;
import slabwright.units.Message;

/** The tools by their words and keys; a stage offers its own few. */
public enum ToolName {
  PICK("V", null),
  TAPE("T", null),
  DRAW("D", null),
  CORNER("C", null),
  DOORWAY("W", null),
  TRENCH("T", MarkType.TRENCH),
  PATCH("P", MarkType.PATCH),
  RESIDUE("R", MarkType.RESIDUE),
  JOINT("J", MarkType.JOINT),
  CRACK("K", MarkType.CRACK),
  SPALL("S", MarkType.SPALL),
  LEVEL("E", MarkType.LEVEL_CHANGE),
  ISLAND("I", MarkType.ISLAND),
  BOOTH("B", MarkType.BOOTH),
  COLUMN("C", MarkType.COLUMN),
  TOP("O", MarkType.TOP_OR_STEP),
  DRAIN("D", MarkType.DRAIN_OR_BOX),
  TRIM("G", MarkType.MASKED_TRIM),
  POWER("N", MarkType.POWER_POINT),
  DETECTOR("H", MarkType.DETECTOR),
  IGNITION("Q", MarkType.IGNITION_SOURCE),
  AIR("A", MarkType.AIR_OUTLET),
  SCALE("S", null),
  FLAT("L", null),
  PLACE("G", null),
  MEASURE("M", null);

  private final String key;
  private final MarkType marks;

  ToolName(String key, MarkType marks) {
    this.key = key;
    this.marks = marks;
  }

  public Message words() {
    return switch (this) {
      case PICK -> Message.of("desk.tool.name.pick");
      case TAPE -> Message.of("desk.tool.name.tape");
      case DRAW -> Message.of("desk.tool.name.draw");
      case CORNER -> Message.of("desk.tool.name.corner");
      case DOORWAY -> Message.of("desk.tool.name.doorway");
      case TRENCH -> Message.of("desk.tool.name.trench");
      case PATCH -> Message.of("desk.tool.name.patch");
      case RESIDUE -> Message.of("desk.tool.name.residue");
      case JOINT -> Message.of("desk.tool.name.joint");
      case CRACK -> Message.of("desk.tool.name.crack");
      case SPALL -> Message.of("desk.tool.name.spall");
      case LEVEL -> Message.of("desk.tool.name.level");
      case ISLAND -> Message.of("desk.tool.name.island");
      case BOOTH -> Message.of("desk.tool.name.booth");
      case COLUMN -> Message.of("desk.tool.name.column");
      case TOP -> Message.of("desk.tool.name.top");
      case DRAIN -> Message.of("desk.tool.name.drain");
      case TRIM -> Message.of("desk.tool.name.trim");
      case POWER -> Message.of("desk.tool.name.power");
      case DETECTOR -> Message.of("desk.tool.name.detector");
      case IGNITION -> Message.of("desk.tool.name.ignition");
      case AIR -> Message.of("desk.tool.name.air");
      case SCALE -> Message.of("desk.tool.name.scale");
      case FLAT -> Message.of("desk.tool.name.flat");
      case PLACE -> Message.of("desk.tool.name.place");
      case MEASURE -> Message.of("desk.tool.name.measure");
    };
  }

  /** The letter that takes it up, in the stages that offer it. */
  public String key() {
    return key;
  }

  /** What it marks; empty for tools of another sort. */
  public Optional<MarkType> marks() {
    return Optional.ofNullable(marks);
  }

  /** Where it stands among the tools of its stage. */
  public ToolGroup shelf() {
    return marks().map(ToolGroup::of).orElse(ToolGroup.TOP);
  }

  /** Whether it draws a floor area's outline, so that none is needed before. */
  public boolean drawsRooms() {
    return this == TAPE || this == DRAW || needsPicture();
  }

  /** Whether it works on the picture under the plan, so that one must be there. */
  public boolean needsPicture() {
    return this == SCALE || this == FLAT;
  }

  /** The tools of a stage in the order shown. */
  public static List<ToolName> of(Stage stage) {
    return switch (stage) {
      case MEASURE -> List.of(PICK, TAPE, DRAW, CORNER, DOORWAY, SCALE, FLAT, MEASURE);
      case MARK -> marking();
      case PREP -> List.of(PICK, DOORWAY, POWER, MEASURE);
      case INLAY -> List.of(PICK, PLACE, MEASURE);
      case FINISH -> List.of(PICK, DETECTOR, IGNITION, AIR);
      case SHEETS -> List.of();
    };
  }

  private static List<ToolName> marking() {
    Stream<ToolName> marks = Arrays.stream(values()).filter(t -> t.marks != null);
    return Stream.concat(
            Stream.of(PICK, MEASURE), marks.sorted(Comparator.comparing(ToolName::shelf)))
        .toList();
  }

  public static Optional<ToolName> byKey(Stage stage, String letter) {
    return of(stage).stream().filter(t -> t.key.equalsIgnoreCase(letter)).findFirst();
  }
}
