package slabwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ScopeType;
import slabwright.words.Words;

/** The command line: one class a command. How they end: {@link ExitCode}. */
@Command(name = "slabwright", mixinStandardHelpOptions = true, synopsisSubcommandLabel = "COMMAND")
public final class SlabwrightCommand {
  private static final String VERSION = "0.1.0";
  private static final String LANGUAGE = "--language";

  /**
   * Runs a command and returns its exit code. It speaks the language that is asked for, else the
   * system's; English where nobody has written that one.
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    Optional<String> asked = asked(args);
    Optional<Words> chosen = asked.map(Words::ofTag).orElse(Optional.of(Words.ofSystem()));
    if (chosen.isEmpty()) {
      err.println(Words.ofSystem().say("cli.slabwright.no-language", asked.orElse("")));
      err.flush();
      return ExitCode.USAGE.code();
    }
    Words words = chosen.get();
    CommandLine line = commands(words);
    line.setOut(out);
    line.setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    UsageFaults.sayFor(line, words);
    CommandFaults faults = new CommandFaults(err, words);
    line.setExecutionExceptionHandler((e, cmd, parsed) -> faults.say(e).code());
    int code = code(line, faults, args.length == 0 ? new String[] {"--help"} : args);
    out.flush();
    err.flush();
    return code;
  }

  private static Optional<String> asked(String... args) {
    for (int i = 0; i < args.length; i++) {
      if (args[i].startsWith(LANGUAGE + "=")) {
        return Optional.of(args[i].substring(LANGUAGE.length() + 1));
      }
      if (args[i].equals(LANGUAGE) && i + 1 < args.length) {
        return Optional.of(args[i + 1]);
      }
    }
    return Optional.empty();
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
    line.getCommandSpec().addOption(language());
    List.of(
            new JobCommand(words),
            new CheckCommand(words),
            new TallyCommand(words),
            new InlayCommand(words),
            new SheetsCommand(words),
            new TapeCommand(words),
            new ProofCommand(words),
            new ActualsCommand(words),
            new PictureCommand(words),
            new ReleaseCommand(words),
            new ChangesCommand(words))
        .forEach(line::addSubcommand);
    line.setResourceBundle(words.bundle("cli-options"));
    line.getCommandSpec().version(words.say("cli.slabwright.version", version()));
    return line;
  }

  /** Of every command. It is read before the others, as their help is in it. */
  private static OptionSpec language() {
    return OptionSpec.builder(LANGUAGE)
        .paramLabel("TAG")
        .descriptionKey("language")
        .type(String.class)
        .scopeType(ScopeType.INHERIT)
        .build();
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
}
