package slabwright.figures;

import slabwright.floor.reach.MachinePassage;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.tape.CornerName;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** Which machine gets through where, in words; sheet 2, the desk and the numbers say the same. */
public final class PassageWords {
  private final FloorArea area;
  private final UnitSystem units;
  private final Words words;

  public PassageWords(FloorArea area, UnitSystem units, Words words) {
    this.area = area;
    this.units = units;
    this.words = words;
  }

  /** What a doorway is called; without a name it is told by its wall. */
  public String doorway(Doorway d) {
    return d.name().isBlank()
        ? words.say(
            "figures.passage-words.unnamed-doorway",
            CornerName.wall(d.piece(), area.outline().size()),
            length(d.offset().mm()),
            CornerName.of(d.piece()))
        : d.name();
  }

  /** The name of the place, or what it is and where. */
  public String place(MachinePassage p) {
    if (p.doorway().isPresent()) {
      return doorway(p.doorway().get());
    }
    Vec at = p.where();
    return p.kind() == MachinePassage.Kind.BEND
        ? words.say("figures.passage-words.bend", length(at.x()), length(at.y()))
        : words.say("figures.passage-words.gap", length(at.x()), length(at.y()));
  }

  /** Whether the machine gets through, and by how much. */
  public String verdict(MachinePassage p) {
    String by = length(Math.abs(p.spare()));
    if (p.fits()) {
      return words.say("figures.passage-words.fits", by);
    }
    return p.kind() == MachinePassage.Kind.BEND
        ? words.say("figures.passage-words.too-long", by)
        : words.say("figures.passage-words.too-narrow", by);
  }

  private String length(double mm) {
    return LengthFormat.show(mm, units);
  }
}
