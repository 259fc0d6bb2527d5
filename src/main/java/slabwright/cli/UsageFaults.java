package slabwright.cli;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;

/**
 * Wrong use of the command line, said in the reader's words: the library that takes the line apart
 * has its own sentences in English alone.
 */
record UsageFaults(Words words) implements IParameterExceptionHandler {
  /** A value that can't be one, and why. */
  private static final class UnreadableValue extends CommandLine.TypeConversionException {
    private static final long serialVersionUID = 1;

    private final transient Message why;

    UnreadableValue(Message why) {
      super(why.key());
      this.why = why;
    }
  }

  /** What a command finds wrong with how it was asked. */
  static final class WrongUse extends ParameterException {
    private static final long serialVersionUID = 1;

    private final transient Message why;

    WrongUse(CommandLine line, Message why) {
      super(line, why.key());
      this.why = why;
    }
  }

  /** Has a command line say it, and read values so that each can be said. */
  static void sayFor(CommandLine line, Words words) {
    line.registerConverter(Length.class, UsageFaults::length);
    line.registerConverter(Path.class, UsageFaults::path);
    line.registerConverter(Integer.class, UsageFaults::whole);
    line.registerConverter(int.class, UsageFaults::whole);
    line.registerConverter(Double.class, UsageFaults::decimal);
    line.registerConverter(double.class, UsageFaults::decimal);
    line.setParameterExceptionHandler(new UsageFaults(words));
  }

  private static Length length(String text) {
    Result<Length> read = Length.parse(text);
    if (read instanceof Result.Refused<Length> bad) {
      throw new UnreadableValue(bad.message());
    }
    return read.orThrow();
  }

  private static Path path(String text) {
    try {
      if (!text.isBlank()) {
        return Path.of(text);
      }
    } catch (InvalidPathException e) {
      throw new UnreadableValue(Message.of("cli.slabwright.no-path", text));
    }
    throw new UnreadableValue(Message.of("cli.slabwright.no-path", text));
  }

  private static int whole(String text) {
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw new UnreadableValue(Message.of("cli.usage.no-whole-number", text));
    }
  }

  private static double decimal(String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new UnreadableValue(Message.of("cli.usage.no-number", text));
    }
  }

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    CommandLine line = e.getCommandLine();
    PrintWriter err = line.getErr();
    err.println(words.say(message(e)));
    List<String> near =
        e instanceof UnmatchedArgumentException unknown ? unknown.getSuggestions() : List.of();
    if (near.isEmpty()) {
      line.usage(err);
    } else {
      err.println(words.say("cli.usage.did-you-mean", String.join(", ", near)));
    }
    return ExitCode.USAGE.code();
  }

  private static Message message(ParameterException e) {
    if (e instanceof WrongUse ours) {
      return ours.why;
    }
    if (e instanceof MissingParameterException missing) {
      return Message.of(
          "cli.usage.missing",
          missing.getMissing().stream().map(UsageFaults::named).collect(Collectors.joining(", ")));
    }
    if (e instanceof UnmatchedArgumentException unknown) {
      String all = String.join(" ", unknown.getUnmatched());
      return unknown.isUnknownOption()
          ? Message.of("cli.usage.unknown-option", all)
          : Message.of("cli.usage.unknown-word", all);
    }
    if (e instanceof OverwrittenOptionException twice) {
      return Message.of("cli.usage.twice", named(twice.getOverwritten()));
    }
    if (e instanceof MutuallyExclusiveArgsException) {
      return Message.of("cli.usage.not-together");
    }
    return e.getArgSpec() == null ? Message.of("cli.usage.unreadable") : value(e, e.getArgSpec());
  }

  private static Message value(ParameterException e, ArgSpec arg) {
    if (e.getCause() instanceof UnreadableValue unreadable) {
      return Message.of("cli.usage.value-because", named(arg), unreadable.why);
    }
    if (arg.type().isEnum()) {
      String all =
          StreamSupport.stream(arg.completionCandidates().spliterator(), false)
              .collect(Collectors.joining(", "));
      return Message.of("cli.usage.one-of", named(arg), all);
    }
    return Message.of("cli.usage.value", named(arg));
  }

  /** As it is written on the line, with what its value is called. */
  private static String named(ArgSpec arg) {
    if (!(arg instanceof OptionSpec option)) {
      return arg.paramLabel();
    }
    return option.arity().max() == 0
        ? option.longestName()
        : option.longestName() + " " + option.paramLabel();
  }
}
