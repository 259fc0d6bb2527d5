package slabwright.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
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
import slabwright.project.export.PictureFiles;
import slabwright.project.export.SavedFiles;
import slabwright.project.export.SheetExport;
import slabwright.project.export.SheetRequest;
import slabwright.project.export.StagedFiles;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;

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
      desk.refuse(Message.of("desk.app.exports.draw-a-floor-first"));
      return false;
    }
    return true;
  }

  @Override
  public void save(ExportFormat form) {
    Optional<SheetRequest> order = hasFloor() ? parts.pages().order() : Optional.empty();
    order
        .flatMap(o -> target(form))
        .ifPresent(
            to ->
                write(
                    saving(form),
                    to.folder(),
                    steps -> SheetExport.of(form, order.get(), steps).map(to::named)));
  }

  /**
   * Where to.
   *
   * @param file the name of the only file; empty where they have names of their own
   */
  private record Target(Path folder, Optional<String> file) {
    static Target file(Path file) {
      return new Target(
          file.toAbsolutePath().getParent(), Optional.of(file.getFileName().toString()));
    }

    StagedFiles named(StagedFiles made) {
      return file.map(made::onlyAs).orElse(made);
    }
  }

  /** One file is asked for by its name, several by a folder. */
  private Optional<Target> target(ExportFormat form) {
    Words words = parts.bench().words();
    return switch (form) {
      case PDF -> {
        String name = desk.site().name() + ", " + words.say("desk.app.exports.all-sheets");
        yield chooser.pdfToSave(fileName(name)).map(Target::file);
      }
      case PACKETS -> folder(words.say("desk.app.exports.folder-for-packets"));
      case SVG -> folder(words.say("desk.app.exports.folder-for-svg"));
      case CSV -> folder(words.say("desk.app.exports.folder-for-csv"));
      case JSON -> folder(words.say("desk.app.exports.folder-for-json"));
    };
  }

  private Optional<Target> folder(String what) {
    return chooser.folder(what).map(f -> new Target(f, Optional.empty()));
  }

  private static String fileName(String words) {
    return words.replaceAll("[\\\\/:*?\"<>|]", "-");
  }

  /** One packet as a PDF, in a file that the person names. */
  @Override
  public void save(Packet packet) {
    Optional<SheetRequest> order = hasFloor() ? parts.pages().order() : Optional.empty();
    String name = desk.site().name() + ", " + parts.bench().words().say(packet.word());
    order
        .flatMap(o -> chooser.pdfToSave(fileName(name)))
        .ifPresent(
            file ->
                parts
                    .errands()
                    .run(
                        new BackgroundTasks.BackgroundTask<>(
                            Message.of("desk.app.exports.saving-packet"),
                            why -> Message.of("desk.app.exports.not-written", file.toString(), why),
                            steps -> SheetExport.packet(packet, order.get(), file, steps),
                            this::savedOne)));
  }

  private void savedOne(Path file) {
    desk.announce(
        Message.of("desk.app.exports.saved-one", file.toString()),
        Optional.ofNullable(file.toAbsolutePath().getParent()));
  }

  @Override
  public void save(Optional<String> only, boolean lettersAccepted) {
    Optional<CutFileRequest> order =
        parts
            .keeper()
            .plan()
            .map(
                p ->
                    new CutFileRequest(
                        desk.site(),
                        p,
                        only,
                        lettersAccepted,
                        parts.bench().words(),
                        Clock.system(ZoneId.systemDefault())));
    order
        .flatMap(
            o -> chooser.folder(parts.bench().words().say("desk.app.exports.folder-for-cut-files")))
        .ifPresent(
            folder ->
                write(
                    Message.of("desk.app.exports.saving-cut-files"),
                    folder,
                    steps -> order.get().files(steps)));
  }

  /** Pictures of every floor as it should look. */
  void savePictures() {
    Optional<PictureFiles> order =
        hasFloor()
            ? parts
                .keeper()
                .plan()
                .map(p -> new PictureFiles(desk.site(), p, parts.bench().words()))
            : Optional.empty();
    order
        .flatMap(
            o -> chooser.folder(parts.bench().words().say("desk.app.exports.folder-for-pictures")))
        .ifPresent(
            folder ->
                write(
                    Message.of("desk.app.exports.saving-pictures"),
                    folder,
                    steps -> order.get().files(steps)));
  }

  private static Message saving(ExportFormat form) {
    return switch (form) {
      case PACKETS -> Message.of("desk.app.exports.saving-packets");
      case PDF -> Message.of("desk.app.exports.saving-pdf");
      case SVG -> Message.of("desk.app.exports.saving-svg");
      case CSV -> Message.of("desk.app.exports.saving-csv");
      case JSON -> Message.of("desk.app.exports.saving-json");
    };
  }

  private void write(Message words, Path folder, BackgroundTasks.TaskBody<StagedFiles> make) {
    parts
        .errands()
        .run(
            new BackgroundTasks.BackgroundTask<>(
                words,
                why -> Message.of("desk.app.exports.not-written", folder.toString(), why),
                steps -> written(make.run(steps), folder, steps),
                saved -> tell(saved, folder)));
  }

  /** What is missing is told rather than what was saved. */
  private void tell(SavedFiles saved, Path folder) {
    Message said = saved.message(folder);
    if (saved.faults().isEmpty()) {
      desk.announce(said, Optional.of(folder));
    } else {
      Message missing = saved.faults().get(0).sentence();
      desk.refuse(Message.of("desk.app.exports.saved-in-part", said, missing));
    }
  }

  private static Result<SavedFiles> written(
      Result<StagedFiles> made, Path folder, TaskProgress steps) throws java.io.IOException {
    if (made instanceof Result.Refused<StagedFiles> refused) {
      return Result.refused(refused.refusals());
    }
    StagedFiles files = made.orThrow();
    int replaced = files.write(folder, steps, SheetExport.MADE);
    return Result.ok(new SavedFiles(files.names(), replaced, files.faults().all()));
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
      desk.refuse(Message.of("desk.app.exports.no-printer"));
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
                            Message.of("desk.app.exports.printing"),
                            why -> Message.of("desk.app.exports.not-printed", why),
                            steps -> printed(job, order.get(), steps),
                            n -> desk.announce(Message.of("desk.app.exports.printed", n)))));
  }

  private static Result<Integer> printed(
      Printing.PrintRun job, SheetRequest order, TaskProgress steps) throws java.io.IOException {
    Result<SiteResult> work = order.compute(steps);
    if (work instanceof Result.Refused<SiteResult> refused) {
      job.cancel();
      return Result.refused(refused.refusals());
    }
    List<PrintedPage> pages = order.pages(work.orThrow());
    if (!pages.stream().allMatch(job::fits)) {
      job.cancel();
      return Result.refused(Message.of("desk.app.exports.paper-too-small", order.paper().word()));
    }
    boolean whole = false;
    try {
      for (int i = 0; i < pages.size(); i++) {
        steps.report((double) i / pages.size());
        if (!job.page(pages.get(i))) {
          return Result.refused(Message.of("desk.app.exports.printer-stopped", i));
        }
      }
      whole = true;
    } finally {
      if (!whole) {
        job.cancel();
      }
    }
    job.end();
    return Result.ok(pages.size());
  }
}
