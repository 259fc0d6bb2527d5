package slabwright.sheets.packet.shop;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.stencil.StencilSheet;

/** The sign shop's pages; none when nothing is cut. */
public final class SignShopPacket {
  private SignShopPacket() {}

  public static List<FramedDraft> drafts(PacketContents job) {
    SheetContext context = job.portrait();
    List<PageDraft> drafts = new ArrayList<>();
    job.areas()
        .forEach(
            a ->
                a.inlays()
                    .forEach(
                        i ->
                            drafts.addAll(
                                new StencilSheet(a.takeoff().area(), i, context).drafts())));
    return FramedDraft.all(context, drafts);
  }
}
