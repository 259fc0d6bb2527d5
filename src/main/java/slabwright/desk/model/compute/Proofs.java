package slabwright.desk.model.compute;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Signal;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.proof.ProofBatch;
import slabwright.inlay.proof.ProofLimits;
import slabwright.inlay.proof.ProofPlan;
import slabwright.inlay.proof.ProofReport;
import slabwright.inlay.proof.ProofVerdict;
import slabwright.inlay.proof.ReturnedFiles;
import slabwright.inlay.proof.ReturnedPage;
import slabwright.inlay.proof.ShadingMeaning;
import slabwright.inlay.stencil.Stencil;
import slabwright.project.TaskProgress;
import slabwright.site.Inlay;
import slabwright.units.Message;
import slabwright.units.Result;

/** Checks drawings that came back from the sign shop against the plan, off the asking thread. */
public final class Proofs {
  /**
   * What is asked.
   *
   * @param stencil from 1, in laying order; 0 lets it be found
   * @param page of each PDF, from 1; 0 is every page
   * @param shading what shading means in the drawing, as the person says
   */
  public record Question(
      Inlay inlay, List<Path> files, int stencil, int page, ShadingMeaning shading) {
    public Question {
      files = List.copyOf(files);
    }

    Question with(int otherStencil, int otherPage, ShadingMeaning other) {
      return new Question(inlay, files, otherStencil, otherPage, other);
    }

    /** Whether the inlay is cut the same now; where it lies does not matter. */
    private boolean isOf(Inlay now) {
      return now.id().equals(inlay.id())
          && now.graphic().equals(inlay.graphic())
          && now.accepted().equals(inlay.accepted())
          && now.width().equals(inlay.width())
          && now.spec().equals(inlay.spec());
    }
  }

  /**
   * What came of it: of several stencils that came back, the one with the gravest verdict.
   *
   * @param stencil from 1, in laying order
   * @param colours of the stencils, in laying order
   * @param pages how many pages came back
   */
  public record CheckedProof(
      Question asked,
      int stencil,
      ProofPlan plan,
      ProofReport report,
      List<String> colours,
      int pages) {
    /** Whether the drawing is shaded, so that it matters what shading means. */
    public boolean asksForShading() {
      return asked.shading() != ShadingMeaning.UNKNOWN
          || report.notes().stream()
              .anyMatch(
                  n ->
                      n instanceof slabwright.inlay.proof.ProofNote.PolarityCannotBeTold p
                          && p.shaded());
    }
  }

  private final Desk desk;
  private final SelectedAreaResults answers;
  private final BackgroundTasks errands;
  private final Signal changed = new Signal();
  private final Map<String, CheckedProof> seen = new HashMap<>();

  public Proofs(Desk desk, SelectedAreaResults answers, BackgroundTasks errands) {
    this.desk = desk;
    this.answers = answers;
    this.errands = errands;
  }

  /** Given when a drawing has been checked. */
  public Signal changed() {
    return changed;
  }

  /** What was last seen of an inlay; empty when it would be cut otherwise now. */
  public Optional<CheckedProof> of(Inlay now) {
    return Optional.ofNullable(seen.get(now.id())).filter(s -> s.asked().isOf(now));
  }

  /** Checks files; which stencil and which panels they show is found. */
  public void check(Inlay inlay, List<Path> files) {
    ask(new Question(inlay, files, 0, 0, ShadingMeaning.UNKNOWN));
  }

  /** The same drawing, and what shading means in it. */
  public void shading(CheckedProof of, ShadingMeaning means) {
    ask(of.asked().with(of.asked().stencil(), of.asked().page(), means));
  }

  /** The same files against one stencil alone; 0 lets it be found. */
  public void stencil(CheckedProof of, int number) {
    ask(of.asked().with(number, of.asked().page(), of.asked().shading()));
  }

  /** One page of the same files alone; 0 is every page. */
  public void page(CheckedProof of, int number) {
    ask(of.asked().with(of.asked().stencil(), number, of.asked().shading()));
  }

  private void ask(Question q) {
    Optional<InlayPlan> plan =
        answers.inlay(q.inlay().id()).filter(a -> q.isOf(a.inlay())).flatMap(ComputedInlay::plan);
    if (plan.isEmpty()) {
      desk.refuse(Message.of("desk.model.proofs.inlay-not-worked-out"));
      return;
    }
    errands.run(
        new BackgroundTasks.BackgroundTask<>(
            Message.of("desk.model.proofs.checking"),
            why -> Message.of("desk.model.proofs.cannot-be-read", why),
            steps -> check(q, plan.get(), steps),
            this::take));
  }

  private static Result<CheckedProof> check(Question q, InlayPlan plan, TaskProgress steps) {
    Result<ReturnedFiles> read = ReturnedFiles.read(q.files(), OptionalInt.empty());
    if (read instanceof Result.Refused<ReturnedFiles> refused) {
      return Result.refused(refused.refusals());
    }
    List<ReturnedPage> pages = read.orThrow().pages();
    steps.report(0.3);
    List<ReturnedPage> asked =
        q.page() == 0 ? pages : pages.stream().filter(p -> p.page() == q.page()).toList();
    int count = plan.stencils().stencils().size();
    List<ProofBatch.Wanted> wanted =
        IntStream.rangeClosed(1, count)
            .filter(n -> q.stencil() == 0 || q.stencil() == n)
            .mapToObj(n -> ProofBatch.Wanted.of(plan, n))
            .toList();
    List<ProofBatch.Judged> judged =
        ProofBatch.run(
            wanted,
            new ReturnedFiles(asked, read.orThrow().unread()),
            q.shading(),
            ProofLimits.USUAL);
    ProofVerdict gravest =
        ProofVerdict.gravest(judged.stream().map(j -> j.report().verdict()).toList());
    ProofBatch.Judged shown =
        judged.stream()
            .filter(j -> j.report().verdict() == gravest)
            .findFirst()
            .orElse(judged.get(0));
    List<String> colours = plan.stencils().stencils().stream().map(Stencil::colour).toList();
    return Result.ok(
        new CheckedProof(q, shown.stencil(), shown.plan(), shown.report(), colours, pages.size()));
  }

  private void take(CheckedProof s) {
    seen.put(s.asked().inlay().id(), s);
    changed.fire();
  }
}
