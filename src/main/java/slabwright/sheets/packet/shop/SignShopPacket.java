package slabwright.sheets.packet.shop;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;
import slabwright.drawing.View;
import slabwright.figures.StencilInks;
import slabwright.inlay.PlacedInlay;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.units.Message;
import slabwright.work.AreaResult;

/** The sign shop's pages: an order for each inlay and a page for each of its stencils. */
public final class SignShopPacket {
  private SignShopPacket() {}

  /** The pages of every inlay; none when nothing is cut. */
  public static List<FramedDraft> drafts(PacketContents job, MissingPages missing) {
    SheetContext context = job.portrait();
    List<PageDraft> drafts = new ArrayList<>();
    for (AreaResult a : job.areas()) {
      for (PlacedInlay i : a.inlays()) {
        Message order = Message.of("sheets.order-page.title", i.inlay().name());
        String area = a.takeoff().area().name();
        drafts.addAll(missing.or(context, order, area, false, () -> pages(job, a, i)));
      }
    }
    return FramedDraft.all(context, drafts);
  }

  /** The pages of one inlay. */
  public static List<FramedDraft> drafts(PacketContents job, AreaResult area, PlacedInlay placed) {
    return FramedDraft.all(job.portrait(), pages(job, area, placed));
  }

  private static List<PageDraft> pages(PacketContents job, AreaResult area, PlacedInlay placed) {
    SheetContext context = job.portrait();
    List<PageDraft> drafts =
        new ArrayList<>(new OrderPage(job, area.takeoff().area(), placed, context).drafts());
    for (int i = 0; i < placed.plan().stencils().stencils().size(); i++) {
      drafts.addAll(new PanelPage(placed, context).drafts(i));
    }
    return drafts;
  }

  /** The graphic in its colours as a drawing of so many mm to its longer side. */
  public static Drawing preview(PlacedInlay placed, double size) {
    Bounds b = placed.plan().openings().bounds();
    double scale = Math.max(b.width(), b.height()) / size;
    View view = View.yDown(scale, new Vec(b.minX(), b.minY()), Vec.ZERO);
    List<Ink> inks =
        StencilInks.flat(placed.plan()).stream().<Ink>map(i -> i.placed(view)).toList();
    return Drawing.paper(b.width() / scale, b.height() / scale, inks);
  }
}
