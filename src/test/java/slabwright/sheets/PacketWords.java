package slabwright.sheets;

import java.util.stream.Collectors;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.PrintedPage;

/** What is printed on paper, as one reads it. */
final class PacketWords {
  private PacketWords() {}

  /** A page's, in one line. */
  static String of(PrintedPage page) {
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(t -> ((Text) t).words().replace('\u00a0', ' '))
        .collect(Collectors.joining(" "));
  }

  /** A packet's, each page in a line. */
  static String of(Packet packet, PacketContents job) {
    return PacketSet.of(packet, job).pages().stream()
        .map(PacketWords::of)
        .collect(Collectors.joining("\n"));
  }
}
