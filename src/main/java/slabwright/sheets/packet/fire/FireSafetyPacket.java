package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.sheets.air.CautionSheet;
import slabwright.sheets.air.RuleBlock;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.units.Message;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;
import slabwright.work.air.AirScreening;
import slabwright.work.rule.RuleNote;

/** A plan and a form for every floor with solvent on it, then the other rules that ask for care. */
public final class FireSafetyPacket {
  private final PacketContents job;
  private final SheetContext context;

  private FireSafetyPacket(PacketContents job) {
    this.job = job;
    this.context = job.portrait();
  }

  public static List<FramedDraft> drafts(PacketContents job) {
    FireSafetyPacket packet = new FireSafetyPacket(job);
    List<PageDraft> drafts = new ArrayList<>();
    for (AreaWorkPlan area : job.work().areas()) {
      Optional<AirPlan> air = area.air().maybe().filter(CautionSheet::hasSolvent);
      boolean first = drafts.isEmpty();
      air.ifPresent(a -> drafts.addAll(packet.solvent(area, a, first)));
    }
    drafts.addAll(packet.rules(drafts.isEmpty()));
    return FramedDraft.all(packet.context, drafts);
  }

  private PageDraft page(String title, String subtitle, String area) {
    return new PageDraft(title, subtitle, area, Optional.empty(), List.of());
  }

  private List<Block> unread(boolean first) {
    return job.unread().filter(u -> first).stream().map(u -> (Block) new Paragraph(u)).toList();
  }

  private List<PageDraft> solvent(AreaWorkPlan area, AirPlan air, boolean first) {
    List<PageDraft> drafts = new ArrayList<>();
    job.area(area.id())
        .ifPresent(
            a -> {
              FirePlan plan = new FirePlan(a.takeoff(), air, context);
              List<Block> blocks = new ArrayList<>(unread(first));
              blocks.add(plan.block(150));
              blocks.add(plan.key());
              plan.noPath().ifPresent(t -> blocks.add(new Paragraph(t)));
              drafts.addAll(
                  ColumnPages.of(
                      context,
                      page(
                          context.say("sheets.fire-safety-packet.plan"),
                          context.say("sheets.fire-safety-packet.plan-says"),
                          area.name()),
                      blocks));
            });
    drafts.addAll(
        ColumnPages.of(
            context,
            page(
                context.say("sheets.fire-safety-packet.form"),
                context.say(
                    "sheets.fire-safety-packet.form-says",
                    context.wholeArea(area.floor().floor().area())),
                area.name()),
            new PermitForm(job, area, air, context).blocks()));
    return drafts;
  }

  private List<String> said(List<Message> messages) {
    return messages.stream().map(context::say).toList();
  }

  private Stream<AirPlan> solvents() {
    return job.work().areas().stream()
        .flatMap(a -> a.air().maybe().stream())
        .filter(CautionSheet::hasSolvent);
  }

  private void list(List<Block> blocks, String heading, List<Message> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Heading(heading));
      blocks.add(BulletBlock.ofTicks(said(lines)));
    }
  }

  /**
   * What is ticked off, and what is not in order yet; equal rules of several floors stand once,
   * with their floors.
   */
  private List<PageDraft> rules(boolean first) {
    Map<RuleNote, List<String>> notes = new LinkedHashMap<>();
    for (AreaWorkPlan area : job.work().areas()) {
      area.notes().stream()
          .filter(n -> n.verdict() != RuleNote.Verdict.FINE)
          .forEach(n -> notes.computeIfAbsent(n, k -> new ArrayList<>()).add(area.name()));
    }
    List<Block> blocks = new ArrayList<>();
    list(
        blocks,
        context.say("sheets.fire-safety-packet.before"),
        solvents().flatMap(a -> a.ignition().before().stream()).distinct().toList());
    list(
        blocks,
        context.say("sheets.fire-safety-packet.after"),
        solvents().flatMap(a -> a.ignition().after().stream()).distinct().toList());
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
    blocks.addAll(0, unread(first));
    blocks.add(
        new Paragraph(
            context.say(AirScreening.NOTICE) + " " + context.say(job.work().book().origin())));
    return ColumnPages.of(
        context,
        page(
            context.say("sheets.fire-safety-packet.rules"),
            context.say("sheets.fire-safety-packet.rules-say"),
            ""),
        blocks);
  }
}
