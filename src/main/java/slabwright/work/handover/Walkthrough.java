package slabwright.work.handover;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.AreaDetails;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.MoistureReading;
import slabwright.site.Setting;
import slabwright.site.Site;
import slabwright.site.Slab;
import slabwright.units.Message;
import slabwright.work.stop.JobStop;
import slabwright.work.stop.StopFinder;

/** The questions still open when one walks the site: what the plan does not know yet, and why. */
final class Walkthrough {
  private Walkthrough() {}

  /** The questions of a plan that nothing is worked out of. */
  public static HandoverDocument of(Site site) {
    return of(site, site.areas().stream().flatMap(a -> StopFinder.of(a, false).stream()).toList());
  }

  public static HandoverDocument of(Site site, List<JobStop> stops) {
    List<HandoverDocument.Section> sections = new ArrayList<>();
    sections.add(
        new HandoverDocument.Section(Message.of("work.walkthrough.the-site"), always(site)));
    if (!stops.isEmpty()) {
      sections.add(StopRows.section(stops));
    }
    site.areas()
        .forEach(
            a ->
                sections.add(
                    new HandoverDocument.Section(HandoverDocument.said(a.name()), open(a))));
    return new HandoverDocument(
        Message.of("work.walkthrough.walkthrough", site.name()),
        List.of(HandoverDocument.said(site.note())),
        sections,
        List.of());
  }

  private static List<HandoverDocument.Row> always(Site site) {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    if (site.start().isEmpty()) {
      ask(
          rows,
          Message.of("work.walkthrough.when-can-work-start"),
          Message.of("work.walkthrough.the-day-plan-needs-a"));
    }
    ask(rows, Message.of("work.walkthrough.who-opens"), "");
    ask(rows, Message.of("work.walkthrough.who-locks"), "");
    ask(rows, Message.of("work.walkthrough.who-may-say-stop"), "");
    ask(
        rows,
        Message.of("work.walkthrough.which-other-trades-are-there"),
        Message.of("work.walkthrough.solvent-work"));
    ask(
        rows,
        Message.of("work.walkthrough.when-are-trades-off"),
        Message.of("work.walkthrough.solvent-work"));
    ask(
        rows,
        Message.of("work.walkthrough.which-neighbours-share-air-gas"),
        Message.of("work.walkthrough.vapour-travels-along-floors"));
    ask(
        rows,
        Message.of("work.walkthrough.where-is-power-of-which"),
        Message.of("work.walkthrough.grinders-and-vacuums"));
    ask(
        rows,
        Message.of("work.walkthrough.where-is-water"),
        Message.of("work.walkthrough.cleaning-and-mixing"));
    ask(
        rows,
        Message.of("work.walkthrough.from-when-to-when-may"),
        Message.of("work.walkthrough.grinding-hours"));
    ask(
        rows,
        Message.of("work.walkthrough.which-alarms-are-there"),
        Message.of("work.walkthrough.dust-and-vapour"));
    ask(
        rows,
        Message.of("work.walkthrough.who-switches-alarms"),
        Message.of("work.walkthrough.dust-and-vapour"));
    ask(
        rows,
        Message.of("work.walkthrough.where-may-dust-slurry-cans"),
        Message.of("work.walkthrough.waste"));
    ask(
        rows,
        Message.of("work.walkthrough.how-wide-are-doors-ramps"),
        Message.of("work.walkthrough.the-machine-has-to-get"));
    return rows;
  }

  private static List<HandoverDocument.Row> open(FloorArea area) {
    List<HandoverDocument.Row> rows = new ArrayList<>();
    built(rows, area.details().built());
    slab(rows, area.slab(), area.setting() == Setting.INDOOR);
    if (area.setting() == Setting.INDOOR) {
      indoor(rows, area);
    }
    use(rows, area.use(), area.setting() == Setting.INDOOR);
    if (area.finish().exposure().isEmpty()) {
      ask(
          rows,
          Message.of("work.walkthrough.how-much-aggregate-shall-show"),
          Message.of("work.walkthrough.without-it-no-grinding-can"));
    }
    if (area.finish().coats().isEmpty()) {
      ask(
          rows,
          Message.of("work.walkthrough.which-finish"),
          Message.of("work.walkthrough.no-product-is-chosen"));
    }
    return rows;
  }

  /** What is asked of how the floor was built: without it nobody knows what to ask next. */
  private static void built(List<HandoverDocument.Row> rows, AreaDetails.Built built) {
    askIf(
        rows,
        built.year().isEmpty(),
        Message.of("work.walkthrough.year-built"),
        Message.of("work.walkthrough.asbestos-and-lead"));
    askIf(
        rows,
        built.postTensioned().isEmpty(),
        Message.of("work.walkthrough.post-tensioned"),
        Message.of("work.walkthrough.no-drilling"));
    askIf(
        rows,
        built.heated().isEmpty(),
        Message.of("work.walkthrough.heated"),
        Message.of("work.walkthrough.no-drilling"));
  }

  /** An outdoor slab is not probed: it keeps no humidity and no temperature that the test asks. */
  private static void slab(List<HandoverDocument.Row> rows, Slab slab, boolean indoors) {
    askIf(
        rows,
        slab.mohs().isEmpty(),
        Message.of("work.walkthrough.scratch-hardness-mohs"),
        Message.of("work.walkthrough.chooses-the-bond"));
    boolean probed = slab.moisture().stream().anyMatch(m -> m.test() == MoistureReading.Test.F2170);
    askIf(
        rows,
        indoors && !probed,
        Message.of("work.walkthrough.moisture-in-the-slab-astm"),
        Message.of("work.walkthrough.chooses-the-sealer"));
    askIf(
        rows,
        slab.vapourBarrier().isEmpty(),
        Message.of("work.walkthrough.is-there-a-vapour-barrier"),
        Message.of("work.walkthrough.chooses-the-sealer"));
    askIf(
        rows,
        slab.thickness().isEmpty(),
        Message.of("work.walkthrough.how-thick-is-the-slab"),
        Message.of("work.walkthrough.probes-sit-at-of-it"));
    askIf(
        rows,
        slab.airC().isEmpty(),
        Message.of("work.walkthrough.air-temperature"),
        Message.of("work.walkthrough.dew-point-working-time"));
    askIf(
        rows,
        slab.humidity().isEmpty(),
        Message.of("work.walkthrough.air-humidity"),
        Message.of("work.walkthrough.dew-point"));
    askIf(
        rows,
        slab.surfaceC().isEmpty(),
        Message.of("work.walkthrough.surface-temperature"),
        Message.of("work.walkthrough.dew-point-working-time"));
  }

  private static void use(List<HandoverDocument.Row> rows, FloorUse use, boolean indoors) {
    askIf(
        rows,
        use.wet().isEmpty(),
        Message.of("work.walkthrough.does-it-get-wet-in"),
        Message.of("work.walkthrough.grit-in-the-last-coat"));
    askIf(
        rows,
        use.sun().isEmpty(),
        Message.of("work.walkthrough.does-the-sun-fall-on"),
        Message.of("work.walkthrough.dye-and-sealer-fast-to"));
    boolean traffic = indoors && use.traffic().isEmpty();
    askIf(
        rows,
        traffic,
        Message.of("work.walkthrough.chairs-carts-many-feet"),
        Message.of("work.walkthrough.a-topcoat-over-the-sealer"));
  }

  private static void indoor(List<HandoverDocument.Row> rows, FloorArea area) {
    askIf(
        rows,
        area.air().ceiling().isEmpty(),
        Message.of("work.walkthrough.ceiling-height"),
        Message.of("work.walkthrough.vapour"));
    askIf(
        rows,
        area.air().airflowM3PerHour() == 0,
        Message.of("work.walkthrough.how-much-fresh-air-can"),
        Message.of("work.walkthrough.vapour"));
    askIf(
        rows,
        none(area, MarkType.IGNITION_SOURCE),
        Message.of("work.walkthrough.pilot-lights-heaters-flames"),
        Message.of("work.walkthrough.vapour"));
    askIf(
        rows,
        none(area, MarkType.DETECTOR),
        Message.of("work.walkthrough.smoke-detectors-and-sprinkler"),
        Message.of("work.walkthrough.dust"));
    askIf(
        rows,
        none(area, MarkType.AIR_OUTLET),
        Message.of("work.walkthrough.where-can-air-be-drawn"),
        Message.of("work.walkthrough.vapour"));
    askIf(
        rows,
        none(area, MarkType.POWER_POINT),
        Message.of("work.walkthrough.power-points"),
        Message.of("work.walkthrough.machines"));
    askIf(
        rows,
        area.machines().isEmpty(),
        Message.of("work.walkthrough.which-machine-comes"),
        Message.of("work.walkthrough.hand-work-follows-from-it"));
  }

  private static boolean none(FloorArea area, MarkType type) {
    return area.marks().stream().map(Mark::kind).noneMatch(k -> k.type() == type);
  }

  private static void askIf(
      List<HandoverDocument.Row> rows, boolean open, Message question, Object why) {
    if (open) {
      ask(rows, question, why);
    }
  }

  private static void ask(List<HandoverDocument.Row> rows, Message question, Object why) {
    rows.add(HandoverDocument.Row.toTick(question, why));
  }
}
