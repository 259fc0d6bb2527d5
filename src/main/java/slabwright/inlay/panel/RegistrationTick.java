package slabwright.inlay.panel;

import slabwright.shape.Vec;

/**
 * A cross on the floor, put down before the first colour, and on every film that reaches it: all
 * stencils are laid to the same ones.
 *
 * @param number from 1, by panels and round each
 * @param at its middle on the blank
 */
public record RegistrationTick(int number, Vec at) {
  /** Length of each of its four arms, mm. */
  public static final double ARM = 6;

  /** No opening of any stencil comes nearer to it than this, mm. */
  public static final double CLEAR = 10;

  /** How many a panel needs, not in line. */
  public static final int NEEDED = 3;
}
