package slabwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.project.RefusedInput;
import slabwright.store.AtomicFile;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.WorkPlan;
import slabwright.work.actuals.WriteBack;
import slabwright.work.book.ShopBookFile;

/**
 * {@code actuals PLAN}: what a finished job took, as new values of the shop book. Shows old and
 * new; writes only when asked.
 */
@Command(name = "actuals", mixinStandardHelpOptions = true)
final class ActualsCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @Option(names = "--used", paramLabel = "PRODUCT=VOLUME")
  private Map<String, String> used = Map.of();

  @Option(names = "--laid", paramLabel = "PRODUCT=TIME")
  private Map<String, String> laid = Map.of();

  @Option(names = "--machine", paramLabel = "PASS=TIME")
  private Map<String, String> machine = Map.of();

  @Option(names = "--hand", paramLabel = "PASS=TIME")
  private Map<String, String> hand = Map.of();

  @Option(names = "--write")
  private boolean write;

  private final Words words;

  ActualsCommand(Words words) {
    this.words = words;
  }

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws RefusedInput, IOException {
    List<WriteBack.Actual> measured = measured();
    if (measured.isEmpty()) {
      throw new UsageFaults.WrongUse(
          spec.commandLine(), Message.of("cli.actuals.nothing-measured"));
    }
    WorkPlan work = PlanLoader.compute(PlanLoader.read(plan), plan).work();
    Path folder = plan.toAbsolutePath().getParent();
    ShopBookFile book = PlanLoader.bookFile(folder);
    Result<WriteBack.NewBook> result = WriteBack.of(work, book.text(), measured);
    if (result instanceof Result.Refused<WriteBack.NewBook> bad) {
      throw RefusedInput.of(bad.refusals());
    }
    print(result.orThrow(), book, folder);
    return 0;
  }

  private void print(WriteBack.NewBook result, ShopBookFile book, Path folder) throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    result.changes().forEach(c -> out.println(words.say(c.sentence())));
    Path file = book.from().orElse(folder.resolve(ShopBookFile.NAME));
    if (write) {
      AtomicFile.write(file, result.text().text().getBytes(StandardCharsets.UTF_8));
      out.println(words.say("cli.actuals.written", file.toString()));
    } else {
      out.println(words.say("cli.actuals.not-written", file.toString()));
    }
  }

  private List<WriteBack.Actual> measured() {
    List<WriteBack.Actual> all = new ArrayList<>();
    used.forEach((n, v) -> all.add(new WriteBack.Actual(WriteBack.ActualKind.USED, n, v)));
    laid.forEach((n, v) -> all.add(new WriteBack.Actual(WriteBack.ActualKind.LAID, n, v)));
    machine.forEach((n, v) -> all.add(new WriteBack.Actual(WriteBack.ActualKind.MACHINE, n, v)));
    hand.forEach((n, v) -> all.add(new WriteBack.Actual(WriteBack.ActualKind.HAND, n, v)));
    return all;
  }
}
