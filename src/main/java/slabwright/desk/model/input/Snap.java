package slabwright.desk.model.input;

import java.util.List;
import java.util.Optional;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Where a touch was drawn to.
 *
 * @param guides lines that show why, mm on the site
 */
public record Snap(Vec at, Kind kind, List<Line> guides) {
  /** What drew it. */
  public enum Kind {
    FREE,
    CORNER,
    EDGE,
    SQUARE,
    PARALLEL,
    GRID;

    /** Says it; empty for what needs no word. */
    public Optional<Message> word() {
      return switch (this) {
        case CORNER -> Optional.of(Message.of("desk.model.snap.corner"));
        case EDGE -> Optional.of(Message.of("desk.model.snap.edge"));
        case SQUARE -> Optional.of(Message.of("desk.model.snap.square"));
        case PARALLEL -> Optional.of(Message.of("desk.model.snap.parallel"));
        case FREE, GRID -> Optional.empty();
      };
    }
  }

  public Snap {
    guides = List.copyOf(guides);
  }

  public static Snap free(Vec at) {
    return new Snap(at, Kind.FREE, List.of());
  }

  public static Snap of(Vec at, Kind kind, Line... guides) {
    return new Snap(at, kind, List.of(guides));
  }
}
