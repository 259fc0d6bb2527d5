package slabwright.floor;

import java.util.Optional;
import slabwright.shape.Region;
import slabwright.site.Mark;
import slabwright.units.Message;

/** A part of the net floor: what a mark owns of it, or, with no mark, the bare old slab. */
public record Zone(Optional<Mark> mark, Region region) {
  /** Area in mm². */
  public double area() {
    return region.area();
  }

  /** The word of its kind, "old slab" where nothing was marked. */
  public Message kind() {
    return kind(mark);
  }

  static Message kind(Optional<Mark> mark) {
    return mark.map(m -> Message.of("floor.zone.marked", m.kind().type().label()))
        .orElse(Message.of("floor.zone.old-slab"));
  }
}
