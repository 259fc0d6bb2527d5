package slabwright.tape.text;

import slabwright.tape.TapeRoom;
import slabwright.units.Result;

/** A taped room as text that people write and read; the format is docs/tape-format.md. */
public final class TapeText {
  private TapeText() {}

  /** Reads a whole file; a refusal names the line and the column, both from 1. */
  public static Result<TapeRoom> read(String text) {
    return new TapeReader(text).read();
  }

  /** Writes the room so that {@link #read} gives it back; lengths stand as they were typed. */
  public static String write(TapeRoom room) {
    return new TapeWriter(room).write();
  }
}
