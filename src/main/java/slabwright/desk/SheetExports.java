package slabwright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.inlay.CutCard;
import slabwright.desk.cards.sheets.PaperCard;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.Desk;
import slabwright.inlay.PlacedInlay;
import slabwright.project.SiteResult;
import slabwright.project.TaskProgress;
import slabwright.project.export.CutFileRequest;
import slabwright.project.export.ExportFormat;
import slabwright.project.export.SavedFiles;
import slabwright.project.export.SheetExport;
import slabwright.project.export.SheetRequest;
import slabwright.project.export.StagedFiles;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.Parsed;

/**
 * Writes the pages or the cut files into a folder the person chooses, or sends pages to a printer;
 * all of it off the screen's thread.
 */
final class SheetExports implements PaperCard.SheetActions, CutCard.CutActions {
  private final DeskModel parts;
  private final Desk desk;
  private final Chooser chooser;
  private final Printing printing;

  SheetExports(DeskModel parts, Chooser chooser, Printing printing) {
    this.parts = parts;
    this.desk = parts.bench().desk();
    this.chooser = chooser;
    this.printing = printing;
  }

  private boolean hasFloor() {
    if (desk.site().areas().isEmpty()) {
      desk.refuse("Draw a floor first; there is nothing on the sheets yet.");
      return false;
    }
    return true;
  }

  @Override
  public void save(ExportFormat form) {
    Optional<SheetRequest> order = hasFloor() ? parts.pages().order() : Optional.empty();
    order
        .flatMap(o -> chooser.folder("Folder for " + form.words()))
        .ifPresent(
            folder ->
                write(
                    "Saving " + form.words(),
                    folder,
                    steps -> SheetExport.of(form, order.get(), steps)));
  }

  @Override
  public void save(Optional<String> only, boolean lettersAccepted) {
    Optional<CutFileRequest> order =
        parts.keeper().plan().map(p -> new CutFileRequest(desk.site(), p, only, lettersAccepted));
    order
        .flatMap(o -> chooser.folder("Folder for the cut files"))
        .ifPresent(folder -> write("Saving the cut files", folder, order.get()::files));
  }

  private void write(String words, Path folder, BackgroundTasks.TaskBody<StagedFiles> make) {
    parts
        .errands()
        .run(
            new BackgroundTasks.BackgroundTask<>(
                words,
                "Could not write into " + folder + "; choose another folder",
                steps -> written(make.run(steps), folder, steps),
                saved -> desk.announce(saved.words(folder))));
  }

  private static Parsed<SavedFiles> written(
      Parsed<StagedFiles> made, Path folder, TaskProgress steps) throws java.io.IOException {
    if (made instanceof Parsed.Bad<StagedFiles> bad) {
      return Parsed.bad(bad.why());
    }
    StagedFiles files = made.orThrow();
    int replaced = files.write(folder, steps, SheetExport.MADE);
    return Parsed.ok(new SavedFiles(files.names(), replaced));
  }

  @Override
  public boolean changesLetters(Optional<String> only) {
    return parts.job().done().stream()
        .flatMap(d -> d.areas().stream())
        .flatMap(a -> a.inlays().stream())
        .filter(i -> only.isEmpty() || only.get().equals(i.inlay().id()))
        .map(PlacedInlay::artwork)
        .flatMap(a -> a.warnings().stream())
        .anyMatch(w -> w.kind().changesLetters());
  }

  @Override
  public void print() {
    Optional<SheetRequest> order = hasFloor() ? parts.pages().order() : Optional.empty();
    if (order.isEmpty()) {
      return;
    }
    if (!printing.isReady()) {
      desk.refuse("No printer is set up on this computer; save a PDF instead.");
      return;
    }
    printing
        .ask()
        .ifPresent(
            job ->
                parts
                    .errands()
                    .run(
                        new BackgroundTasks.BackgroundTask<>(
                            "Printing",
                            "The sheets could not be printed",
                            steps -> printed(job, order.get(), steps),
                            n -> desk.announce(n + " pages were sent to the printer"))));
  }

  private static Parsed<Integer> printed(
      Printing.PrintRun job, SheetRequest order, TaskProgress steps) throws java.io.IOException {
    Parsed<SiteResult> work = order.compute(steps);
    if (work instanceof Parsed.Bad<SiteResult> bad) {
      job.cancel();
      return Parsed.bad(bad.why());
    }
    List<PrintedPage> pages = order.pages(work.orThrow());
    if (!pages.stream().allMatch(job::fits)) {
      job.cancel();
      return Parsed.bad(
          "The sheets are "
              + order.paper().word()
              + ", larger than the paper in the printer; choose that paper when printing, or"
              + " another one for the sheets.");
    }
    boolean whole = false;
    try {
      for (int i = 0; i < pages.size(); i++) {
        steps.report((double) i / pages.size());
        if (!job.page(pages.get(i))) {
          return Parsed.bad("The printer took only " + i + " pages; look at it and print again.");
        }
      }
      whole = true;
    } finally {
      if (!whole) {
        job.cancel();
      }
    }
    job.end();
    return Parsed.ok(pages.size());
  }
}
