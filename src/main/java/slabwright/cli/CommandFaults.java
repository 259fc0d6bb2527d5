package slabwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import slabwright.project.RefusedInput;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.words.Words;

/** What ended a command, said in a line; never a stack trace. */
record CommandFaults(PrintWriter err, Words words) {
  /** Says what was thrown and gives the code to end with. */
  ExitCode say(Throwable thrown) {
    if (thrown instanceof RefusedInput refusal) {
      refusal.refusals().forEach(r -> err.println(line(r)));
      return ExitCode.REFUSED;
    }
    if (thrown instanceof UncheckedIOException wrapped) {
      return say(wrapped.getCause());
    }
    if (thrown instanceof FileSystemException f) {
      String file = String.valueOf(f.getFile());
      if (hasReason(f)) {
        String why = file + ": " + f.getReason();
        err.println(words.say("cli.slabwright.disk-fault", why));
        return ExitCode.REFUSED;
      }
      err.println(words.say("cli.slabwright.file-unusable", file, words.say(why(f))));
      return ExitCode.REFUSED;
    }
    if (thrown instanceof IOException broken) {
      String why = String.valueOf(broken.getMessage());
      err.println(words.say("cli.slabwright.disk-fault", why));
      return ExitCode.REFUSED;
    }
    if (thrown instanceof OutOfMemoryError) {
      err.println(words.say("cli.slabwright.no-memory"));
      return ExitCode.REFUSED;
    }
    err.println(words.say("cli.slabwright.own-fault", thrown.toString()));
    return ExitCode.OWN_FAULT;
  }

  /** Whether the system says itself what is wrong, as of a full disk. */
  private static boolean hasReason(FileSystemException f) {
    boolean known =
        f instanceof NoSuchFileException
            || f instanceof FileAlreadyExistsException
            || f instanceof AccessDeniedException;
    return !known && f.getReason() != null && !f.getReason().isEmpty();
  }

  private static Message why(FileSystemException f) {
    if (f instanceof NoSuchFileException) {
      return Message.of("cli.slabwright.is-not-there");
    }
    if (f instanceof FileAlreadyExistsException) {
      return Message.of("cli.slabwright.is-a-file");
    }
    return Message.of("cli.slabwright.not-allowed");
  }

  /** The sentence with its place in the file, where the sentence does not say it already. */
  private String line(Refusal r) {
    String sentence = words.say(r.message());
    return r.place().isEmpty() || sentence.contains(r.place())
        ? sentence
        : r.place() + ": " + sentence;
  }
}
