package slabwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.project.RefusedInput;
import slabwright.project.export.ChangeOrderFile;
import slabwright.project.plan.FigureChange;
import slabwright.project.plan.PlanComparison;
import slabwright.site.Site;
import slabwright.store.AtomicFile;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** {@code changes PLAN}: what changed since a release, and what that did to the figures. */
@Command(name = "changes", mixinStandardHelpOptions = true)
final class ChangesCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @Option(names = "--since", paramLabel = "N")
  private Optional<Integer> since;

  @Option(names = "--order", paramLabel = "FILE")
  private Path order;

  @Spec private CommandSpec spec;

  private final Words words;

  ChangesCommand(Words words) {
    this.words = words;
  }

  @Override
  public Integer call() throws RefusedInput, IOException {
    if (order != null && (Files.isDirectory(order) || isOther(order))) {
      throw RefusedInput.of(Message.of("cli.changes.not-a-pdf", order.toString()));
    }
    Site site = PlanLoader.read(plan);
    OptionalInt number = since.map(OptionalInt::of).orElse(OptionalInt.empty());
    PlanComparison found = PlanLoader.orRefuse(PlanComparison.of(site, plan, number, () -> false));
    PrintWriter out = spec.commandLine().getOut();
    if (found.changes().isEmpty()) {
      out.println(words.say("cli.changes.none", found.release()));
      if (order != null) {
        PlanLoader.orRefuse(new ChangeOrderFile(found, words).pdf());
      }
      return ExitCode.DONE.code();
    }
    out.println(words.say("cli.changes.since", found.release()));
    Words told = words.inUnits(site.units());
    found.changes().forEach(c -> out.println("  " + told.line(c)));
    figures(out, found, site.units());
    if (order != null) {
      AtomicFile.write(order, PlanLoader.orRefuse(new ChangeOrderFile(found, words).pdf()));
      out.println(words.say("cli.changes.order-written", order.toString()));
    }
    return ExitCode.DONE.code();
  }

  /** Nothing but a PDF is ever replaced. */
  private static boolean isOther(Path file) throws IOException {
    if (!Files.exists(file)) {
      return false;
    }
    try (var in = Files.newInputStream(file)) {
      return !new String(in.readNBytes(5), StandardCharsets.US_ASCII).equals("%PDF-");
    }
  }

  private void figures(PrintWriter out, PlanComparison found, UnitSystem units) {
    row(
        out,
        "",
        new FigureChange.Shown(
            words.say("cli.changes.before"),
            words.say("cli.changes.after"),
            words.say("cli.changes.difference")));
    String group = "";
    for (FigureChange f : found.figures()) {
      String named = f.area().orElse(words.say("cli.changes.whole-site"));
      if (!group.equals(named)) {
        out.println(named);
        group = named;
      }
      row(out, words.say(f.kind().label()), f.shown(units));
    }
  }

  private static void row(PrintWriter out, String label, FigureChange.Shown s) {
    out.printf("  %-24s%16s%16s%16s%n", label, s.then(), s.now(), s.difference());
  }
}
