package slabwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import slabwright.site.job.JobCrew;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopTool;
import slabwright.work.days.JobTool;
import slabwright.work.rule.SilicaRule;
import slabwright.work.step.ToolKind;

/**
 * The tools of a job one by one: those of the shop book, as many of each kind as the plan says. A
 * kind that neither names is taken as one, so that it is at least not used twice at once.
 */
public final class JobTools {
  private final ShopBook book;
  private final JobCrew crew;

  private JobTools(ShopBook book, JobCrew crew) {
    this.book = book;
    this.crew = crew;
  }

  public static List<JobTool> of(ShopBook book, JobCrew crew) {
    JobTools tools = new JobTools(book, crew);
    return Stream.of(ToolKind.values()).flatMap(k -> tools.of(k).stream()).toList();
  }

  /** Kinds that a plan counts and no step knows: a slip of the pen would count for nothing. */
  static List<String> unknown(JobCrew crew) {
    List<String> known = Stream.of(ToolKind.values()).map(ToolKind::word).toList();
    return crew.tools().keySet().stream().filter(k -> !known.contains(word(k))).toList();
  }

  /** As in the shop book: a plan may write hyphens. */
  private static String word(String written) {
    return written.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
  }

  private List<JobTool> of(ToolKind kind) {
    List<JobTool> owned =
        book.tools().stream().filter(t -> t.is(kind)).flatMap(JobTools::each).toList();
    int count =
        crew.tools().entrySet().stream()
            .filter(e -> word(e.getKey()).equals(kind.word()))
            .mapToInt(Map.Entry::getValue)
            .max()
            .orElse(Math.max(1, owned.size()));
    List<JobTool> all = new ArrayList<>(owned.subList(0, Math.min(count, owned.size())));
    for (int i = all.size(); i < count; i++) {
      String name = count == 1 ? kind.word() : kind.word() + " " + (i + 1);
      all.add(new JobTool(name, kind, ShopTool.called(name, kind), OptionalDouble.empty()));
    }
    return all;
  }

  /**
   * The pieces that the shop has of one tool.
   *
   * @throws java.util.NoSuchElementException when the book does not say of what kind it is
   */
  public static Stream<JobTool> each(ShopTool tool) {
    int count = tool.count().maybe().orElse(1);
    ToolKind kind = tool.kind().maybe().orElseThrow();
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> count == 1 ? tool.name() : tool.name() + " (" + i + ")")
        .map(name -> new JobTool(name, kind, ShopTool.called(name, kind), airflow(tool)));
  }

  /**
   * What all fans of a job move together where that is less than an airflow on its plan, m³/min;
   * empty where they do, or where one of them is not known.
   */
  public static OptionalDouble fansBelow(double airflow, WorkPlan plan) {
    OptionalDouble fans = fans(plan.book(), plan.site().job().crew());
    return fans.isPresent() && fans.getAsDouble() < airflow ? fans : OptionalDouble.empty();
  }

  /** What all fans of a job move together, m³/min; empty where one of them is not known. */
  private static OptionalDouble fans(ShopBook book, JobCrew crew) {
    List<JobTool> fans = of(book, crew).stream().filter(t -> t.kind() == ToolKind.FAN).toList();
    return fans.isEmpty() || fans.stream().anyMatch(f -> f.airflow().isEmpty())
        ? OptionalDouble.empty()
        : OptionalDouble.of(fans.stream().mapToDouble(f -> f.airflow().getAsDouble()).sum());
  }

  /** What it pulls, or asks of its vacuum; a hand grinder asks by its wheel. */
  private static OptionalDouble airflow(ShopTool tool) {
    if (tool.is(ToolKind.HAND_GRINDER)) {
      return tool.wheelMm()
          .maybe()
          .map(w -> OptionalDouble.of(SilicaRule.shroudAirflow(w)))
          .orElse(OptionalDouble.empty());
    }
    return tool.airflow().maybe().map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
