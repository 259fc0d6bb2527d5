package slabwright.sheets.plan;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Colour;
import slabwright.drawing.TextStyle;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Words that want a place on a plan.
 *
 * @param about the point of the model they speak of
 * @param wishes middles to try first, paper mm
 * @param reach how far they may move, paper mm at type size 1
 * @param near how near the point they need no leader, paper mm
 * @param backing what is laid behind them
 * @param off regions of the model that the words are not about; they lie outside of them where
 *     there is room
 */
@RecordBuilder
public record PlanLabel(
    Vec about,
    List<Vec> wishes,
    String words,
    TextStyle style,
    double reach,
    double near,
    Optional<Colour> backing,
    List<Region> off)
    implements PlanLabelBuilder.With {
  public PlanLabel {
    wishes = List.copyOf(wishes);
    off = List.copyOf(off);
  }

  public static PlanLabel of(Vec about, String words, TextStyle style) {
    return new PlanLabel(about, List.of(), words, style, 45, 1.5, Optional.empty(), List.of());
  }

  public PlanLabel wishing(List<Vec> middles) {
    return withWishes(middles);
  }

  public PlanLabel nearBy(double mm) {
    return withNear(mm);
  }

  public PlanLabel on(Colour colour) {
    return withBacking(Optional.of(colour));
  }
}
