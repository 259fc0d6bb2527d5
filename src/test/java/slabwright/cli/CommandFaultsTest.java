package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import org.junit.jupiter.api.Test;
import slabwright.units.Message;
import slabwright.words.Words;

/** What ended a command, in a line. */
class CommandFaultsTest {
  private static final Words WORDS = Words.english();

  private static String said(Exception e) {
    StringWriter err = new StringWriter();
    assertThat(new CommandFaults(new PrintWriter(err), WORDS).say(e)).isEqualTo(ExitCode.REFUSED);
    return err.toString().strip();
  }

  @Test
  void a_full_disk_asks_for_room_and_not_for_permissions() {
    assertThat(said(new FileSystemException("a.svg", "b.svg", "No space left on device")))
        .isEqualTo(WORDS.say("cli.slabwright.disk-fault", "a.svg: No space left on device"));
  }

  @Test
  void a_file_that_may_not_be_touched_asks_for_permissions() {
    Message not = Message.of("cli.slabwright.not-allowed");
    assertThat(said(new AccessDeniedException("a.svg")))
        .isEqualTo(WORDS.say("cli.slabwright.file-unusable", "a.svg", not));
  }
}
