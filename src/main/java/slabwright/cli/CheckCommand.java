package slabwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.project.RefusedInput;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.words.Words;

/** {@code check PLAN}: says all that is wrong, with the place in the file. */
@Command(name = "check", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @Spec private CommandSpec spec;

  private final Words words;

  CheckCommand(Words words) {
    this.words = words;
  }

  @Override
  public Integer call() throws RefusedInput {
    Site site = PlanLoader.read(plan);
    int marks = site.areas().stream().map(FloorArea::marks).mapToInt(java.util.List::size).sum();
    spec.commandLine()
        .getOut()
        .println(words.say("cli.check.nothing-wrong", site.name(), site.areas().size(), marks));
    return 0;
  }
}
