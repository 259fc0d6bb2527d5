package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import slabwright.desk.model.Computed;
import slabwright.desk.model.Signal;
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
   * Which plans.
   *
   * @param left files, or folders of untitled plans, of which what was left is drawn
   * @param saved files
   */
  private record Plans(List<Path> left, List<Path> saved) {}

  private final Computed<Plans, Map<Path, PlanSketch>> sketches;

  /**
   * None yet.
   *
   * @param home the asking thread, as an executor
   */
  public PlanSketches(Executor home) {
    // Without a picture the list is as useful: a fault here is nobody's worry.
    sketches =
        new Computed<>(Computed.Pace.hurried("sketches"), home, PlanSketches::draw, why -> {});
  }

  /** Draws these. */
  public void ask(List<Path> left, List<Path> saved) {
    sketches.ask(new Plans(List.copyOf(left), List.copyOf(saved)));
  }

  public Signal changed() {
    return sketches.changed();
  }

  /** Those that were last drawn, by their plans. */
  public Map<Path, PlanSketch> known() {
    return sketches.value().orElse(Map.of());
  }

  public boolean isWorking() {
    return sketches.isBusy();
  }

  private static Map<Path, PlanSketch> draw(Plans plans) {
    Map<Path, PlanSketch> all = new HashMap<>();
    plans.saved().forEach(p -> put(p, saved(p), all));
    plans.left().forEach(p -> put(p, PlanFiles.leftWork(p).map(LeftWork::site), all));
    return all;
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
