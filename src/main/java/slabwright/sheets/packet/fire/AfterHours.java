package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.packet.LeftVapour;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;

/** What is written in at the door for the time when the crew has gone home. */
record AfterHours(PacketContents job, SheetContext context) {
  /** Who reads the meter then, where vapour still counts. */
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    LeftVapour words = new LeftVapour(job, context.times());
    words.handedOver().stream()
        .findFirst()
        .map(
            l ->
                context.say(
                    "sheets.permit-form.crew-left",
                    words.when(),
                    context.say("sheets.permit-form.blank"),
                    words.stays(l)))
        .map(Paragraph::new)
        .ifPresent(blocks::add);
    return blocks;
  }
}
