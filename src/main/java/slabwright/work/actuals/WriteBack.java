package slabwright.work.actuals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.book.BookValueReader;
import slabwright.work.book.ShopBookText;
import slabwright.work.coat.CoatPlan;
import slabwright.work.prep.PrepStep;

/**
 * What a finished job really took, turned into new values of the shop book; nothing is written
 * here. The floor is the plan's own: only what was poured and how long it took is asked for.
 */
public final class WriteBack {
  /** What can be written back. */
  public enum ActualKind {
    /** A product's volume over all its coats → coverage. */
    USED("used"),
    /** Time to lay all coats of a product without cutting in → laying rate of one person. */
    LAID("laid"),
    /** The machine's time on one grinding pass → machine rate. */
    MACHINE("machine"),
    /** One person's time by hand on one grinding pass → hand rate. */
    HAND("hand");

    private final String word;

    ActualKind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    /** What the amount is of. */
    public Message asks() {
      return switch (this) {
        case USED -> Message.of("work.write-back.volume-poured-all-coats");
        case LAID -> Message.of("work.write-back.time-to-lay-all-coats");
        case MACHINE -> Message.of("work.write-back.machine-time-of-the-pass");
        case HAND -> Message.of("work.write-back.one-persons-time-by-hand");
      };
    }
  }

  /**
   * One thing that was measured.
   *
   * @param name of the product or the grinding pass in the shop book
   * @param amount a volume or a time as written in the book
   */
  public record Actual(ActualKind what, String name, String amount) {}

  /**
   * One value before and after.
   *
   * @param old as it stands in the book, {@code ?} when it does not
   */
  public record Change(String kind, String name, String key, String old, String now) {
    /** The change in words. */
    public Message sentence() {
      return Message.of("work.write-back.of", key, name, old, now);
    }
  }

  /** The new text with what changed in it. */
  public record NewBook(ShopBookText text, List<Change> changes) {
    public NewBook {
      changes = List.copyOf(changes);
    }
  }

  private final WorkPlan plan;
  private final RateWriter actuals;

  private WriteBack(WorkPlan plan) {
    this.plan = plan;
    this.actuals = new RateWriter(plan.site().units());
  }

  /** Everything that can be asked for after a plan's job. */
  public static List<Actual> askable(WorkPlan plan) {
    List<Actual> all = new ArrayList<>();
    WriteBack back = new WriteBack(plan);
    for (ActualKind what : ActualKind.values()) {
      plan.book().products().forEach(p -> all.add(new Actual(what, p.id(), "")));
      plan.book().grits().forEach(g -> all.add(new Actual(what, g.name(), "")));
    }
    return all.stream().filter(a -> back.floor(a) > 0).toList();
  }

  /** The book with all that was measured; bad at the first that can't be used. */
  public static Result<NewBook> of(WorkPlan plan, ShopBookText book, List<Actual> measured) {
    WriteBack back = new WriteBack(plan);
    ShopBookText text = book;
    List<Change> changes = new ArrayList<>();
    for (Actual a : measured) {
      Result<ShopBookText> next = back.written(text, a);
      if (next instanceof Result.Refused<ShopBookText> bad) {
        return Result.refused(bad.refusals());
      }
      changes.add(change(book, next.orThrow(), a));
      text = next.orThrow();
    }
    return Result.ok(new NewBook(text, changes));
  }

  private static Change change(ShopBookText before, ShopBookText after, Actual a) {
    String kind = a.what() == ActualKind.USED || a.what() == ActualKind.LAID ? "product" : "grit";
    String key =
        switch (a.what()) {
          case USED -> "coverage";
          case LAID -> RateWriter.LAYING_RATE;
          case MACHINE -> RateWriter.MACHINE_RATE;
          case HAND -> RateWriter.HAND_RATE;
        };
    return new Change(
        kind,
        a.name(),
        key,
        before.value(kind, a.name(), key).orElse("?"),
        after.value(kind, a.name(), key).orElse("?"));
  }

  private Result<ShopBookText> written(ShopBookText text, Actual a) {
    double floor = floor(a);
    if (floor <= 0) {
      return Result.refused(
          Message.of("work.write-back.the-plan-has-no-floor", a.what().word(), a.name()));
    }
    return switch (a.what()) {
      case USED ->
          BookValueReader.volume(a.amount()).flatMap(v -> coverage(text, a.name(), floor, v));
      case LAID ->
          BookValueReader.time(a.amount())
              .map(t -> actuals.layingRate(text, a.name(), floor, people(a.name()), t));
      case MACHINE ->
          BookValueReader.time(a.amount()).map(t -> actuals.machineRate(text, a.name(), floor, t));
      case HAND ->
          BookValueReader.time(a.amount()).map(t -> actuals.handRate(text, a.name(), floor, t));
    };
  }

  private Result<ShopBookText> coverage(ShopBookText text, String product, double mm2, double mm3) {
    Optional<Double> loss = coats(product).get(0).product().spread().loss().maybe();
    return loss.isEmpty()
        ? Result.refused(Message.of("work.write-back.the-loss-of-is-not", product))
        : Result.ok(actuals.coverage(text, product, mm2, 1, mm3, loss.get()));
  }

  /** Every place a product has in a finish, for an area may take it twice. */
  private List<CoatPlan> coats(String product) {
    return plan.areas().stream()
        .flatMap(a -> a.coats().stream())
        .filter(c -> c.product().id().equals(product))
        .toList();
  }

  private int people(String product) {
    return coats(product).get(0).job().people().maybe().orElse(1);
  }

  /** Floor done in mm², every coat counted. */
  private double floor(Actual a) {
    return switch (a.what()) {
      case USED -> coats(a.name()).stream().mapToDouble(WriteBack::covered).sum();
      case LAID ->
          coats(a.name()).stream()
              .filter(c -> c.product().laying().rate().isKnown())
              .mapToDouble(WriteBack::covered)
              .sum();
      case MACHINE -> steps(a.name()).stream().mapToDouble(PrepStep::machine).sum();
      case HAND -> steps(a.name()).stream().mapToDouble(PrepStep::hand).sum();
    };
  }

  private static double covered(CoatPlan c) {
    return c.job().mm2() * c.job().coats();
  }

  private List<PrepStep> steps(String grit) {
    return plan.areas().stream()
        .map(AreaWorkPlan::prep)
        .flatMap(p -> p.steps().stream())
        .filter(s -> s.subject().grit().filter(grit::equals).isPresent())
        .toList();
  }
}
