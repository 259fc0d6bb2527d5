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
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * The whole main job of a plan as the files of one folder: packets, sheets, numbers, calendar, cut
 * files.
 *
 * @param plan the file that graphics are relative to
 * @param issued the plan whose last release the client's change order is against; empty for none
 * @param fontAccepted whether letters in a substitute font are accepted
 * @param crew the crew's words, when it reads another language than the lead
 * @param clock says the day and moment the files are made
 */
public record JobFiles(
    SiteResult result,
    Path plan,
    Optional<Path> issued,
    PaperSize paper,
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
   * Adds the files; an inlay that must not be cut gives none of its own.
   *
   * @return sentences for the person about what was not cut
   */
  public List<String> addTo(OutFolder folder) throws IOException {
    LocalDate today = LocalDate.now(clock);
    NamedFiles files = new NamedFiles(result, words, clock);
    BesideTask<List<String>> cut = BesideTask.start(() -> cutFiles(files, folder));
    BesideTask<List<PrintedPage>> sheets = BesideTask.start(() -> sheets(files, folder, today));
    PacketFiles packets = PacketFiles.of(result, paper, today, words, crew);
    (issued.isPresent() ? packets.since(issued.get()) : packets).addTo(folder);
    files.numbers(folder);
    files.tables(folder);
    files.calendars(folder);
    sheets.join();
    return cut.join();
  }

  private List<PrintedPage> sheets(NamedFiles files, OutFolder folder, LocalDate today)
      throws IOException {
    List<PrintedPage> pages = SheetRequest.pages(result, paper, words, today);
    files.pdf(folder, pages, n -> {});
    files.svgs(folder, pages, n -> {});
    return pages;
  }

  private List<String> cutFiles(NamedFiles files, OutFolder folder) throws IOException {
    List<String> said = new ArrayList<>();
    for (AreaResult a : result.areas()) {
      for (PlacedInlay i : a.inlays()) {
        if (GraphicFiles.isChanged(i.inlay(), plan)) {
          said.add(words.say(CutStop.changedOnDisk(i.inlay().name()).sentence()));
          continue;
        }
        FileSink into = folder.folder(files.cutFolder(a, i));
        said.addAll(
            files.cut(a, i).add(into, i.artwork(), i.plan(), i.inlay().spec(), fontAccepted));
      }
    }
    return said;
  }
}
