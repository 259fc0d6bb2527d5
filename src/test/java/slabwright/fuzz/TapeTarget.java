package slabwright.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.SheetOptions;
import slabwright.sheets.tape.TapeSheet;
import slabwright.tape.RoomAdjustment;
import slabwright.tape.RoomResult;
import slabwright.tape.RoomText;
import slabwright.tape.TapeRoom;
import slabwright.tape.text.TapeText;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The readings of a room: adjusted, said as text, drawn as a sheet. */
final class TapeTarget implements FuzzTarget {
  private static final SheetOptions SHEET =
      new SheetOptions(PaperSize.A3, LocalDate.of(2026, 11, 27), Words.english());

  private final List<String> rooms;

  TapeTarget() throws IOException {
    rooms =
        List.of(
            Files.readString(Path.of("sample-plans/back-office.tape")),
            """
            unit m
            wall A B 8.02 open
            wall B C 2*4.51
            wall C D 8.00
            wall D A 9.03
            diagonal A C 12.05
            diagonal B D 12.07
            """);
  }

  @Override
  public byte[] input(Random random) {
    String room = rooms.get(random.nextInt(rooms.size()));
    return new TextMutator(random, List.of()).spoil(room).getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public List<Message> read(byte[] input) {
    Result<TapeRoom> read = TapeText.read(new String(input, StandardCharsets.UTF_8));
    if (read instanceof Result.Refused<TapeRoom> bad) {
      return bad.refusals().stream().map(Refusal::message).toList();
    }
    String written = TapeText.write(read.orThrow());
    if (!TapeText.write(TapeText.read(written).orThrow()).equals(written)) {
      throw new IllegalStateException("not the same once written and read again");
    }
    RoomResult result = RoomAdjustment.of(read.orThrow(), UnitSystem.FEET_INCHES);
    if (result instanceof RoomResult.Refused refused) {
      return List.of(refused.sentence());
    }
    String text = RoomText.of(result, UnitSystem.FEET_INCHES, Words.english()::say);
    if (text.contains("NaN") || text.contains("∞")) {
      throw new IllegalStateException("a figure that is none: " + text);
    }
    TapeSheet.of(result, "room", UnitSystem.METRIC, SHEET);
    return result instanceof RoomResult.NeedsMore more ? List.of(more.sentence()) : List.of();
  }
}
