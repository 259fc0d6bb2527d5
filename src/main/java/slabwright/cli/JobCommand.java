package slabwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.cutfile.CutFileParameters;
import slabwright.inlay.cutfile.CutStop;
import slabwright.project.InlayCutFiles;
import slabwright.project.OutFolder;
import slabwright.project.RefusedInput;
import slabwright.project.SiteResult;
import slabwright.sheets.csv.QuantitiesCsv;
import slabwright.sheets.json.InlayJson;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.site.Site;
import slabwright.store.GraphicFiles;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.days.ICalendarWriter;

/** {@code job PLAN --out DIR}: the whole main job into a folder. */
@Command(
    name = "job",
    description = "Everything of a plan into a folder: sheets, cut files, quantities.",
    mixinStandardHelpOptions = true)
final class JobCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN", description = "The plan, a .site.json file.")
  private Path plan;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "Folder to write into.")
  private Path out;

  @Option(
      names = "--paper",
      paramLabel = "NAME",
      description = "Paper of the sheets; default Tabloid for feet, A3 for metres.")
  private String paper;

  @Option(names = "--accept-font", description = "Accept letters drawn in a substitute font.")
  private boolean acceptFont;

  @Spec private CommandSpec spec;

  private final Words words = Words.english();

  @Override
  public Integer call() throws RefusedInput, IOException {
    Site site = PlanLoader.read(plan);
    PaperSize chosen = SheetsCommand.paper(paper, site);
    SiteResult result = PlanLoader.compute(site, plan);
    List<AreaResult> areas = result.areas();
    OutFolder folder = new OutFolder(out);
    sheets(folder, result, chosen);
    numbers(folder, result);
    List<String> said = inlays(folder, result.site(), areas);
    folder.commit();
    summary(site, areas, folder);
    PrintWriter err = spec.commandLine().getErr();
    result.work().book().faults().forEach(f -> err.println("Shop book, " + f + "."));
    said.forEach(err::println);
    return said.isEmpty() ? 0 : SlabwrightCommand.REFUSED;
  }

  private static void sheets(OutFolder folder, SiteResult result, PaperSize paper)
      throws IOException {
    List<PrintedPage> pages = SheetsCommand.pages(result, paper);
    folder.add("sheets.pdf", SheetsCommand.pdf(result.site(), pages));
    for (Map.Entry<String, String> svg : SheetFiles.svgs(pages).entrySet()) {
      folder.add("sheets/" + OutFolder.clean(svg.getKey()), svg.getValue());
    }
  }

  private void numbers(OutFolder folder, SiteResult result) {
    List<AreaResult> areas = result.areas();
    folder.add(
        "tally.json",
        TallyJson.write(result.site(), areas.stream().map(AreaResult::ways).toList(), words));
    folder.add("work.json", WorkJson.write(result.work()));
    folder.add("quantities.csv", QuantitiesCsv.write(areas, words));
    calendar(folder, result);
    for (AreaResult a : areas) {
      for (PlacedInlay i : a.inlays()) {
        folder.add(
            "inlay-" + name(a, i) + ".json",
            InlayJson.pretty(i.inlay().graphic(), i.artwork(), i.plan(), i.inlay().spec()));
      }
    }
  }

  private static void calendar(OutFolder folder, SiteResult result) {
    result
        .work()
        .days()
        .maybe()
        .filter(d -> result.work().dated())
        .ifPresent(
            d ->
                folder.add("days.ics", ICalendarWriter.of(d, result.site().name(), Instant.now())));
  }

  private List<String> inlays(OutFolder folder, Site site, List<AreaResult> areas)
      throws IOException {
    List<String> said = new ArrayList<>();
    for (AreaResult a : areas) {
      for (PlacedInlay i : a.inlays()) {
        if (GraphicFiles.isChanged(i.inlay(), plan)) {
          said.add(CutStop.changedOnDisk(i.inlay().name()).sentence());
          continue;
        }
        CutFileParameters job = new CutFileParameters(i.inlay().name(), site.releaseNumber());
        InlayCutFiles files = new InlayCutFiles(job, site.units(), Instant.now(), acceptFont);
        said.addAll(
            files.add(folder, "cut-" + name(a, i) + "/", i.artwork(), i.plan(), i.inlay().spec()));
      }
    }
    return said;
  }

  private static String name(AreaResult a, PlacedInlay i) {
    return OutFolder.clean(a.takeoff().area().id() + "_" + i.inlay().id());
  }

  private void summary(Site site, List<AreaResult> areas, OutFolder folder) {
    PrintWriter print = spec.commandLine().getOut();
    print.println(site.name() + (site.note().isBlank() ? "" : " (" + site.note() + ")"));
    for (AreaResult a : areas) {
      ConsoleSummary.tally(print, a.takeoff(), site.units(), words);
      a.inlays().forEach(i -> ConsoleSummary.inlay(print, i, site.units()));
    }
    print.println(folder.names().size() + " files in " + out);
  }
}
