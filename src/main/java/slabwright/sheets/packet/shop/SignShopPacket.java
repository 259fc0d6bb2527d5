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
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.SheetContext;
import slabwright.work.AreaResult;

/** The sign shop's pages: an order for each inlay and a page for each of its stencils. */
public final class SignShopPacket {
  private SignShopPacket() {}

  /** The pages of every inlay; none when nothing is cut. */
  public static List<FramedDraft> drafts(PacketContents job) {
    List<FramedDraft> drafts = new ArrayList<>();
    for (AreaResult a : job.areas()) {
      a.inlays().forEach(i -> drafts.addAll(drafts(job, a, i)));
    }
    return drafts;
  }

  /** The pages of one inlay. */
  public static List<FramedDraft> drafts(PacketContents job, AreaResult area, PlacedInlay placed) {
    SheetContext context = job.portrait();
    List<PageDraft> drafts =
        new ArrayList<>(new OrderPage(job, area.takeoff().area(), placed, context).drafts());
    for (int i = 0; i < placed.plan().stencils().stencils().size(); i++) {
      drafts.addAll(new PanelPage(placed, context).drafts(i));
    }
    return FramedDraft.all(context, drafts);
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
