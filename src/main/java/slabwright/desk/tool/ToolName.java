package slabwright.desk.tool;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.desk.model.Stage;
import slabwright.site.MarkType;

/** The tools by their words and keys; a stage offers its own few. */
public enum ToolName {
  PICK("Pick", "V", null),
  TAPE("Tape", "T", null),
  DRAW("Draw", "D", null),
  CORNER("Corner", "C", null),
  DOORWAY("Doorway", "W", null),
  TRENCH("Trench", "T", MarkType.TRENCH),
  PATCH("Patch", "P", MarkType.PATCH),
  RESIDUE("Residue", "R", MarkType.RESIDUE),
  JOINT("Joint", "J", MarkType.JOINT),
  CRACK("Crack", "K", MarkType.CRACK),
  SPALL("Spall", "S", MarkType.SPALL),
  LEVEL("Level change", "E", MarkType.LEVEL_CHANGE),
  ISLAND("Island", "I", MarkType.ISLAND),
  BOOTH("Booths", "B", MarkType.BOOTH),
  COLUMN("Column", "C", MarkType.COLUMN),
  TOP("Top or step", "O", MarkType.TOP_OR_STEP),
  DRAIN("Drain or box", "D", MarkType.DRAIN_OR_BOX),
  TRIM("Glass, trim", "G", MarkType.MASKED_TRIM),
  POWER("Power point", "N", MarkType.POWER_POINT),
  DETECTOR("Detector", "H", MarkType.DETECTOR),
  IGNITION("Ignition", "Q", MarkType.IGNITION_SOURCE),
  AIR("Air outlet", "A", MarkType.AIR_OUTLET),
  SCALE("Scale picture", "S", null),
  FLAT("Lay flat", "L", null),
  PLACE("Place", "G", null),
  MEASURE("Distance", "M", null);

  private final String words;
  private final String key;
  private final MarkType marks;

  ToolName(String words, String key, MarkType marks) {
    this.words = words;
    this.key = key;
    this.marks = marks;
  }

  public String words() {
    return words;
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
