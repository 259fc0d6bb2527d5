package slabwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.project.RefusedInput;
import slabwright.project.plan.IssuedRelease;
import slabwright.words.Words;

/** {@code release PLAN}: freezes the plan and its graphics under the next number. */
@Command(name = "release", mixinStandardHelpOptions = true)
final class ReleaseCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @Option(names = "--note", defaultValue = "", paramLabel = "TEXT")
  private String note;

  @Spec private CommandSpec spec;

  private final Words words;

  ReleaseCommand(Words words) {
    this.words = words;
  }

  @Override
  public Integer call() throws RefusedInput, IOException {
    IssuedRelease issued =
        PlanLoader.orRefuse(
            IssuedRelease.issue(plan, note.strip(), LocalDate.now(ZoneId.systemDefault())));
    spec.commandLine()
        .getOut()
        .println(words.say("cli.release.issued", issued.number(), issued.copy().toString()));
    return ExitCode.DONE.code();
  }
}
