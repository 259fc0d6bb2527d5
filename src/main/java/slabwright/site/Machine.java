package slabwright.site;

import slabwright.units.Length;

/**
 * A grinding machine.
 *
 * @param body width of the body, B
 * @param grinding width of the grinding head, G, at most B
 * @param clearance kept to everything at each side, c
 */
public record Machine(String id, String name, Length body, Length grinding, Length clearance) {
  /** The strip it leaves along a straight wall, (B − G)/2 + c, in mm. */
  public double strip() {
    return (body.mm() - grinding.mm()) / 2 + clearance.mm();
  }
}
