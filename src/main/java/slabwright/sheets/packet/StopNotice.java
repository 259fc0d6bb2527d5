package slabwright.sheets.packet;

import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.SheetContext;

/** Said before anything else, to every reader: why the job can't start as planned. */
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
}
