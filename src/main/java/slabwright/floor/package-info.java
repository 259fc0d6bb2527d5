/**
 * Who owns each square millimetre of a floor area: zones, net areas, classed edges, machine reach
 * and hand work. Everything is a value read off one noding of the plan.
 */
package slabwright.floor;
