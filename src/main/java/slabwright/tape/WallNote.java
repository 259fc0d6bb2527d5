package slabwright.tape;

import slabwright.site.PieceKind;
import slabwright.units.Length;

/** What was noted about a wall beside its size. */
public sealed interface WallNote {
  int wall();

  /** What the floor ends at there, where it is not a wall. */
  record Ends(int wall, PieceKind kind) implements WallNote {}

  /**
   * An opening for a door.
   *
   * @param along from the wall's first corner in walking order to the nearer jamb
   * @param wayIn whether machines come in here
   */
  record Door(int wall, Length along, Length width, boolean wayIn) implements WallNote {}
}
