package slabwright.work.top;

import java.time.Duration;
import slabwright.work.book.Figure;
import slabwright.work.book.GritRate;
import slabwright.work.book.RateArithmetic;

/**
 * One grit over a top or a flight of steps, by hand.
 *
 * @param face hours of one person on the upper faces
 * @param edge hours of one person on the edges
 * @param dust kg taken off both
 */
public record TopPass(
    String grit, Figure<Duration> face, Figure<Duration> edge, Figure<Double> dust) {

  static TopPass of(GritRate grit, TopTakeoff foot) {
    return new TopPass(
        grit.name(),
        RateArithmetic.time(foot.face(), grit.handRate()),
        RateArithmetic.time(foot.edgeArea(), grit.handRate()),
        RateArithmetic.dust(foot.face() + foot.edgeArea(), grit.dust()));
  }

  public Figure<Duration> time() {
    return RateArithmetic.sum(face, edge);
  }
}
