package slabwright.inlay.panel;

import slabwright.shape.Vec;

/**
 * A small upright cross on both panels of a seam, clear of every opening, to line them up by.
 *
 * @param at its middle on the blank
 * @param arm length of each of its four arms in mm
 */
public record WitnessMark(Vec at, double arm) {}
