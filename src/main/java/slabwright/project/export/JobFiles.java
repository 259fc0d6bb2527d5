package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.cutfile.CutStop;
import slabwright.project.SiteResult;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.store.GraphicFiles;
import slabwright.units.Message;
import slabwright.units.PartFaults;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * The whole main job of a plan as the files of one folder: packets, sheets, numbers, calendar, cut
 * files.
 *
 * @param plan the file that graphics are relative to
 * @param issued the plan whose last release the client's change order is against; empty for none
 * @param pictured whether the client's floors are painted as they should look
 * @param fontAccepted whether letters in a substitute font are accepted
 * @param crew the crew's words, when it reads another language than the lead
 * @param clock says the day and moment the files are made
 */
public record JobFiles(
    SiteResult result,
    Path plan,
    Optional<Path> issued,
    PaperSize paper,
    boolean pictured,
    boolean fontAccepted,
    Words words,
    Optional<Words> crew,
    Clock clock) {
  /**
   * The words of a crew's language, when it is another than the lead's; refused when nobody has
   * written any.
   *
   * @param tag such as {@code es} or {@code es-MX}; empty is the lead's
   */
  public static Result<Optional<Words>> crewWords(String tag, Words words) {
    return PacketFiles.crewWords(tag, words);
  }

  /**
   * What was added.
   *
   * @param notCut sentences for the person about what was not cut
   * @param faults pages and files that a fault of the program ended; the papers tell them too
   */
  public record Added(List<String> notCut, List<PartFaults.PartFault> faults) {
    public Added {
      notCut = List.copyOf(notCut);
      faults = List.copyOf(faults);
    }
  }

  /** Adds the files; an inlay that must not be cut gives none of its own. */
  public Added addTo(OutFolder folder) throws IOException {
    LocalDate today = LocalDate.now(clock);
    PartFaults faults = new PartFaults();
    BesideTask<Added> cut = BesideTask.start(() -> cutFiles(folder));
    BesideTask<List<PartFaults.PartFault>> sheets = BesideTask.start(() -> sheets(folder, today));
    PacketFiles packets = PacketFiles.of(result, paper, today, words, crew).pictured(pictured);
    faults.addAll((issued.isPresent() ? packets.since(issued.get()) : packets).addTo(folder));
    NamedFiles files = files(faults);
    files.numbers(folder);
    files.tables(folder);
    files.calendars(folder, packets.contents());
    faults.addAll(sheets.join());
    Added done = cut.join();
    faults.addAll(done.faults());
    return new Added(done.notCut(), faults.all());
  }

  private NamedFiles files(PartFaults faults) {
    return new NamedFiles(result, words, clock, faults);
  }

  private List<PartFaults.PartFault> sheets(OutFolder folder, LocalDate today) throws IOException {
    PartFaults faults = new PartFaults();
    List<PrintedPage> pages = SheetRequest.pages(result, paper, words, today, faults);
    NamedFiles files = files(faults);
    files.pdf(folder, pages, n -> {});
    files.svgs(folder, pages, n -> {});
    return faults.all();
  }

  private Added cutFiles(OutFolder folder) {
    PartFaults faults = new PartFaults();
    NamedFiles files = files(faults);
    List<String> said = new ArrayList<>();
    for (AreaResult a : result.areas()) {
      for (PlacedInlay i : a.inlays()) {
        FileSink into = folder.folder(files.cutFolder(a, i));
        said.addAll(
            new GuardedFiles(into, faults)
                .together(
                    Message.of("project.job-files.cut-files", i.inlay().name()),
                    whole -> cut(files, a, i, whole),
                    List.of()));
      }
    }
    return new Added(said, faults.all());
  }

  private List<String> cut(NamedFiles files, AreaResult a, PlacedInlay i, FileSink into)
      throws IOException {
    return GraphicFiles.isChanged(i.inlay(), plan)
        ? List.of(words.say(CutStop.changedOnDisk(i.inlay().name()).sentence()))
        : files.cut(a, i).add(into, i.artwork(), i.plan(), i.inlay().spec(), fontAccepted);
  }
}
