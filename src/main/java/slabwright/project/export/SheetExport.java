package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.IntConsumer;
import slabwright.project.SiteResult;
import slabwright.project.TaskProgress;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.page.PrintedPage;
import slabwright.store.AtomicFile;
import slabwright.units.PartFaults;
import slabwright.units.Result;
import slabwright.words.Words;

/**
 * The sheets and their numbers as files, in a folder that is called by the site and its release:
 * what is saved one form after the other comes to lie as the whole main job does.
 */
public final class SheetExport {
  /** Share of the work done when files are about to be written. */
  public static final double MADE = 0.9;

  private static final double PAGES = 0.5;

  private SheetExport() {}

  /** Makes the files of one form. */
  public static Result<StagedFiles> of(ExportFormat form, SheetRequest order, TaskProgress steps)
      throws IOException {
    Result<SiteResult> work = order.compute(steps);
    if (work instanceof Result.Refused<SiteResult> bad) {
      return Result.refused(bad.refusals());
    }
    steps.report(0.3);
    SiteResult done = work.orThrow();
    Result<Optional<Words>> crew =
        PacketFiles.crewWords(done.site().job().crew().language(), order.words());
    if (form == ExportFormat.PACKETS && crew instanceof Result.Refused<Optional<Words>> bad) {
      return Result.refused(bad.refusals());
    }
    StagedFiles staged = new StagedFiles();
    PartFaults faults = staged.faults();
    FileSink into = staged.folder(SheetRequest.folderName(done));
    NamedFiles files = new NamedFiles(done, order.words(), order.clock(), faults);
    switch (form) {
      case PACKETS -> {
        PacketFiles packets =
            PacketFiles.of(done, order.paper(), order.today(), order.words(), crew.orThrow())
                .since(order.plan());
        faults.addAll(packets.addTo(into));
        files.calendars(into, packets.contents());
      }
      case PDF -> {
        List<PrintedPage> pages = order.pages(done, faults);
        files.pdf(into, pages, told(steps, pages));
      }
      case SVG -> {
        List<PrintedPage> pages = order.pages(done, faults);
        files.svgs(into, pages, told(steps, pages));
      }
      case CSV -> files.tables(into);
      case JSON -> files.numbers(into);
    }
    steps.report(MADE);
    return Result.ok(staged);
  }

  /**
   * Writes one packet as a PDF where the person wants it.
   *
   * @return the file
   */
  public static Result<Path> packet(
      Packet packet, SheetRequest order, Path file, TaskProgress steps) throws IOException {
    Result<SiteResult> work = order.compute(steps);
    if (work instanceof Result.Refused<SiteResult> bad) {
      return Result.refused(bad.refusals());
    }
    steps.report(PAGES);
    byte[] pdf =
        PacketFiles.of(
                work.orThrow(), order.paper(), order.today(), order.words(), Optional.empty())
            .since(order.plan())
            .pdf(packet);
    if (steps.isCancelled()) {
      throw new CancellationException();
    }
    AtomicFile.write(file, pdf);
    return Result.ok(file);
  }

  private static IntConsumer told(TaskProgress steps, List<PrintedPage> pages) {
    return n -> steps.report(PAGES + (MADE - PAGES) * n / pages.size());
  }
}
