package slabwright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import slabwright.desk.cards.CutCard;
import slabwright.desk.cards.PaperCard;
import slabwright.desk.model.CutOrder;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskParts;
import slabwright.desk.model.Errands;
import slabwright.desk.model.FileBundle;
import slabwright.desk.model.Job;
import slabwright.desk.model.SavedFiles;
import slabwright.desk.model.SheetBundles;
import slabwright.desk.model.SheetForm;
import slabwright.desk.model.SheetOrder;
import slabwright.inlay.PlacedInlay;
import slabwright.sheets.Page;
import slabwright.site.Refusal;
import slabwright.units.Parsed;

/**
 * Writes the pages or the cut files into a folder the person chooses, or sends pages to a printer;
 * all of it off the screen's thread.
 */
final class SheetExports implements PaperCard.Exports, CutCard.Cuts {
  private final DeskParts parts;
  private final Desk desk;
  private final Chooser chooser;
  private final Printing printing;

  SheetExports(DeskParts parts, Chooser chooser, Printing printing) {
    this.parts = parts;
    this.desk = parts.bench().desk();
    this.chooser = chooser;
    this.printing = printing;
  }

  private boolean hasFloor() {
    if (desk.site().areas().isEmpty()) {
      desk.refuse(Refusal.of("Draw a floor first; there is nothing on the sheets yet."));
      return false;
    }
    return true;
  }

  @Override
  public void save(SheetForm form) {
    Optional<SheetOrder> order = hasFloor() ? parts.pages().order() : Optional.empty();
    order
        .flatMap(o -> chooser.folder("Folder for " + form.words()))
        .ifPresent(
            folder ->
                write(
                    "Saving " + form.words(),
                    folder,
                    steps -> SheetBundles.of(form, order.get(), steps)));
  }

  @Override
  public void save(Optional<String> only, boolean lettersAccepted) {
    Optional<CutOrder> order =
        parts.keeper().plan().map(p -> new CutOrder(desk.site(), p, only, lettersAccepted));
    order
        .flatMap(o -> chooser.folder("Folder for the cut files"))
        .ifPresent(folder -> write("Saving the cut files", folder, order.get()::files));
  }

  private void write(String words, Path folder, Errands.Work<FileBundle> make) {
    parts
        .errands()
        .run(
            new Errands.Errand<>(
                words,
                "Could not write into " + folder + "; choose another folder",
                steps -> written(make.run(steps), folder, steps),
                saved -> desk.tell(saved.words(folder))));
  }

  private static Parsed<SavedFiles> written(
      Parsed<FileBundle> made, Path folder, Errands.Steps steps) throws java.io.IOException {
    if (made instanceof Parsed.Bad<FileBundle> bad) {
      return Parsed.bad(bad.why());
    }
    FileBundle files = made.orThrow();
    int replaced = files.write(folder, steps, SheetBundles.MADE);
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
    Optional<SheetOrder> order = hasFloor() ? parts.pages().order() : Optional.empty();
    if (order.isEmpty()) {
      return;
    }
    if (!printing.isReady()) {
      desk.refuse(Refusal.of("No printer is set up on this computer; save a PDF instead."));
      return;
    }
    printing
        .ask()
        .ifPresent(
            job ->
                parts
                    .errands()
                    .run(
                        new Errands.Errand<>(
                            "Printing",
                            "The sheets could not be printed",
                            steps -> printed(job, order.get(), steps),
                            n -> desk.tell(n + " pages were sent to the printer"))));
  }

  private static Parsed<Integer> printed(Printing.Job job, SheetOrder order, Errands.Steps steps)
      throws java.io.IOException {
    Parsed<Job.Done> work = order.work(steps);
    if (work instanceof Parsed.Bad<Job.Done> bad) {
      job.cancel();
      return Parsed.bad(bad.why());
    }
    List<Page> pages = order.pages(work.orThrow());
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
        steps.at((double) i / pages.size());
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
