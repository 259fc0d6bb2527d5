package slabwright.work.top;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import slabwright.site.Exposure;
import slabwright.work.book.Figure;
import slabwright.work.book.ShopBook;

/**
 * A counter top or a flight of steps as a job apart from the floor: its hours are in no figure of
 * the floor's.
 *
 * @param passes grit by grit, in the shop book's order
 * @param time hours of one person
 * @param dust kg
 */
public record TopPlan(
    TopTakeoff foot, List<TopPass> passes, Figure<Duration> time, Figure<Double> dust) {
  /** Common practice; to be said with every such job. */
  public static final String CAUTION =
      "A grinder at a counter throws its dust at face height: shroud, vacuum and the respirator"
          + " that the silica rule asks for. Prop a top before its edge is ground.";

  /** What is not in the figures. */
  public static final String LEFT_OUT =
      "Risers are not counted, since their height is not on the plan. Edges are taken at the shop's"
          + " rate for hand grinding; thin ones take longer: time the first.";

  public TopPlan {
    passes = List.copyOf(passes);
  }

  /** Plans the passes for the exposure wanted on the floor area it stands in. */
  public static TopPlan of(TopTakeoff foot, Optional<Exposure> wanted, ShopBook book) {
    if (wanted.isEmpty()) {
      String why = "choose the aggregate exposure wanted first";
      return new TopPlan(foot, List.of(), Figure.refused(why), Figure.refused(why));
    }
    List<TopPass> passes =
        book.grits().stream()
            .filter(g -> g.serves(wanted.get()))
            .map(g -> TopPass.of(g, foot))
            .toList();
    return new TopPlan(foot, passes, time(passes), dust(passes));
  }

  private static Figure<Duration> time(List<TopPass> passes) {
    return Figure.all(passes.stream().map(TopPass::time).toList())
        .map(l -> l.stream().reduce(Duration.ZERO, Duration::plus));
  }

  private static Figure<Double> dust(List<TopPass> passes) {
    return Figure.all(passes.stream().map(TopPass::dust).toList())
        .map(l -> l.stream().mapToDouble(d -> d).sum());
  }
}
