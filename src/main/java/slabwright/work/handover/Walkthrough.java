package slabwright.work.handover;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.MoistureReading;
import slabwright.site.Setting;
import slabwright.site.Site;
import slabwright.site.Slab;

/** The questions still open when one walks the site: what the plan does not know yet, and why. */
final class Walkthrough {
  private Walkthrough() {}

  public static HandoverDocument of(Site site) {
    List<HandoverDocument.Section> sections = new ArrayList<>();
    sections.add(new HandoverDocument.Section("The site", always(site)));
    site.areas().forEach(a -> sections.add(new HandoverDocument.Section(a.name(), open(a))));
    return new HandoverDocument(
        "Walkthrough: " + site.name(), List.of(site.note()), sections, List.of());
  }

  private static List<HandoverDocument.Row> always(Site site) {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    if (site.start().isEmpty()) {
      ask(rows, "When can work start?", "the day plan needs a date");
    }
    ask(rows, "Who opens, who locks, who may say stop?", "");
    ask(rows, "Which other trades are there, and when are they off the floor?", "solvent work");
    ask(
        rows,
        "Which neighbours share air, gas or a wall?",
        "vapour travels along floors and ducts");
    ask(rows, "Where is power, of which rating, and where is water?", "grinders and vacuums");
    ask(rows, "From when to when may there be noise?", "grinding hours");
    ask(rows, "Which alarms are there, and who switches them off and on?", "dust and vapour");
    ask(rows, "Where may dust, slurry, cans and rags go?", "waste");
    ask(rows, "How wide are doors, ramps and lifts on the way in?", "the machine has to get there");
    return rows;
  }

  private static List<HandoverDocument.Row> open(FloorArea area) {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    slab(rows, area.slab());
    if (area.setting() == Setting.INDOOR) {
      indoor(rows, area);
    }
    use(rows, area.use(), area.setting() == Setting.INDOOR);
    if (area.finish().exposure().isEmpty()) {
      ask(rows, "How much aggregate shall show?", "without it no grinding can be planned");
    }
    if (area.finish().coats().isEmpty()) {
      ask(rows, "Which finish?", "no product is chosen");
    }
    return rows;
  }

  private static void slab(List<HandoverDocument.Row> rows, Slab slab) {
    askIf(rows, slab.mohs().isEmpty(), "Scratch hardness (Mohs)?", "chooses the bond");
    boolean probed = slab.moisture().stream().anyMatch(m -> m.test() == MoistureReading.Test.F2170);
    askIf(rows, !probed, "Moisture in the slab (ASTM F2170)?", "chooses the sealer");
    askIf(rows, slab.vapourBarrier().isEmpty(), "Is there a vapour barrier?", "chooses the sealer");
    askIf(rows, slab.thickness().isEmpty(), "How thick is the slab?", "probes sit at 40 % of it");
    boolean temperatures =
        slab.airC().isPresent() && slab.surfaceC().isPresent() && slab.humidity().isPresent();
    askIf(rows, !temperatures, "Air, humidity, surface temperature?", "dew point, working time");
  }

  private static void use(List<HandoverDocument.Row> rows, FloorUse use, boolean indoors) {
    askIf(rows, use.wet().isEmpty(), "Does it get wet in use?", "grit in the last coat");
    askIf(rows, use.sun().isEmpty(), "Does the sun fall on it?", "dye and sealer fast to sunlight");
    boolean traffic = indoors && use.traffic().isEmpty();
    askIf(rows, traffic, "Chairs, carts, many feet?", "a topcoat over the sealer");
  }

  private static void indoor(List<HandoverDocument.Row> rows, FloorArea area) {
    askIf(rows, area.air().ceiling().isEmpty(), "Ceiling height?", "vapour");
    askIf(rows, area.air().airflowM3PerHour() == 0, "How much fresh air can be moved?", "vapour");
    askIf(rows, none(area, MarkType.IGNITION_SOURCE), "Pilot lights, heaters, flames?", "vapour");
    askIf(rows, none(area, MarkType.DETECTOR), "Smoke detectors and sprinkler heads?", "dust");
    askIf(rows, none(area, MarkType.AIR_OUTLET), "Where can air be drawn out?", "vapour");
    askIf(rows, none(area, MarkType.POWER_POINT), "Power points?", "machines");
    askIf(rows, area.machines().isEmpty(), "Which machine comes?", "hand work follows from it");
  }

  private static boolean none(FloorArea area, MarkType type) {
    return area.marks().stream().map(Mark::kind).noneMatch(k -> k.type() == type);
  }

  private static void askIf(
      List<HandoverDocument.Row> rows, boolean open, String question, String why) {
    if (open) {
      ask(rows, question, why);
    }
  }

  private static void ask(List<HandoverDocument.Row> rows, String question, String why) {
    rows.add(HandoverDocument.Row.toTick(question, why));
  }
}
