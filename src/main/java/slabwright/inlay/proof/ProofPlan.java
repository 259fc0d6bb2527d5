package slabwright.inlay.proof;

import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;

/**
 * What the shop should have drawn.
 *
 * <p>Frame: mm from the blank's top-left corner as read, x right, y down.
 *
 * @param openings what is cut out
 * @param blank the vinyl's outer rectangle
 * @param panels the pieces the blank is cut in, overlaps included; may be empty or the blank alone
 */
public record ProofPlan(Region openings, Bounds blank, List<Bounds> panels) {
  public ProofPlan {
    panels = List.copyOf(panels);
  }

  public static ProofPlan whole(Region openings, Bounds blank) {
    return new ProofPlan(openings, blank, List.of());
  }
}
