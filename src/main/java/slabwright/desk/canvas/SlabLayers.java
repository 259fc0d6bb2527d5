package slabwright.desk.canvas;

import java.util.List;
import slabwright.drawing.Ink;

/** What a stage lays over the plan, from the floor upwards; site frame. */
public interface SlabLayers {
  List<Ink> onFloor();

  /** Inlays in the colours they will have, in the dark look too. */
  List<Ink> trueColours();

  List<Ink> overInlays();

  List<Ink> overWalls();

  /** Whether marks are named. */
  boolean namesMarks();
}
