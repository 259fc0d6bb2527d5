package slabwright.tape;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import slabwright.tape.AdjustedRoom.Corner;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** The outcome of an adjustment as plain text, for the command line and for notes. */
public final class RoomText {
  private final UnitSystem units;
  private final Function<Message, String> words;
  private final StringBuilder out = new StringBuilder();

  private RoomText(UnitSystem units, Function<Message, String> words) {
    this.units = units;
    this.words = words;
  }

  /**
   * Several lines, each ended; all lengths in these units.
   *
   * @param words of the door that shows it
   */
  public static String of(RoomResult result, UnitSystem units, Function<Message, String> words) {
    return new RoomText(units, words).write(result);
  }

  private String write(RoomResult result) {
    if (result instanceof RoomResult.Refused refused) {
      line(refused.sentence());
    } else if (result instanceof RoomResult.NeedsMore more) {
      line(more.sentence());
    } else if (result instanceof RoomResult.Adjusted adjusted) {
      room(adjusted.room());
    }
    return out.toString();
  }

  private void line(Message message) {
    line(words.apply(message));
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private void room(AdjustedRoom room) {
    String sd = room.areaSd().map(a -> " ± " + area(a)).orElse("");
    line(Message.of("tape.room-text.area", area(room.area()) + sd));
    int corners = room.corners().size();
    int readings = room.readings().size();
    line(
        switch (room.method()) {
          case COMPASS_RULE ->
              Message.of("tape.room-text.compass-rule", corners, readings, room.redundancy());
          case LEAST_SQUARES ->
              Message.of("tape.room-text.least-squares", corners, readings, room.redundancy());
        });
    if (room.areaSd().isPresent()) {
      line(Message.of("tape.room-text.plus-minus"));
    }
    closing(room.closing());
    room.advice().forEach(a -> line("! " + words.apply(a.sentence())));
    corners(room.corners());
    readings(room.readings());
  }

  private String area(double mm2) {
    return QuantityFormat.area(mm2, units);
  }

  private void closing(ClosingReport closing) {
    if (closing.complete()) {
      String gap = LengthFormat.show(closing.gap().length(), units);
      String way = LengthFormat.show(closing.perimeter(), units);
      line(
          closing.oneIn() > 1_000_000
              ? Message.of("tape.room-text.walk-ends", gap, way)
              : Message.of("tape.room-text.walk-ends-one-in", gap, way, closing.oneIn()));
    }
  }

  private void corners(List<Corner> corners) {
    line("");
    line(Message.of("tape.room-text.head-of-corners"));
    for (Corner c : corners) {
      String ellipse =
          c.ellipse()
              .map(e -> row("%10s %10s %7.0f°", small(e.major()), small(e.minor()), e.bearing()))
              .orElse("");
      line(row("%-6s %13s %13s %s", c.name(), small(c.at().x()), small(c.at().y()), ellipse));
    }
  }

  private String small(double mm) {
    return LengthFormat.small(mm, units);
  }

  private static String row(String pattern, Object... cells) {
    return String.format(Locale.ROOT, pattern, cells);
  }

  private void readings(List<ReadingReport> readings) {
    line("");
    line(Message.of("tape.room-text.head-of-readings"));
    for (ReadingReport r : readings) {
      line(reading(r));
    }
  }

  private String reading(ReadingReport r) {
    String row =
        row(
            "%-30s %12s %12s %9s %7.0f%% %10.1f",
            words.apply(r.name()),
            value(r, r.read()),
            value(r, r.adjusted()),
            r.shownResidual(units),
            100 * r.redundancy(),
            Math.abs(r.statistic()));
    return r.use() == ReadingReport.Use.LEFT_OUT
        ? row + "  " + words.apply(Message.of("tape.room-text.left-out"))
        : row;
  }

  private String value(ReadingReport r, double v) {
    return r.turn() ? QuantityFormat.number(v, 2) + "°" : LengthFormat.show(v, units);
  }
}
