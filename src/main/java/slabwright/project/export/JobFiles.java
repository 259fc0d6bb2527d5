package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.cutfile.CutStop;
import slabwright.project.InlayFileNames;
import slabwright.project.SiteResult;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.store.GraphicFiles;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.days.ICalendarWriter;

/**
 * The whole main job of a plan as the files of one folder: packets, sheets, numbers, calendar, cut
 * files.
 *
 * @param plan the file that graphics are relative to
 * @param issued the plan whose last release the client's change order is against; empty for none
 * @param fontAccepted whether letters in a substitute font are accepted
 * @param crew the crew's words, when it reads another language than the lead
 */
public record JobFiles(
    SiteResult result,
    Path plan,
    Optional<Path> issued,
    PaperSize paper,
    boolean fontAccepted,
    Words words,
    Optional<Words> crew) {
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
    PacketFiles packets = PacketFiles.today(result, paper, words, crew);
    (issued.isPresent() ? packets.since(issued.get()) : packets).addTo(folder::add);
    sheets(folder);
    numbers(folder);
    calendar(folder);
    return cutFiles(folder);
  }

  private void sheets(OutFolder folder) throws IOException {
    List<PrintedPage> pages = SheetRequest.pages(result, paper, words);
    folder.add("sheets.pdf", SheetExport.pdf(result.site().name(), pages));
    for (Map.Entry<String, String> svg : SheetFiles.svgs(pages).entrySet()) {
      folder.add("sheets/" + OutFolder.clean(svg.getKey()), svg.getValue());
    }
  }

  private void numbers(OutFolder folder) {
    SiteNumbers numbers = new SiteNumbers(result, words);
    folder.add("tally.json", numbers.tally());
    folder.add("work.json", numbers.work());
    folder.add("quantities.csv", numbers.quantities());
    folder.add("takeoff.csv", numbers.takeoff());
    folder.add("buy.csv", numbers.buying());
    InlayFileNames names = new InlayFileNames(result.site());
    for (AreaResult a : result.areas()) {
      for (PlacedInlay i : a.inlays()) {
        folder.add("inlay-" + name(names, a, i) + ".json", numbers.inlay(a, i));
      }
    }
  }

  private void calendar(OutFolder folder) {
    result
        .work()
        .days()
        .maybe()
        .filter(d -> result.work().dated())
        .ifPresent(
            d -> {
              String site = result.site().name();
              Instant now = Instant.now();
              folder.add("days.ics", ICalendarWriter.of(d, site, now, words::say));
              folder.add(
                  "days-client-and-trades.ics",
                  ICalendarWriter.forOthers(d, site, now, words::say));
            });
  }

  private List<String> cutFiles(OutFolder folder) throws IOException {
    List<String> said = new ArrayList<>();
    InlayFileNames names = new InlayFileNames(result.site());
    for (AreaResult a : result.areas()) {
      for (PlacedInlay i : a.inlays()) {
        if (GraphicFiles.isChanged(i.inlay(), plan)) {
          said.add(words.say(CutStop.changedOnDisk(i.inlay().name()).sentence()));
          continue;
        }
        InlayCutFiles files =
            new InlayCutFiles(
                names.title(a.takeoff().area(), i.inlay()),
                result.site().releaseNumber(),
                result.site().units(),
                Instant.now(),
                fontAccepted,
                ShopPapers.of(result, a, i, words),
                words);
        said.addAll(
            files.add(
                folder, "cut-" + name(names, a, i) + "/", i.artwork(), i.plan(), i.inlay().spec()));
      }
    }
    return said;
  }

  private static String name(InlayFileNames names, AreaResult a, PlacedInlay i) {
    return OutFolder.clean(names.fullId(a.takeoff().area(), i.inlay(), "_"));
  }
}
