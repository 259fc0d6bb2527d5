package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;

/**
 * Inks in the order they are laid, later over earlier.
 *
 * @param bounds what the drawing covers: the whole paper, or the inks' points
 */
public record Drawing(CoordinateFrame frame, Bounds bounds, List<Ink> inks) {
  public Drawing {
    inks = List.copyOf(inks);
  }

  /** A drawing that covers what its inks reach. */
  public static Drawing of(CoordinateFrame frame, List<? extends Ink> inks) {
    Bounds reach = inks.stream().map(Ink::reach).reduce(Bounds.EMPTY, Bounds::including);
    return new Drawing(frame, reach, List.copyOf(inks));
  }

  /** A drawing on a whole paper of the size in millimetres. */
  public static Drawing paper(double width, double height, List<? extends Ink> inks) {
    return new Drawing(CoordinateFrame.PAPER, new Bounds(0, 0, width, height), List.copyOf(inks));
  }

  /** This drawing with the other of the same frame laid over it. */
  public Drawing under(Drawing over) {
    if (frame != over.frame) {
      throw new IllegalArgumentException("drawings of two frames cannot be laid on each other");
    }
    List<Ink> both = new ArrayList<>(inks);
    both.addAll(over.inks);
    return new Drawing(frame, bounds.including(over.bounds), both);
  }

  /** What painters draw, within the drawing's own bounds. */
  public List<PrimitiveInk> plain() {
    return plain(bounds);
  }

  /**
   * What painters draw, patterns made only near the window (paper millimetres).
   *
   * @throws IllegalStateException when the drawing has not been placed on paper
   */
  public List<PrimitiveInk> plain(Bounds window) {
    if (frame != CoordinateFrame.PAPER) {
      throw new IllegalStateException("place the drawing on paper before painting it");
    }
    List<PrimitiveInk> all = new ArrayList<>();
    inks.forEach(ink -> all.addAll(ink.parts(window)));
    return all;
  }

  /** Paints what lies near the window (paper millimetres), in order. */
  public void paintOn(Painter painter, Bounds window) {
    plain(window).forEach(part -> part.paintOn(painter));
  }
}
