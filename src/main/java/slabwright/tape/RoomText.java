package slabwright.tape;

import java.util.List;
import java.util.Locale;
import slabwright.tape.AdjustedRoom.Corner;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** The outcome of an adjustment as plain text, for the command line and for notes. */
public final class RoomText {
  private final UnitSystem units;
  private final StringBuilder out = new StringBuilder();

  private RoomText(UnitSystem units) {
    this.units = units;
  }

  /** Several lines, each ended; lengths in these units, corner places in mm. */
  public static String of(RoomResult result, UnitSystem units) {
    return new RoomText(units).write(result);
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

  private void line(String format, Object... values) {
    out.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values))
        .append('\n');
  }

  private void room(AdjustedRoom room) {
    line("Area %s%s", area(room.area()), room.areaSd().map(sd -> " ± " + area(sd)).orElse(""));
    line(
        "%s, %d corners, %d readings, %d more than needed",
        switch (room.method()) {
          case COMPASS_RULE -> "Compass rule";
          case LEAST_SQUARES -> "Least squares";
        },
        room.corners().size(),
        room.readings().size(),
        room.redundancy());
    closing(room.closing());
    room.advice().forEach(a -> line("! " + a.sentence()));
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
      line("The plain walk ends %s off after %s%s", gap, way, oneIn(closing));
    }
  }

  private static String oneIn(ClosingReport closing) {
    return closing.oneIn() > 1_000_000 ? "" : ", 1/" + closing.oneIn();
  }

  private void corners(List<Corner> corners) {
    line("");
    line("corner          x mm         y mm   ± long  ± short  bearing");
    for (Corner c : corners) {
      String ellipse =
          c.ellipse()
              .map(e -> "%8.1f %8.1f %7.0f°".formatted(e.major(), e.minor(), e.bearing()))
              .orElse("");
      line("%-6s %13.1f %12.1f %s", c.name(), c.at().x(), c.at().y(), ellipse);
    }
  }

  private void readings(List<ReadingReport> readings) {
    line("");
    line("reading                             read       adjusted  residual  checked  stands out");
    for (ReadingReport r : readings) {
      line(
          "%-30s %12s %12s %9s %7.0f%% %10.1f%s",
          r.name(),
          value(r, r.read()),
          value(r, r.adjusted()),
          r.turn()
              ? QuantityFormat.number(r.residual(), 2) + "°"
              : QuantityFormat.number(r.residual(), 1) + " mm",
          100 * r.redundancy(),
          Math.abs(r.statistic()),
          r.use() == ReadingReport.Use.LEFT_OUT ? "  left out" : "");
    }
  }

  private String value(ReadingReport r, double v) {
    return r.turn() ? QuantityFormat.number(v, 2) + "°" : LengthFormat.show(v, units);
  }
}
