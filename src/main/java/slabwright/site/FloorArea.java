package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;

/**
 * One connected floor, finished as a job of its own.
 *
 * @param outline pieces in order; each ends where the next begins, the last at the first
 * @param marks in the order laid: among floor kinds the later lies on top
 * @param use what goes on on it, as far as the choice of a sealer asks
 * @param declined advice that the client does not take, each once
 */
@RecordBuilder
public record FloorArea(
    String id,
    String name,
    Setting setting,
    List<OutlinePiece> outline,
    List<Doorway> doorways,
    List<Machine> machines,
    List<Mark> marks,
    List<Inlay> inlays,
    Slab slab,
    AirSpace air,
    Finish finish,
    FloorUse use,
    List<Declined> declined,
    AreaDetails details)
    implements FloorAreaBuilder.With {
  public FloorArea {
    outline = List.copyOf(outline);
    doorways = List.copyOf(doorways);
    machines = List.copyOf(machines);
    marks = List.copyOf(marks);
    inlays = List.copyOf(inlays);
    declined = List.copyOf(declined);
  }

  /** An area of which nothing more is known. */
  public FloorArea(
      String id,
      String name,
      Setting setting,
      List<OutlinePiece> outline,
      List<Doorway> doorways,
      List<Machine> machines,
      List<Mark> marks,
      List<Inlay> inlays,
      Slab slab,
      AirSpace air,
      Finish finish,
      FloorUse use,
      List<Declined> declined) {
    this(
        id,
        name,
        setting,
        outline,
        doorways,
        machines,
        marks,
        inlays,
        slab,
        air,
        finish,
        use,
        declined,
        AreaDetails.NONE);
  }

  /** A bare area with an outline and nothing else known. */
  public static FloorArea of(String id, String name, List<OutlinePiece> outline) {
    return new FloorArea(
        id,
        name,
        Setting.INDOOR,
        outline,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Slab.UNKNOWN,
        AirSpace.UNKNOWN,
        Finish.NONE,
        FloorUse.NOT_ASKED,
        List.of());
  }

  public Optional<Mark> mark(String markId) {
    return marks.stream().filter(m -> m.id().equals(markId)).findFirst();
  }

  public Optional<Inlay> inlay(String inlayId) {
    return inlays.stream().filter(i -> i.id().equals(inlayId)).findFirst();
  }

  /** How the client declined a piece of advice; empty while it stands. */
  public Optional<Declined> declined(AdviceId advice) {
    return declined.stream().filter(d -> d.advice() == advice).findFirst();
  }

  public Optional<Doorway> doorway(String doorwayId) {
    return doorways.stream().filter(d -> d.id().equals(doorwayId)).findFirst();
  }
}
