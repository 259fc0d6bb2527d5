package slabwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.inlay.OpenQuestions;
import slabwright.project.RefusedInput;
import slabwright.project.SiteResult;
import slabwright.project.UsableAreas;
import slabwright.project.export.JobFiles;
import slabwright.project.export.OutFolder;
import slabwright.sheets.page.PaperSize;
import slabwright.site.Site;
import slabwright.units.PartFaults;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/** {@code job PLAN --out DIR}: the whole main job into a folder. */
@Command(name = "job", mixinStandardHelpOptions = true)
final class JobCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @Option(names = "--out", required = true, paramLabel = "DIR")
  private Path out;

  @Option(names = "--paper", paramLabel = "NAME")
  private String paper;

  @Option(names = "--no-pictures")
  private boolean noPictures;

  @Option(names = "--accept-font")
  private boolean acceptFont;

  @Option(names = "--forecast", paramLabel = "FILE")
  private Path forecast;

  @Option(names = "--crew-language", paramLabel = "TAG")
  private String crewLanguage;

  @Spec private CommandSpec spec;

  private final Words words;
  private final Clock clock;

  JobCommand(Words words) {
    this(words, Clock.system(ZoneId.systemDefault()));
  }

  /** A job whose files are made at the moment that the clock says. */
  JobCommand(Words words, Clock clock) {
    this.words = words;
    this.clock = clock;
  }

  @Override
  public Integer call() throws RefusedInput, IOException {
    Site site = PlanLoader.withForecast(PlanLoader.read(plan), forecast);
    PaperSize chosen = SheetsCommand.paper(paper, site);
    String language = crewLanguage == null ? site.job().crew().language() : crewLanguage;
    Optional<Words> crew = PlanLoader.orRefuse(JobFiles.crewWords(language, words));
    UsableAreas usable = PlanLoader.orRefuse(UsableAreas.compute(site, plan, words));
    SiteResult result = usable.result();
    OutFolder folder = new OutFolder(out);
    Optional<Path> issued = usable.isWhole() ? Optional.of(plan) : Optional.empty();
    List<String> said = new ArrayList<>();
    usable.leftOut().forEach(m -> said.add(words.say(m)));
    JobFiles.Added added =
        new JobFiles(result, plan, issued, chosen, !noPictures, acceptFont, words, crew, clock)
            .addTo(folder);
    said.addAll(added.notCut());
    List<PartFaults.PartFault> faults =
        Stream.concat(usable.faults().stream(), added.faults().stream()).distinct().toList();
    folder.commit();
    summary(result.site(), result, folder);
    PrintWriter err = spec.commandLine().getErr();
    result
        .work()
        .book()
        .faults()
        .forEach(f -> err.println(words.say("cli.job.book-fault", f.said())));
    said.forEach(err::println);
    faults.forEach(f -> err.println(words.say(f.sentence())));
    return faults.isEmpty() ? code(result, said) : ExitCode.OWN_FAULT.code();
  }

  private static int code(SiteResult result, List<String> said) {
    boolean open =
        result.areas().stream()
            .flatMap(a -> a.inlays().stream())
            .anyMatch(i -> !OpenQuestions.of(i.artwork(), i.inlay().spec()).isEmpty());
    return open
        ? ExitCode.QUESTION_OPEN.code()
        : said.isEmpty() ? ExitCode.DONE.code() : ExitCode.REFUSED.code();
  }

  private void summary(Site site, SiteResult result, OutFolder folder) {
    PrintWriter print = spec.commandLine().getOut();
    print.println(
        site.note().isBlank()
            ? site.name()
            : words.say("cli.job.site-with-note", site.name(), site.note()));
    Words words = this.words.inUnits(site.units());
    ConsoleSummary.outlook(print, result.work().outlook(), words);
    for (AreaResult a : result.areas()) {
      ConsoleSummary.tally(print, a.takeoff(), site.units(), words);
      a.inlays().forEach(i -> ConsoleSummary.inlay(print, i, site.units(), words));
    }
    print.println(words.say("cli.job.files", folder.names().size(), out.toString()));
  }
}
