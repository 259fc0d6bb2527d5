package slabwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.util.Properties;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import slabwright.project.RefusedInput;
import slabwright.units.Length;
import slabwright.units.Refusal;
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
    line.setExecutionExceptionHandler((e, cmd, parsed) -> exitCode(e, err, words));
    int code = line.execute(args.length == 0 ? new String[] {"--help"} : args);
    out.flush();
    err.flush();
    return code;
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

  private static Length length(String text, Words words) {
    Result<Length> read = Length.parse(text);
    if (read instanceof Result.Refused<Length> bad) {
      throw new CommandLine.TypeConversionException(words.say(bad.message()));
    }
    return read.orThrow();
  }

  /** The sentence with its place in the file, where the sentence does not say it already. */
  private static String line(Refusal r, Words words) {
    String sentence = words.say(r.message());
    return r.place().isEmpty() || sentence.contains(r.place())
        ? sentence
        : r.place() + ": " + sentence;
  }

  private static int exitCode(Exception e, PrintWriter err, Words words) {
    if (e instanceof RefusedInput refusal) {
      refusal.refusals().forEach(r -> err.println(line(r, words)));
      return ExitCode.REFUSED.code();
    }
    if (e instanceof FileSystemException f) {
      String why = f.getReason() == null ? f.getClass().getSimpleName() : f.getReason();
      err.println(words.say("cli.slabwright.file-unusable", String.valueOf(f.getFile()), why));
      return ExitCode.REFUSED.code();
    }
    err.println(words.say("cli.slabwright.own-fault", e.toString()));
    return ExitCode.OWN_FAULT.code();
  }
}
