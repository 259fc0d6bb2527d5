package slabwright.sheets.packet;

import java.util.List;
import slabwright.sheets.page.PrintedPage;
import slabwright.units.PartFaults;

/**
 * A packet's pages, numbered within it.
 *
 * @param faults what its first page tells: pages of it that could not be made, and those of other
 *     packets that people's safety hangs on
 */
public record PrintedPacket(
    Packet packet, List<PrintedPage> pages, List<PartFaults.PartFault> faults) {
  public PrintedPacket {
    pages = List.copyOf(pages);
    faults = List.copyOf(faults);
  }
}
