package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slabwright.floor.FloorTakeoff;
import slabwright.sheets.packet.CareRules;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.SealedDoorways;
import slabwright.sheets.packet.SolventNight;
import slabwright.sheets.packet.StopNotice;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.DenseBlock;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TickColumns;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.Recent;
import slabwright.work.WorkPlan;
import slabwright.work.air.AirScreening;
import slabwright.work.air.IgnitionCheck;

/**
 * A page of plans and a form for all floors with solvent on them, with what is ticked off: two
 * pages, or a third where the lists are long. What other rules ask for stands in the office packet.
 */
public final class FireSafetyPacket {
  /** Height of the largest floor's plan, mm: the most and the least. */
  private static final double LARGEST = 150;

  private static final double SMALLEST = 60;

  /** With less, the names on the plan stand in each other's way: then lists take another page. */
  private static final double READABLE = 90;

  private final PacketContents job;
  private final SheetContext context;
  private final Recent<String, FirePlan> floorPlans;

  private FireSafetyPacket(PacketContents job) {
    this.job = job;
    this.context = job.portrait();
    this.floorPlans = new Recent<>(Math.max(1, job.work().areas().size()));
  }

  public static List<FramedDraft> drafts(PacketContents job, MissingPages missing) {
    FireSafetyPacket packet = new FireSafetyPacket(job);
    return FramedDraft.all(packet.context, packet.pages(missing, SolventFloor.of(job.work())));
  }

  private List<PageDraft> or(MissingPages missing, Message title, Supplier<List<PageDraft>> pages) {
    return missing.or(context, title, "", true, pages);
  }

  /** As few pages as the lists to tick allow; without solvent the rules are all there is. */
  private List<PageDraft> pages(MissingPages missing, List<SolventFloor> floors) {
    if (floors.isEmpty()) {
      return or(missing, Message.of("sheets.fire-safety-packet.rules"), this::rules);
    }
    int broken = missing.faults().all().size();
    List<PageDraft> best = apart(missing, floors);
    if (missing.faults().all().size() > broken) {
      return best;
    }
    for (boolean dense : List.of(false, true)) {
      for (List<PageDraft> other : others(floors, dense)) {
        boolean better = isParted(best) || other.size() < best.size();
        if (!isParted(other) && better) {
          best = other;
        }
      }
    }
    for (boolean boxed : List.of(true, false)) {
      best = isParted(best) ? best(best, spread(floors, boxed)) : best;
    }
    return best;
  }

  private List<PageDraft> best(List<PageDraft> before, List<List<PageDraft>> others) {
    return others.stream().filter(o -> !isParted(o)).findFirst().orElse(before);
  }

  /**
   * Where all of the above go on over a page: the last words one by one wherever there is room.
   *
   * @param boxed whether the lists say in a box that the job can't start; else under their title
   */
  private List<List<PageDraft>> spread(List<SolventFloor> floors, boolean boxed) {
    List<Block> last = dense(last(floors));
    List<List<PageDraft>> all = new ArrayList<>();
    for (int n = last.size(); n >= 0; n--) {
      List<Block> under = last.subList(n, last.size());
      List<PageDraft> plan = plans(floors, under, SMALLEST, true);
      for (int k = n; k >= 0 && plan.size() == 1; k--) {
        List<Block> listed = last.subList(0, k);
        List<Block> formed = last.subList(k, n);
        List<Block> after = after(floors);
        all.add(
            and(
                and(plan, form(floors, and(after, formed), true)),
                lists(and(before(floors), during(floors)), listed, boxed)));
        all.add(
            and(
                and(plan, form(floors, formed, true)),
                lists(and(and(before(floors), during(floors)), after), listed, boxed)));
      }
    }
    return all;
  }

  /** Whether a plan, a form or a list goes on over a page: then it can't be held and read whole. */
  private boolean isParted(List<PageDraft> pages) {
    return pages.size() > pages.stream().map(PageDraft::subtitle).distinct().count();
  }

  /** Every part on its own, so that one that can't be made leaves the others. */
  private List<PageDraft> apart(MissingPages missing, List<SolventFloor> floors) {
    List<PageDraft> pages =
        new ArrayList<>(
            or(missing, Message.of("sheets.fire-safety-packet.plan"), () -> plan(floors)));
    pages.addAll(or(missing, Message.of("sheets.fire-safety-packet.form"), () -> form(floors)));
    pages.addAll(
        or(
            missing,
            Message.of("sheets.fire-safety-packet.rules"),
            () -> lists(floors, last(floors))));
    return pages;
  }

  /**
   * What is ticked under the plan, where that stays large enough to be read, or under the form, a
   * list never parted; the last words under the form or the lists.
   */
  private List<List<PageDraft>> others(List<SolventFloor> floors, boolean dense) {
    List<Block> before = before(floors);
    List<Block> after = after(floors);
    List<Block> both = and(and(before, during(floors)), after);
    List<Block> open = last(floors);
    List<Block> last = dense ? dense(open) : open;
    List<PageDraft> plan = plan(floors);
    List<List<PageDraft>> all = new ArrayList<>();
    all.add(and(plans(floors, both, READABLE, dense), form(floors, last, dense)));
    all.add(
        and(
            plans(floors, before, READABLE, dense),
            form(floors, and(and(during(floors), after), last), dense)));
    all.add(and(plan, form(floors, and(both, last), dense)));
    all.add(and(and(plan, form(floors, List.of(), dense)), lists(floors, open)));
    for (int n = last.size(); n >= 0; n--) {
      List<PageDraft> form = form(floors, last.subList(n, last.size()), dense);
      all.add(and(and(plan, form), lists(floors, last.subList(0, n))));
    }
    return all;
  }

  /** The plan alone; as dense as it must be to stand on one page. */
  private List<PageDraft> plan(List<SolventFloor> floors) {
    List<PageDraft> open = plans(floors, List.of(), SMALLEST, false);
    return open.size() == 1 ? open : plans(floors, List.of(), SMALLEST, true);
  }

  /** The form alone; the same. */
  private List<PageDraft> form(List<SolventFloor> floors) {
    List<PageDraft> open = form(floors, List.of(), false);
    return open.size() == 1 ? open : form(floors, List.of(), true);
  }

  private static List<Block> dense(List<Block> blocks) {
    return blocks.stream().map(b -> (Block) new DenseBlock(b)).toList();
  }

  private static <T> List<T> and(List<T> first, List<T> then) {
    return Stream.concat(first.stream(), then.stream()).toList();
  }

  /** Which other rules ask for care and where they stand; the disclaimer stands last. */
  private List<Block> last(List<SolventFloor> floors) {
    List<Block> last = new ArrayList<>();
    if (!floors.isEmpty()) { // else they stand in full above
      new CareRules(job).elsewhere().ifPresent(t -> last.add(new Paragraph(t)));
    }
    last.add(
        new Paragraph(
            context.say(floors.isEmpty() ? WorkPlan.NOTICE : AirScreening.NOTICE)
                + " "
                + context.say(job.work().book().origin())));
    return last;
  }

  private PageDraft page(String title, String subtitle) {
    return new PageDraft(title, subtitle, "", Optional.empty(), List.of());
  }

  /** What the first page says above all: whether its words were read, and what stands against. */
  private List<Block> stops() {
    List<Block> blocks = new ArrayList<>();
    job.unread().ifPresent(u -> blocks.add(new Paragraph(u)));
    blocks.addAll(StopNotice.first(job, context));
    return blocks;
  }

  /** What the other pages say of it: who signs the form or ticks the lists may hold that alone. */
  private List<Block> brief(boolean dense) {
    List<Block> brief = StopNotice.brief(job, context);
    // the gap after a box is for open pages only
    return dense ? dense(brief.stream().limit(1).toList()) : brief;
  }

  /** All floors on one page, the largest as large as that allows. */
  private List<PageDraft> plans(
      List<SolventFloor> floors, List<Block> under, double smallest, boolean dense) {
    List<FirePlan> plans =
        floors.stream()
            .flatMap(f -> job.area(f.work().id()).map(a -> plan(f, a.takeoff())).stream())
            .toList();
    List<Block> times = new PermitForm(job, floors, context).times();
    PageDraft page =
        page(
            context.say("sheets.fire-safety-packet.plan"),
            context.say("sheets.fire-safety-packet.plan-says"));
    List<PageDraft> pages = List.of();
    for (double high = LARGEST; high >= smallest; high -= 5) {
      List<Block> blocks = new ArrayList<>(stops());
      blocks.addAll(FirePlan.blocks(plans, high, dense));
      blocks.addAll(dense ? dense(times) : times);
      blocks.addAll(under);
      pages = ColumnPages.of(context, page, blocks);
      if (pages.size() == 1) {
        return pages;
      }
    }
    return pages;
  }

  private FirePlan plan(SolventFloor floor, FloorTakeoff takeoff) {
    return floorPlans.get(floor.work().id(), () -> new FirePlan(takeoff, floor.air(), context));
  }

  private List<PageDraft> form(List<SolventFloor> floors, List<Block> below, boolean dense) {
    if (floors.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>(brief(dense));
    blocks.addAll(new PermitForm(job, floors, context).blocks(dense));
    blocks.addAll(below);
    String sizes =
        floors.stream()
            .map(
                f ->
                    context.say(
                        "sheets.fire-safety-packet.floor-of",
                        f.work().name(),
                        QuantityFormat.area(flammable(f), context.units())))
            .collect(Collectors.joining("; "));
    return ColumnPages.of(
        context,
        page(
            context.say("sheets.fire-safety-packet.form"),
            StopNotice.held(
                job, context, context.say("sheets.fire-safety-packet.form-says", sizes))),
        blocks);
  }

  /** The floor that the largest coat with solvent goes onto, mm²: what the fire code asks of. */
  private static double flammable(SolventFloor floor) {
    return floor.work().coats().stream()
        .filter(c -> !SolventUse.solvents(c.product()).isEmpty())
        .mapToDouble(c -> c.job().mm2())
        .max()
        .orElse(0);
  }

  private List<Block> list(String heading, List<Message> lines) {
    return ticks(heading, lines.stream().map(context::say).toList());
  }

  private static List<Block> ticks(String heading, List<String> lines) {
    return lines.isEmpty() ? List.of() : List.of(new Heading(heading), new TickColumns(lines));
  }

  /** What the air was reckoned with comes first: a doorway that is not sealed changes it all. */
  private List<Block> before(List<SolventFloor> floors) {
    List<Message> all = new ArrayList<>();
    new SealedDoorways(job).said().ifPresent(all::add);
    all.addAll(IgnitionCheck.beforeAll(floors.stream().map(f -> f.air().ignition()).toList()));
    return list(context.say("sheets.fire-safety-packet.before"), all);
  }

  private List<Block> during(List<SolventFloor> floors) {
    return list(
        context.say("sheets.fire-safety-packet.during"),
        floors.stream().flatMap(f -> f.air().ignition().during().stream()).distinct().toList());
  }

  private List<Block> after(List<SolventFloor> floors) {
    Message waste = Message.of("work.ignition-check.waste-off-site");
    List<String> all =
        floors.stream()
            .flatMap(f -> f.air().ignition().after().stream())
            .distinct()
            .map(m -> m.equals(waste) ? wasteAndNight(m) : context.say(m))
            .toList();
    return ticks(context.say("sheets.fire-safety-packet.after"), all);
  }

  /** What leaves the site, and where the cans stay that do not, to be written in. */
  private String wasteAndNight(Message waste) {
    return new SolventNight(job)
        .brief()
        .map(night -> context.say("work.ignition-check.waste-same-day") + " " + night)
        .orElseGet(() -> context.say(waste));
  }

  private List<PageDraft> lists(List<SolventFloor> floors, List<Block> under) {
    return lists(and(and(before(floors), during(floors)), after(floors)), under, true);
  }

  private List<PageDraft> lists(List<Block> ticked, List<Block> under, boolean boxed) {
    List<Block> blocks = new ArrayList<>(boxed ? brief(true) : List.of());
    blocks.addAll(and(ticked, under));
    String says = context.say("sheets.fire-safety-packet.to-tick");
    return ColumnPages.of(
        context,
        page(
            context.say("sheets.fire-safety-packet.rules"),
            boxed ? StopNotice.held(job, context, says) : StopNotice.under(job, context, says)),
        blocks);
  }

  /** Of a job without solvent: what stands against it, and the rules that ask for care. */
  private List<PageDraft> rules() {
    List<Block> blocks = new ArrayList<>(stops());
    blocks.addAll(new CareRules(job).blocks());
    if (blocks.isEmpty()) {
      return List.of();
    }
    new DetectorsOff(job, context).said().map(Paragraph::new).ifPresent(blocks::add);
    blocks.addAll(last(List.of()));
    return ColumnPages.of(
        context,
        page(
            context.say("sheets.fire-safety-packet.rules"),
            context.say("sheets.fire-safety-packet.rules-say")),
        blocks);
  }
}
