package slabwright.sheets.packet;

import java.util.List;
import slabwright.sheets.page.PrintedPage;

/** A packet's pages, numbered within it. */
public record PrintedPacket(Packet packet, List<PrintedPage> pages) {
  public PrintedPacket {
    pages = List.copyOf(pages);
  }
}
