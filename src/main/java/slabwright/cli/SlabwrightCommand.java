package slabwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Properties;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import slabwright.units.Length;
import slabwright.units.Result;
import slabwright.words.Words;

/** The command line: one class a command. How they end: {@link ExitCode}. */
@Command(
    name = "slabwright",
    subcommands = {
      JobCommand.class,
      CheckCommand.class,
      TallyCommand.class,
      InlayCommand.class,
      SheetsCommand.class,
      TapeCommand.class,
      ProofCommand.class,
      ActualsCommand.class,
      PictureCommand.class,
      ReleaseCommand.class,
      ChangesCommand.class
    },
    mixinStandardHelpOptions = true,
    synopsisSubcommandLabel = "COMMAND")
public final class SlabwrightCommand {
  private static final String VERSION = "0.1.0";

  /** Runs a command and returns its exit code. */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    Words words = Words.english();
    CommandLine line = commands(words);
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(Length.class, text -> length(text, words));
    line.registerConverter(Path.class, text -> path(text, words));
    CommandFaults faults = new CommandFaults(err, words);
    line.setExecutionExceptionHandler((e, cmd, parsed) -> faults.say(e).code());
    int code = code(line, faults, args.length == 0 ? new String[] {"--help"} : args);
    out.flush();
    err.flush();
    return code;
  }

  /** Errors too are said in a line: a drawing may be larger than the memory, or deeper. */
  private static int code(CommandLine line, CommandFaults faults, String... args) {
    try {
      return line.execute(args);
    } catch (OutOfMemoryError | StackOverflowError tooMuch) {
      return faults.say(tooMuch).code();
    }
  }

  /** The commands with their help in the reader's language. */
  static CommandLine commands(Words words) {
    CommandLine line = new CommandLine(new SlabwrightCommand());
    line.setResourceBundle(words.bundle("cli-options"));
    line.getCommandSpec().version(words.say("cli.slabwright.version", version()));
    return line;
  }

  /** The release, and the commit when the build wrote it down. */
  private static String version() {
    try (InputStream in =
        SlabwrightCommand.class.getResourceAsStream("/slabwright/version.properties")) {
      Properties built = new Properties();
      if (in != null) {
        built.load(in);
      }
      String commit = built.getProperty("git.commit.id.describe", "");
      return commit.isEmpty() ? VERSION : VERSION + " (" + commit + ")";
    } catch (IOException e) {
      return VERSION;
    }
  }

  private static Path path(String text, Words words) {
    try {
      if (!text.isBlank()) {
        return Path.of(text);
      }
    } catch (InvalidPathException e) {
      throw new CommandLine.TypeConversionException(words.say("cli.slabwright.no-path", text));
    }
    throw new CommandLine.TypeConversionException(words.say("cli.slabwright.no-path", text));
  }

  private static Length length(String text, Words words) {
    Result<Length> read = Length.parse(text);
    if (read instanceof Result.Refused<Length> bad) {
      throw new CommandLine.TypeConversionException(words.say(bad.message()));
    }
    return read.orThrow();
  }
}
