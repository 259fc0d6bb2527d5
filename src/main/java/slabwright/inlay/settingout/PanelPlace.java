package slabwright.inlay.settingout;

/**
 * Where a panel lies to the snapped lines, as the graphic is read; negative where a line runs
 * beside the panel.
 *
 * @param panel its name
 * @param left mm from its left edge to the line that points up
 * @param right mm from that line to its right edge
 * @param above mm from its top edge down to the line across
 * @param below mm from the line across down to its bottom edge
 * @param stencil its layer where it is cut for that one alone; 0 for a panel of the whole blank
 * @param lap how it meets the panels laid before it
 */
public record PanelPlace(
    String panel, double left, double right, double above, double below, int stencil, Lap lap) {
  /** How a panel meets the ones that lie already. */
  public enum Lap {
    /** Laid first, on the cross. */
    FIRST,
    /** Its edge goes over the neighbour that lies. */
    OVER,
    /** Its edge is tucked under the neighbour's: no upper edge faces people's feet. */
    UNDER,
    /** On a local blank, set to its ticks; no neighbour holds it. */
    APART
  }
}
