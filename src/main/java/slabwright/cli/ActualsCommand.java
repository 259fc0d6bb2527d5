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
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.project.RefusedInput;
import slabwright.store.AtomicFile;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.WorkPlan;
import slabwright.work.actuals.WriteBack;
import slabwright.work.book.ShopBookFile;

/**
 * {@code actuals PLAN}: what a finished job took, as new values of the shop book. Shows old and
 * new; writes only when asked.
 */
@Command(
    name = "actuals",
    description = {
      "What a finished job really took, as new rates and coverages of the shop book.",
      "Shows each value before and after; writes them only with --write."
    },
    mixinStandardHelpOptions = true)
final class ActualsCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN", description = "The plan of the job, a .site.json file.")
  private Path plan;

  @Option(
      names = "--used",
      paramLabel = "PRODUCT=VOLUME",
      description = "What was poured of a product, all coats: sealer=\"4.5 gal\".")
  private Map<String, String> used = Map.of();

  @Option(
      names = "--laid",
      paramLabel = "PRODUCT=TIME",
      description = "How long laying all its coats took, without cut-in: sealer=\"3 h\".")
  private Map<String, String> laid = Map.of();

  @Option(
      names = "--machine",
      paramLabel = "PASS=TIME",
      description = "Machine time of a grinding pass: \"metal 60\"=\"6.5 h\".")
  private Map<String, String> machine = Map.of();

  @Option(
      names = "--hand",
      paramLabel = "PASS=TIME",
      description = "One person's time by hand on a pass: \"metal 60\"=\"90 min\".")
  private Map<String, String> hand = Map.of();

  @Option(names = "--write", description = "Write the new values into the shop book.")
  private boolean write;

  private final Words words = Words.english();

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws RefusedInput, IOException {
    List<WriteBack.Actual> measured = measured();
    if (measured.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "Say what was measured: --used, --laid, --machine or --hand.");
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
      out.println("Written into " + file + ".");
    } else {
      out.println("Nothing is written; add --write to put it into " + file + ".");
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
