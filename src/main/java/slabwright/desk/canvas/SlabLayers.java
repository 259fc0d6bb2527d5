package slabwright.desk.canvas;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;

/** What a stage lays over the plan, from the floor upwards; site frame. */
public interface SlabLayers {
  List<Ink> onFloor();

  /** The plan's file, that pictures are relative to. */
  Optional<Path> plan();

  /**
   * Inlays in the colours they will have, and what lies on their blanks, in the dark look too.
   *
   * @param mm site millimetres to one of screen paper
   */
  List<Ink> trueColours(double mm);

  List<Ink> overInlays(double mm);

  List<Ink> overWalls();

  /** Whether corners carry their letters, unless what lies over the walls names them already. */
  boolean namesCorners();

  /** Whether marks are named. */
  boolean namesMarks();
}
