package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TapeSheetFileTest {
  @TempDir Path folder;

  private final StringWriter err = new StringWriter();

  private int tape(Path out) {
    PrintWriter sink = new PrintWriter(new StringWriter());
    String file = Path.of("sample-plans", "back-office.tape").toString();
    return SlabwrightCommand.run(sink, new PrintWriter(err), "tape", file, "--out", out.toString());
  }

  @Test
  void the_room_is_drawn_as_pdf_and_as_svg() throws IOException {
    assertThat(tape(folder.resolve("room.pdf"))).isZero();
    assertThat(tape(folder.resolve("room.svg"))).isZero();
    byte[] pdf = Files.readAllBytes(folder.resolve("room.pdf"));
    assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    assertThat(Files.readString(folder.resolve("room.svg"))).contains("<svg", "times as large");
  }

  @Test
  void a_picture_of_another_kind_is_refused() {
    assertThat(tape(folder.resolve("room.png"))).isEqualTo(ExitCode.REFUSED.code());
    assertThat(err.toString())
        .containsPattern(Spoken.of("cli.tape-sheet.ending", folder.resolve("room.png").toString()));
  }
}
