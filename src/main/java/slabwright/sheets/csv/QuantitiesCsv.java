package slabwright.sheets.csv;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import slabwright.floor.CutIn;
import slabwright.floor.EdgeTally;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.HandWorkKind;
import slabwright.floor.MachineShare;
import slabwright.floor.Transition;
import slabwright.floor.Zone;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.panel.Panel;
import slabwright.site.EdgeClass;
import slabwright.site.Mark;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/** Every number of the take-off and the inlays as one CSV table: area, group, item, value, unit. */
public final class QuantitiesCsv {
  private final List<List<String>> rows = new ArrayList<>();
  private final Words words;

  private QuantitiesCsv(Words words) {
    this.words = words;
    rows.add(
        List.of(
            words.say("sheets.quantities-csv.area"),
            words.say("sheets.quantities-csv.group"),
            words.say("sheets.quantities-csv.item"),
            words.say("sheets.quantities-csv.value"),
            words.say("sheets.quantities-csv.unit")));
  }

  /** The table of all areas; lengths in mm, areas in mm². */
  public static String write(List<AreaResult> areas, Words words) {
    QuantitiesCsv q = new QuantitiesCsv(words);
    for (AreaResult a : areas) {
      q.floor(a.takeoff());
      a.inlays().forEach(i -> q.inlay(a.takeoff().area().id(), i));
    }
    return Csv.write(q.rows);
  }

  private void row(String area, String group, String item, double value, String unit) {
    BigDecimal d = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP);
    rows.add(List.of(area, group, item, d.stripTrailingZeros().toPlainString(), unit));
  }

  private void floor(FloorTakeoff t) {
    String id = t.area().id();
    row(
        id,
        words.say("sheets.quantities-csv.floor"),
        words.say("sheets.quantities-csv.gross"),
        t.gross().area(),
        "mm2");
    row(
        id,
        words.say("sheets.quantities-csv.floor"),
        words.say("sheets.quantities-csv.net"),
        t.net().area(),
        "mm2");
    row(
        id,
        words.say("sheets.quantities-csv.floor"),
        t.isGrindingChosen()
            ? words.say("sheets.quantities-csv.to-be-ground")
            : words.say("sheets.quantities-csv.if-ground"),
        t.ground().area(),
        "mm2");
    row(
        id,
        words.say("sheets.quantities-csv.floor"),
        words.say("sheets.quantities-csv.machine-as-found"),
        t.asFound().machine().area(),
        "mm2");
    row(
        id,
        words.say("sheets.quantities-csv.floor"),
        words.say("sheets.quantities-csv.machine-once-level"),
        t.levelled().machine().area(),
        "mm2");
    row(
        id,
        words.say("sheets.quantities-csv.floor"),
        words.say("sheets.quantities-csv.hand-as-found"),
        t.asFound().hand().area(),
        "mm2");
    row(
        id,
        words.say("sheets.quantities-csv.floor"),
        words.say("sheets.quantities-csv.hand-once-level"),
        t.levelled().hand().area(),
        "mm2");
    for (HandWorkKind k : HandWorkKind.values()) {
      row(
          id,
          words.say("sheets.quantities-csv.hand-as-found"),
          words.say(k.word()),
          t.asFound().handArea(k),
          "mm2");
    }
    for (Zone z : t.zones()) {
      row(
          id,
          words.say("sheets.quantities-csv.zone", z.kind()),
          z.mark().map(Mark::id).orElse("slab"),
          z.area(),
          "mm2");
    }
    for (EdgeClass c : EdgeClass.values()) {
      row(id, words.say("sheets.quantities-csv.edge"), words.say(c.label()), t.edgeLength(c), "mm");
    }
    double transitions = t.transitions().stream().mapToDouble(Transition::length).sum();
    row(
        id,
        words.say("sheets.quantities-csv.edge"),
        words.say("sheets.quantities-csv.transitions"),
        transitions,
        "mm");
    row(
        id,
        words.say("sheets.quantities-csv.edge"),
        words.say("sheets.quantities-csv.cut-in"),
        t.cutIn(),
        "mm");
    prep(id, t);
  }

  private void prep(String id, FloorTakeoff t) {
    for (CutIn c : CutIn.values()) {
      row(id, words.say("sheets.quantities-csv.cut-in"), words.say(c.words()), c.length(t), "mm");
    }
    for (MachineShare m : t.asFound().shares()) {
      row(
          id,
          words.say("sheets.quantities-csv.machine-as-found"),
          m.machine().id(),
          m.area(),
          "mm2");
    }
    for (MachineShare m : t.levelled().shares()) {
      row(
          id,
          words.say("sheets.quantities-csv.machine-once-level"),
          m.machine().id(),
          m.area(),
          "mm2");
    }
    EdgeTally tally = t.tally();
    row(
        id,
        words.say("sheets.quantities-csv.corners"),
        words.say("sheets.quantities-csv.inside"),
        tally.corners().inside().size(),
        words.say("sheets.quantities-csv.corners"));
    row(
        id,
        words.say("sheets.quantities-csv.corners"),
        words.say("sheets.quantities-csv.outside"),
        tally.corners().outside().size(),
        words.say("sheets.quantities-csv.corners"));
    row(
        id,
        words.say("sheets.quantities-csv.corners"),
        words.say("sheets.quantities-csv.free-standing-ends"),
        tally.ends().size(),
        words.say("sheets.quantities-csv.ends"));
    tally
        .lines()
        .forEach(
            l ->
                row(
                    id,
                    words.say("sheets.quantities-csv.line"),
                    words.say(l.kind().label()),
                    l.length(),
                    "mm"));
  }

  private void inlay(String area, PlacedInlay placed) {
    InlayPlan p = placed.plan();
    String group = words.say("sheets.quantities-csv.inlay", placed.inlay().id());
    for (ColourRegion c : placed.artwork().colours()) {
      row(
          area,
          group,
          words.say("sheets.quantities-csv.colour", c.hex()),
          c.region().area(),
          "mm2");
    }
    row(area, group, words.say("sheets.quantities-csv.openings"), p.openingArea(), "mm2");
    row(area, group, words.say("sheets.quantities-csv.blank"), p.blankArea(), "mm2");
    row(area, group, words.say("sheets.quantities-csv.mask"), p.maskArea(), "mm2");
    row(area, group, words.say("sheets.quantities-csv.cut-length"), p.cutLength(), "mm");
    row(
        area,
        group,
        words.say("sheets.quantities-csv.loose-pieces"),
        p.loosePieces(),
        words.say("sheets.quantities-csv.pieces"));
    row(area, group, words.say("sheets.quantities-csv.roll-length"), p.rollLength(), "mm");
    row(area, group, words.say("sheets.quantities-csv.press-band"), p.pressBandArea(), "mm2");
    row(area, group, words.say("sheets.quantities-csv.skirt"), p.skirtArea(), "mm2");
    for (Panel panel : p.panels().map(x -> x.all()).orElse(List.of())) {
      row(
          area,
          group,
          words.say("sheets.quantities-csv.panel-width", panel.name()),
          panel.box().width(),
          "mm");
      row(
          area,
          group,
          words.say("sheets.quantities-csv.panel-height", panel.name()),
          panel.box().height(),
          "mm");
    }
  }
}
