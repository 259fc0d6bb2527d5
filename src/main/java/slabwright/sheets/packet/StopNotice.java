package slabwright.sheets.packet;

import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.SheetContext;

/** Said before anything else: why the job can't start as planned, or what of it is held. */
public final class StopNotice {
  private StopNotice() {}

  /** A red box with the reasons; nothing where the job can start. */
  public static List<Block> blocks(PacketContents job, SheetContext context) {
    List<String> why =
        job.work().outlook().cannotStart().stream().map(m -> context.say(m) + ".").toList();
    return why.isEmpty()
        ? List.of()
        : List.of(
            CautionBlock.stop(context.say("sheets.stop-notice.not-yet"), String.join(" ", why)),
            new Gap(3));
  }

  /** The same, or what is held of a job that can start: why, and what frees it. */
  public static List<Block> first(PacketContents job, SheetContext context) {
    HeldLines held = new HeldLines(job.work(), context.words());
    return job.work().outlook().canStart() && !held.names().isEmpty()
        ? List.of(
            CautionBlock.stop(
                context.say("sheets.stop-notice.held"), String.join(" ", held.told())),
            new Gap(3))
        : blocks(job, context);
  }

  /** Of every other page, which somebody may hold or sign alone: the hazards in a line. */
  public static List<Block> brief(PacketContents job, SheetContext context) {
    return job.work().outlook().canStart()
        ? List.of()
        : List.of(
            CautionBlock.stop(
                context.say("sheets.stop-notice.not-yet"),
                new BriefStop(job.work(), context.words()).reasons()),
            new Gap(2));
  }

  /** What stands under the title of such a page: that a part is held, where the job can start. */
  public static String held(PacketContents job, SheetContext context, String subtitle) {
    boolean held = !new HeldLines(job.work(), context.words()).names().isEmpty();
    return held && job.work().outlook().canStart()
        ? context.say("sheets.stop-notice.held-under-title", subtitle)
        : subtitle;
  }

  /** Where there is no room for a box: before what stands under the page's title. */
  public static String under(PacketContents job, SheetContext context, String subtitle) {
    return job.work().outlook().canStart()
        ? held(job, context, subtitle)
        : context.say("sheets.stop-notice.under-title", subtitle);
  }
}
