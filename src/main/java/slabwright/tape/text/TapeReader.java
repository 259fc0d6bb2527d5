package slabwright.tape.text;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slabwright.tape.TapeRoom;
import slabwright.tape.text.LineScanner.TapeSyntaxException;
import slabwright.units.Message;
import slabwright.units.Result;

/** Reads a tape file line by line; stops at the first line that can't be understood. */
final class TapeReader {
  private static final Set<String> WALLS = Set.of("wall", "curve");

  private final List<String> lines;
  private final Set<String> settings = new HashSet<>();
  private TapeRoom room;
  private int wall;

  TapeReader(String text) {
    lines = text.lines().toList();
    room =
        TapeRoom.of(
            (int) lines.stream().filter(l -> WALLS.contains(new LineScanner(l).peek())).count());
  }

  Result<TapeRoom> read() {
    if (room.corners() < TapeRoom.FEWEST_CORNERS || room.corners() > TapeRoom.MOST_CORNERS) {
      return Result.refused(Message.of("tape.tape-reader.number-of-walls", room.corners()));
    }
    for (int i = 0; i < lines.size(); i++) {
      try {
        line(new LineScanner(lines.get(i)));
      } catch (TapeSyntaxException misfit) {
        return Result.refused(
            Message.of("tape.tape-reader.at-line", i + 1, misfit.column(), misfit.why()));
      }
    }
    return Result.ok(room);
  }

  private void line(LineScanner words) throws TapeSyntaxException {
    switch (words.peek()) {
      case "" -> {
        return;
      }
      case "wall", "curve" -> {
        new WallLineParser(words, room.corners(), wall).read().forEach(r -> room = room.with(r));
        wall++;
      }
      case "diagonal", "check" ->
          room = room.with(new CrossReadingParser(words, room.corners()).read());
      case "open", "kerb", "doorway" ->
          room = room.with(new CrossReadingParser(words, room.corners()).note());
      case "turn" -> turn(words);
      case "tape", "closing" -> setting(words);
      default -> throw words.syntaxError(Message.of("tape.tape-reader.line-begins-with"));
    }
    words.expectEnd();
  }

  private void turn(LineScanner words) throws TapeSyntaxException {
    if (!words.nextIs("at")) {
      setting(words);
      return;
    }
    room = room.with(new CrossReadingParser(words, room.corners()).turn());
  }

  private void setting(LineScanner words) throws TapeSyntaxException {
    if (!settings.add(words.peek())) {
      throw words.syntaxError(Message.of("tape.tape-reader.set-already"));
    }
    room = SettingLineParser.read(words, room);
  }
}
