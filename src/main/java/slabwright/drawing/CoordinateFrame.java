package slabwright.drawing;

/** What a drawing's points are measured on. */
public enum CoordinateFrame {
  /** Millimetres of the floor, x right, y up. */
  SITE,
  /** Millimetres of a graphic or blank from its top-left corner, x right, y down. */
  GRAPHIC,
  /** Millimetres of paper from its top-left corner, x right, y down; only this can be painted. */
  PAPER
}
