package slabwright.sheets.csv;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.HandWorkKind;
import slabwright.floor.MachineShare;
import slabwright.floor.Obstacle;
import slabwright.floor.Zone;
import slabwright.inlay.PlacedInlay;
import slabwright.site.EdgeClass;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/** The take-off for a spreadsheet: names for people, feet or metres as the plan has them. */
public final class TakeoffCsv {
  private final UnitSystem units;
  private final Words words;
  private final List<List<String>> rows = new ArrayList<>();

  private TakeoffCsv(UnitSystem units, Words words) {
    this.units = units;
    this.words = words;
    rows.add(
        List.of(
            words.say("sheets.takeoff-csv.floor"),
            words.say("sheets.takeoff-csv.what"),
            words.say("sheets.takeoff-csv.name"),
            words.say("sheets.takeoff-csv.value"),
            words.say("sheets.takeoff-csv.unit")));
  }

  /** The table of all areas; a line for each number that is not zero. */
  public static String write(List<AreaResult> areas, UnitSystem units, Words words) {
    TakeoffCsv csv = new TakeoffCsv(units, words);
    areas.forEach(csv::floor);
    return Csv.write(csv.rows);
  }

  private void area(String floor, String what, String name, double mm2) {
    boolean metric = units == UnitSystem.METRIC;
    double one = metric ? 1e6 : QuantityFormat.SQUARE_FOOT_MM2;
    // A square centimetre: a hundred columns are added up from their lines.
    int digits = metric ? 4 : 2;
    row(floor, what, name, mm2 / one, digits, unit(QuantityFormat.area(0, units)));
  }

  private void run(String floor, String what, String name, double mm) {
    double one = units == UnitSystem.METRIC ? 1000 : 304.8;
    row(floor, what, name, mm / one, 2, unit(QuantityFormat.run(0, units)));
  }

  private static String unit(String withNumber) {
    return withNumber.substring(withNumber.indexOf(' ') + 1);
  }

  private void row(String floor, String what, String name, double value, int digits, String unit) {
    if (value > 0) {
      BigDecimal shown = BigDecimal.valueOf(value).setScale(digits, RoundingMode.HALF_UP);
      rows.add(List.of(floor, what, name, shown.toPlainString(), unit));
    }
  }

  private void floor(AreaResult a) {
    FloorTakeoff t = a.takeoff();
    String floor = t.area().name();
    area(floor, words.say("sheets.takeoff-csv.net"), "", t.net().area());
    area(floor, words.say("sheets.takeoff-csv.gross"), "", t.gross().area());
    for (Zone z : t.zones()) {
      area(
          floor,
          words.say("sheets.takeoff-csv.zone"),
          z.mark().map(m -> m.name()).orElseGet(() -> words.say(z.kind())),
          z.area());
    }
    for (Obstacle o : t.standing()) {
      area(floor, words.say("sheets.takeoff-csv.stands"), o.mark().name(), o.area());
    }
    for (MachineShare m : t.asFound().shares()) {
      area(floor, words.say("sheets.takeoff-csv.machine"), m.machine().name(), m.area());
    }
    for (HandWorkKind k : HandWorkKind.values()) {
      area(
          floor,
          words.say("sheets.takeoff-csv.hand"),
          words.say(k.word()),
          t.asFound().handArea(k));
    }
    for (EdgeClass c : EdgeClass.values()) {
      run(floor, words.say("sheets.takeoff-csv.edge"), words.say(c.label()), t.edgeLength(c));
    }
    run(floor, words.say("sheets.takeoff-csv.cut-in"), "", t.cutIn());
    a.inlays().forEach(i -> inlay(floor, i));
  }

  private void inlay(String floor, PlacedInlay placed) {
    String name = placed.inlay().name();
    area(floor, words.say("sheets.takeoff-csv.openings"), name, placed.plan().openingArea());
    run(floor, words.say("sheets.takeoff-csv.film"), name, placed.plan().rollLength());
    run(floor, words.say("sheets.takeoff-csv.cut"), name, placed.plan().cutLength());
  }
}
