package slabwright.cli;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.project.RefusedInput;
import slabwright.project.plan.TapedPlan;
import slabwright.store.PlanFile;
import slabwright.tape.RoomAdjustment;
import slabwright.tape.RoomResult;
import slabwright.tape.RoomText;
import slabwright.tape.TapeRoom;
import slabwright.tape.text.TapeText;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** {@code tape FILE}: adjusts a room's readings and says what to measure again. */
@Command(name = "tape", mixinStandardHelpOptions = true)
final class TapeCommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE")
  private Path file;

  @Option(names = "--units", paramLabel = "NAME")
  private UnitSystem asked;

  @Option(names = "--out", paramLabel = "FILE")
  private Path out;

  @Option(names = "--paper", paramLabel = "NAME")
  private String paper;

  @Option(names = "--plan", paramLabel = "FILE.site.json")
  private Path plan;

  @Spec private CommandSpec spec;

  private final Words words;

  TapeCommand(Words words) {
    this.words = words;
  }

  @Override
  public Integer call() throws RefusedInput, IOException {
    if (plan != null) {
      refuseUnlessNew(plan);
    }
    TapeRoom taped = room();
    UnitSystem units = asked == null ? taped.typedIn() : asked;
    Words words = this.words.inUnits(units);
    RoomResult result = RoomAdjustment.of(taped, units);
    if (result instanceof RoomResult.Refused refused) {
      throw RefusedInput.of(refused.sentence());
    }
    spec.commandLine().getOut().print(RoomText.of(result, units, words::say));
    if (out != null) {
      TapeSheetFile.write(result, out, file, new TapeSheetFile.PaperChoice(paper, units, words));
    }
    if (!(result instanceof RoomResult.Adjusted adjusted)) {
      return ExitCode.REFUSED.code();
    }
    if (plan != null) {
      String name = file.getFileName().toString().replaceAll("\\.[^.]*$", "");
      PlanFile.save(TapedPlan.of(adjusted.room(), name, units, words), plan);
      spec.commandLine().getOut().println(words.say("cli.tape.plan-written", plan.toString()));
    }
    return ExitCode.DONE.code();
  }

  /** A plan begins with a room; one that is there is nobody's to replace. */
  private static void refuseUnlessNew(Path plan) throws RefusedInput {
    if (!plan.toString().endsWith(".site.json")) {
      throw RefusedInput.of(Message.of("cli.tape.no-plan-name", plan.toString()));
    }
    if (Files.exists(plan)) {
      throw RefusedInput.of(Message.of("cli.tape.plan-is-there", plan.toString()));
    }
  }

  private TapeRoom room() throws RefusedInput, IOException {
    if (!Files.isRegularFile(file)) {
      throw RefusedInput.of(Message.of("cli.tape.no-file", file.toString()));
    }
    try {
      Result<TapeRoom> read = TapeText.read(Files.readString(file));
      if (read instanceof Result.Refused<TapeRoom> bad) {
        throw RefusedInput.of(bad.refusals());
      }
      return read.orThrow();
    } catch (MalformedInputException e) {
      throw RefusedInput.of(Message.of("cli.tape.no-text", file.toString()));
    }
  }
}
