package slabwright.site;

import slabwright.shape.Affine;

/**
 * A picture under the drawing, to trace over.
 *
 * @param file path relative to the plan's folder and inside it
 * @param placing from picture pixels (x right, y down) to site millimetres
 */
public record Underlay(String file, Affine placing) {}
