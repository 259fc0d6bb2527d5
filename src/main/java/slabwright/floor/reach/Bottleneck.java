package slabwright.floor.reach;

import slabwright.shape.Line;
import slabwright.shape.Vec;

/**
 * The narrowest place on the best way to a pocket.
 *
 * @param width of the gap in mm: body and clearances of a machine that gets through are no wider
 * @param where in the middle of the gap
 * @param across from the nearest obstacle over the middle to the other side, {@code width} long
 */
public record Bottleneck(double width, Vec where, Line across) {}
