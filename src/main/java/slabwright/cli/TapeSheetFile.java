package slabwright.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import slabwright.project.RefusedInput;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.sheets.page.SheetOptions;
import slabwright.sheets.tape.TapeSheet;
import slabwright.store.AtomicFile;
import slabwright.tape.RoomResult;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The picture of a taped room, as a file. */
final class TapeSheetFile {
  private TapeSheetFile() {}

  /** What it is drawn on, and in whose words; no paper for the usual one of the units. */
  record PaperChoice(String paper, UnitSystem units, Words words) {}

  static void write(RoomResult result, Path out, Path tape, PaperChoice on)
      throws RefusedInput, IOException {
    String kind = out.toString().toLowerCase(Locale.ROOT);
    if (!kind.endsWith(".svg") && !kind.endsWith(".pdf")) {
      throw RefusedInput.of(Message.of("cli.tape-sheet.ending", out.toString()));
    }
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    String name = tape.getFileName().toString().replaceAll("\\.tape$", "");
    SheetOptions options =
        new SheetOptions(SheetsCommand.paper(on.paper(), on.units()), today, on.words());
    List<PrintedPage> pages = TapeSheet.of(result, name, on.units(), options);
    AtomicFile.write(out, kind.endsWith(".svg") ? svg(pages) : pdf(pages, name, today));
  }

  private static byte[] svg(List<PrintedPage> pages) throws IOException {
    String first = SheetFiles.svgs(pages.subList(0, 1)).values().iterator().next();
    return first.getBytes(StandardCharsets.UTF_8);
  }

  private static byte[] pdf(List<PrintedPage> pages, String name, LocalDate day)
      throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    SheetFiles.pdf(pages, name, day, bytes);
    return bytes.toByteArray();
  }
}
