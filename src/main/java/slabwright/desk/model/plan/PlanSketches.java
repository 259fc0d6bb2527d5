package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Signal;
import slabwright.desk.model.Wish;
import slabwright.project.plan.LeftWork;
import slabwright.project.plan.OpenedPlan;
import slabwright.project.plan.PlanFiles;
import slabwright.site.Site;
import slabwright.units.Result;

/**
 * Sketches of the plans that one can go on with. A plan that can't be read has none; the person is
 * told why when it is opened.
 */
public final class PlanSketches implements AutoCloseable {
  /**
   * What is known, by the plan's file or folder.
   *
   * @param left what was left of a plan
   * @param saved what lies in its file
   */
  public record Sketches(Map<Path, PlanSketch> left, Map<Path, PlanSketch> saved) {
    static final Sketches NONE = new Sketches(Map.of(), Map.of());
  }

  private final Computed<PlanList.Found, Sketches> sketches;

  /**
   * Follows the list.
   *
   * @param home the asking thread, as an executor
   */
  public PlanSketches(PlanList list, Executor home) {
    // Without a picture the list is as useful: a fault here is nobody's worry.
    sketches =
        new Computed<PlanList.Found, Sketches>(
                Computed.Pace.hurried("sketches"), home, PlanSketches::draw, why -> {})
            .follow(() -> list.found().map(Wish::of).orElseGet(Wish::asItIs), list.changed());
  }

  public Signal changed() {
    return sketches.changed();
  }

  /** Those that were last drawn. */
  public Sketches known() {
    return sketches.value().orElse(Sketches.NONE);
  }

  public boolean isWorking() {
    return sketches.isBusy();
  }

  private static Sketches draw(PlanList.Found plans) {
    Map<Path, PlanSketch> saved = new HashMap<>();
    plans.saved().forEach(p -> put(p.file(), saved(p.file()), saved));
    Map<Path, PlanSketch> left = new HashMap<>();
    plans.left().forEach(p -> put(p.plan(), p.work().map(LeftWork::site), left));
    return new Sketches(left, saved);
  }

  private static Optional<Site> saved(Path plan) {
    return PlanFiles.open(plan) instanceof Result.Ok<OpenedPlan> read
        ? Optional.of(read.value().saved())
        : Optional.empty();
  }

  private static void put(Path plan, Optional<Site> site, Map<Path, PlanSketch> all) {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException();
    }
    site.map(PlanSketch::of).filter(s -> !s.bounds().isEmpty()).ifPresent(s -> all.put(plan, s));
  }

  @Override
  public void close() {
    sketches.close();
  }
}
