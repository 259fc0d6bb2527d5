package slabwright.floor.reach;

/**
 * One point of reach against width.
 *
 * @param body width of the body, mm
 * @param machine area it grinds, mm²
 * @param hand area left to hand tools, mm²
 */
public record ReachPoint(double body, double machine, double hand) {}
