package slabwright.sheets;

import java.util.List;
import java.util.Optional;
import slabwright.drawing.Colour;
import slabwright.drawing.TextStyle;
import slabwright.shape.Vec;

/**
 * Words that want a place on a plan.
 *
 * @param about the point of the model they speak of
 * @param wishes middles to try first, paper mm
 * @param reach how far they may move, paper mm at type size 1
 * @param near how near the point they need no leader, paper mm
 * @param backing what is laid behind them
 */
record PlanWords(
    Vec about,
    List<Vec> wishes,
    String words,
    TextStyle style,
    double reach,
    double near,
    Optional<Colour> backing) {
  PlanWords {
    wishes = List.copyOf(wishes);
  }

  static PlanWords of(Vec about, String words, TextStyle style) {
    return new PlanWords(about, List.of(), words, style, 45, 1.5, Optional.empty());
  }

  PlanWords wishing(List<Vec> middles) {
    return new PlanWords(about, middles, words, style, reach, near, backing);
  }

  PlanWords nearBy(double mm) {
    return new PlanWords(about, wishes, words, style, reach, mm, backing);
  }

  PlanWords on(Colour colour) {
    return new PlanWords(about, wishes, words, style, reach, near, Optional.of(colour));
  }
}
