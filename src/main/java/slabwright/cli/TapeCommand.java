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

  @Option(names = "--units", paramLabel = "NAME", defaultValue = "FEET_INCHES")
  private UnitSystem units;

  @Option(names = "--out", paramLabel = "FILE")
  private Path out;

  @Option(names = "--paper", paramLabel = "NAME")
  private String paper;

  @Spec private CommandSpec spec;

  private final Words words;

  TapeCommand(Words words) {
    this.words = words;
  }

  @Override
  public Integer call() throws RefusedInput, IOException {
    RoomResult result = RoomAdjustment.of(room(), units);
    if (result instanceof RoomResult.Refused refused) {
      throw RefusedInput.of(refused.sentence());
    }
    spec.commandLine().getOut().print(RoomText.of(result, units, words::say));
    if (out != null) {
      TapeSheetFile.write(result, out, file, new TapeSheetFile.PaperChoice(paper, units, words));
    }
    return result instanceof RoomResult.Adjusted ? 0 : ExitCode.REFUSED.code();
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
