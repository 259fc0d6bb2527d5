package slabwright.work.top;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import slabwright.site.Exposure;
import slabwright.units.Message;
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
  public static final Message CAUTION = Message.of("work.top-plan.a-grinder-at-a-counter");

  /** What is not in the figures. */
  public static final Message LEFT_OUT = Message.of("work.top-plan.risers-are-not-counted-since");

  public TopPlan {
    passes = List.copyOf(passes);
  }

  /** Plans the passes for the exposure wanted on the floor area it stands in. */
  public static TopPlan of(TopTakeoff foot, Optional<Exposure> wanted, ShopBook book) {
    if (wanted.isEmpty()) {
      Message why = Message.of("work.top-plan.choose-the-aggregate-exposure");
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
