package slabwright.project.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import slabwright.drawing.paint.PngFile;
import slabwright.inlay.PlacedInlay;
import slabwright.project.SiteResult;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.shop.SignShopPacket;
import slabwright.sheets.page.Paginator;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/** What goes to the sign shop with the cut files of one inlay: the order's pages and a preview. */
final class ShopPapers {
  private static final double PREVIEW_MM = 160;
  private static final double PREVIEW_DPI = 150;

  private ShopPapers() {}

  /** By what the files' names end in. */
  static SortedMap<String, byte[]> of(
      SiteResult result, AreaResult area, PlacedInlay placed, Words words, LocalDate today)
      throws IOException {
    PaperSize paper = result.site().units() == UnitSystem.METRIC ? PaperSize.A4 : PaperSize.LETTER;
    PacketContents job = PacketFiles.of(result, paper, today, words, Optional.empty()).contents();
    List<PrintedPage> pages =
        Paginator.paginate(
            SignShopPacket.drafts(job, area, placed),
            job.issue(),
            words.say(Packet.SIGN_SHOP.word()));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SheetFiles.pdf(pages, placed.inlay().name(), job.date(), out);
    SortedMap<String, byte[]> papers = new TreeMap<>();
    papers.put("_order.pdf", out.toByteArray());
    papers.put(
        "_preview.png", PngFile.write(SignShopPacket.preview(placed, PREVIEW_MM), PREVIEW_DPI));
    return papers;
  }
}
