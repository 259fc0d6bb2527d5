package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import slabwright.sheets.air.CautionSheet;
import slabwright.sheets.air.RuleBlock;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.SealedDoorways;
import slabwright.sheets.packet.StopNotice;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.KeptBlock;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.air.AirScreening;
import slabwright.work.rule.RuleNote;

/**
 * A page of plans and a form for all floors with solvent on them, then what is ticked off and the
 * other rules that ask for care.
 */
public final class FireSafetyPacket {
  /** Height of the largest floor's plan, mm: the most and the least. */
  private static final double LARGEST = 150;

  private static final double SMALLEST = 60;

  private final PacketContents job;
  private final SheetContext context;

  private FireSafetyPacket(PacketContents job) {
    this.job = job;
    this.context = job.portrait();
  }

  public static List<FramedDraft> drafts(PacketContents job, MissingPages missing) {
    FireSafetyPacket packet = new FireSafetyPacket(job);
    List<SolventFloor> floors = packet.floors();
    List<PageDraft> drafts = new ArrayList<>();
    if (!floors.isEmpty()) {
      drafts.addAll(
          packet.or(
              missing, Message.of("sheets.fire-safety-packet.plan"), () -> packet.plans(floors)));
    }
    drafts.addAll(packet.formAndRules(missing, floors));
    return FramedDraft.all(packet.context, drafts);
  }

  private List<PageDraft> or(MissingPages missing, Message title, Supplier<List<PageDraft>> pages) {
    return missing.or(context, title, "", true, pages);
  }

  /**
   * The disclaimer stands last; under the form where it would be the only words of a page of its
   * own.
   */
  private List<PageDraft> formAndRules(MissingPages missing, List<SolventFloor> floors) {
    List<Block> notice =
        List.of(
            new Paragraph(
                context.say(floors.isEmpty() ? WorkPlan.NOTICE : AirScreening.NOTICE)
                    + " "
                    + context.say(job.work().book().origin())));
    int broken = missing.faults().all().size();
    List<PageDraft> both = new ArrayList<>();
    if (!floors.isEmpty()) {
      Message title = Message.of("sheets.fire-safety-packet.form");
      both.addAll(or(missing, title, () -> form(floors, List.of())));
    }
    Message title = Message.of("sheets.fire-safety-packet.rules");
    both.addAll(or(missing, title, () -> rules(floors, notice)));
    return missing.faults().all().size() > broken ? both : closer(both, floors, notice);
  }

  private List<PageDraft> closer(
      List<PageDraft> both, List<SolventFloor> floors, List<Block> notice) {
    List<PageDraft> form = form(floors, notice);
    List<PageDraft> closer = new ArrayList<>(form);
    closer.addAll(rules(floors, List.of()));
    return form.isEmpty() || closer.size() >= both.size() ? both : closer;
  }

  /** Floors with solvent on them, the largest first. */
  private List<SolventFloor> floors() {
    List<SolventFloor> floors = new ArrayList<>();
    for (AreaWorkPlan work : job.work().areas()) {
      work.air()
          .maybe()
          .filter(CautionSheet::hasSolvent)
          .ifPresent(a -> floors.add(new SolventFloor(work, a)));
    }
    floors.sort(Comparator.comparingDouble((SolventFloor f) -> -f.work().floor().floor().area()));
    return floors;
  }

  private PageDraft page(String title, String subtitle) {
    return new PageDraft(title, subtitle, "", Optional.empty(), List.of());
  }

  /** What the first page says above all: whether its words were read, and what stands against. */
  private List<Block> stops() {
    List<Block> blocks = new ArrayList<>();
    job.unread().ifPresent(u -> blocks.add(new Paragraph(u)));
    blocks.addAll(StopNotice.blocks(job, context));
    return blocks;
  }

  /** All floors on one page, the largest as large as that allows. */
  private List<PageDraft> plans(List<SolventFloor> floors) {
    List<FirePlan> plans =
        floors.stream()
            .flatMap(
                f ->
                    job
                        .area(f.work().id())
                        .map(a -> new FirePlan(a.takeoff(), f.air(), context))
                        .stream())
            .toList();
    PageDraft page =
        page(
            context.say("sheets.fire-safety-packet.plan"),
            context.say("sheets.fire-safety-packet.plan-says"));
    List<PageDraft> pages = List.of();
    for (double high = LARGEST; high >= SMALLEST; high -= 5) {
      pages = ColumnPages.of(context, page, plans(plans, high));
      if (pages.size() == 1) {
        return pages;
      }
    }
    return pages;
  }

  private List<Block> plans(List<FirePlan> plans, double high) {
    List<Block> blocks = new ArrayList<>(stops());
    for (FirePlan plan : plans) {
      // The others are no larger on paper than their floors are beside the largest.
      double share = Math.max(0.5, Math.sqrt(plan.size() / plans.get(0).size()));
      List<Block> one = new ArrayList<>();
      if (plans.size() > 1) {
        one.add(new Paragraph(plan.areaName()));
      }
      one.add(plan.block(high * share));
      plan.noPath().ifPresent(t -> one.add(new Paragraph(t)));
      blocks.add(new KeptBlock(one));
    }
    blocks.add(FirePlan.key(plans));
    return blocks;
  }

  private List<PageDraft> form(List<SolventFloor> floors, List<Block> below) {
    if (floors.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>(new PermitForm(job, floors, context).blocks());
    blocks.addAll(below);
    String sizes =
        floors.stream()
            .map(
                f ->
                    context.say(
                        "sheets.fire-safety-packet.floor-of",
                        f.work().name(),
                        context.wholeArea(f.work().floor().floor().area())))
            .collect(Collectors.joining("; "));
    return ColumnPages.of(
        context,
        page(
            context.say("sheets.fire-safety-packet.form"),
            context.say("sheets.fire-safety-packet.form-says", sizes)),
        blocks);
  }

  private List<String> said(List<Message> messages) {
    return messages.stream().map(context::say).toList();
  }

  private void list(List<Block> blocks, String heading, List<Message> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Heading(heading));
      blocks.add(BulletBlock.ofTicks(said(lines)));
    }
  }

  /** What the air was reckoned with comes first: a doorway that is not sealed changes it all. */
  private List<Message> before(List<SolventFloor> floors) {
    List<Message> all = new ArrayList<>();
    if (!floors.isEmpty()) {
      new SealedDoorways(job).said().ifPresent(all::add);
    }
    floors.stream().flatMap(f -> f.air().ignition().before().stream()).distinct().forEach(all::add);
    return all;
  }

  /**
   * What is ticked off, and what is not in order yet; equal rules of several floors stand once,
   * with their floors.
   */
  private List<PageDraft> rules(List<SolventFloor> floors, List<Block> last) {
    Map<RuleNote, List<String>> notes = new LinkedHashMap<>();
    for (AreaWorkPlan area : job.work().areas()) {
      area.notes().stream()
          .filter(n -> n.verdict() != RuleNote.Verdict.FINE)
          .forEach(n -> notes.computeIfAbsent(n, k -> new ArrayList<>()).add(area.name()));
    }
    List<Block> blocks = new ArrayList<>(floors.isEmpty() ? stops() : List.of());
    list(blocks, context.say("sheets.fire-safety-packet.before"), before(floors));
    list(
        blocks,
        context.say("sheets.fire-safety-packet.after"),
        floors.stream().flatMap(f -> f.air().ignition().after().stream()).distinct().toList());
    Map<List<String>, List<RuleNote>> byFloors = new LinkedHashMap<>();
    notes.forEach((n, on) -> byFloors.computeIfAbsent(on, k -> new ArrayList<>()).add(n));
    byFloors.forEach(
        (on, list) -> {
          blocks.add(new Heading(String.join(", ", on)));
          list.forEach(n -> blocks.add(new RuleBlock(n, context.words())));
        });
    if (blocks.isEmpty()) {
      return List.of();
    }
    blocks.addAll(last);
    return ColumnPages.of(
        context,
        page(
            context.say("sheets.fire-safety-packet.rules"),
            context.say("sheets.fire-safety-packet.rules-say")),
        blocks);
  }
}
