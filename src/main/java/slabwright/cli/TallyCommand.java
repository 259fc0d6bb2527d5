package slabwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.project.RefusedInput;
import slabwright.project.SiteTally;
import slabwright.site.Site;
import slabwright.words.Words;

/** {@code tally PLAN}: net floor, edges, machine and hand work of each area. */
@Command(name = "tally", mixinStandardHelpOptions = true)
final class TallyCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @Option(names = "--json")
  private boolean json;

  @Spec private CommandSpec spec;

  private final Words words;

  TallyCommand(Words words) {
    this.words = words;
  }

  @Override
  public Integer call() throws RefusedInput {
    Site site = PlanLoader.read(plan);
    SiteTally tally = SiteTally.of(site, plan);
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(tally.json());
    } else {
      Words told = words.inUnits(site.units());
      tally.floors().forEach(t -> ConsoleSummary.tally(out, t, site.units(), told));
    }
    return 0;
  }
}
