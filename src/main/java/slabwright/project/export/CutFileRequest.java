package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.cutfile.CutStop;
import slabwright.project.SiteResult;
import slabwright.project.TaskProgress;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.store.GraphicFiles;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * All that is needed to make cut files off the asking thread. Graphics are read afresh, so that
 * what is cut is what lies on disk and was accepted.
 *
 * @param plan the file that graphics are relative to
 * @param only the inlay's id; empty for all inlays of the site
 * @param lettersAccepted whether letters in a substitute font are accepted
 * @param words of the bundle's papers
 * @param clock says the moment they are made
 */
public record CutFileRequest(
    Site site,
    Path plan,
    Optional<String> only,
    boolean lettersAccepted,
    Words words,
    Clock clock) {
  private record Wanted(AreaResult in, PlacedInlay placed) {}

  /** The files; refused with the gravest reason when any inlay must not be cut. */
  public Result<StagedFiles> files(TaskProgress steps) throws IOException {
    Result<SiteResult> work = SiteResult.compute(site, plan, steps::isCancelled);
    if (work instanceof Result.Refused<SiteResult> bad) {
      return Result.refused(bad.refusals());
    }
    steps.report(0.5);
    SiteResult done = work.orThrow();
    List<Wanted> wanted = new ArrayList<>();
    for (AreaResult area : done.areas()) {
      for (PlacedInlay.Placing.Refused r : area.refused()) {
        if (isWanted(r.inlay())) {
          return Result.refused(
              Message.of("project.export.inlay-refused", r.inlay().name(), r.message()));
        }
      }
      area.inlays().stream()
          .filter(i -> isWanted(i.inlay()))
          .forEach(i -> wanted.add(new Wanted(area, i)));
    }
    Optional<CutStop> stop = wanted.isEmpty() ? Optional.empty() : stop(wanted);
    return stop.isPresent() ? Result.refused(stop.get().sentence()) : made(wanted, done, steps);
  }

  private boolean isWanted(Inlay i) {
    return only.isEmpty() || only.get().equals(i.id());
  }

  private Optional<CutStop> stop(List<Wanted> wanted) {
    return wanted.stream()
        .flatMap(w -> stops(w.placed()).stream())
        .min((a, b) -> a.kind().compareTo(b.kind()));
  }

  private List<CutStop> stops(PlacedInlay i) {
    List<CutStop> all =
        new ArrayList<>(CutStop.of(i.inlay().name(), i.artwork(), i.plan(), i.inlay().spec()));
    if (lettersAccepted) {
      all.removeIf(s -> s.kind() == CutStop.Kind.LETTERS);
    }
    if (GraphicFiles.isChanged(i.inlay(), plan)) {
      all.add(CutStop.changedOnDisk(i.inlay().name()));
    }
    return all;
  }

  private Result<StagedFiles> made(List<Wanted> wanted, SiteResult done, TaskProgress steps)
      throws IOException {
    if (wanted.isEmpty()) {
      return Result.refused(Message.of("project.export.nothing-to-cut"));
    }
    StagedFiles staged = new StagedFiles();
    FileSink into = staged.folder(SheetRequest.folderName(done));
    NamedFiles files = new NamedFiles(done, words, clock, staged.faults());
    for (Wanted w : wanted) {
      steps.report(0.6);
      PlacedInlay i = w.placed();
      FileSink folder = into.folder(files.cutFolder(w.in(), i));
      files.cut(w.in(), i).write(folder, i.plan(), i.inlay().spec());
    }
    return Result.ok(staged);
  }
}
