package slabwright.work.top;

import java.time.Duration;
import slabwright.work.book.Figure;
import slabwright.work.book.GritRate;
import slabwright.work.book.Hours;

/**
 * One grit over a top or a flight of steps, by hand.
 *
 * @param face hours of one person on the upper faces
 * @param edge hours of one person on the edges
 * @param dust kg taken off both
 */
public record TopPass(
    String grit, Figure<Duration> face, Figure<Duration> edge, Figure<Double> dust) {

  static TopPass of(GritRate grit, TopFoot foot) {
    return new TopPass(
        grit.name(),
        Hours.of(foot.face(), grit.handRate()),
        Hours.of(foot.edgeArea(), grit.handRate()),
        Hours.dust(foot.face() + foot.edgeArea(), grit.dust()));
  }

  public Figure<Duration> time() {
    return Hours.plus(face, edge);
  }
}
