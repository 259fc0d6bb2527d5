package slabwright.project.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.project.SiteResult;
import slabwright.project.plan.PlanComparison;
import slabwright.sheets.PacketSet;
import slabwright.sheets.packet.AgreedBefore;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPacket;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.SheetFiles;
import slabwright.words.Words;

/** The packets of a job as files: a PDF for each reader, and an index that says who gets which. */
record PacketFiles(
    SiteResult result,
    PaperSize paper,
    LocalDate date,
    Words words,
    Optional<AgreedBefore> agreed) {
  /** The index's file name. */
  static final String INDEX = "index.html";

  /** The crew's days for a phone, beside the crew's pages. */
  static final String CREW_DAYS = Packet.CREW.fileStem() + ".html";

  /** The packets of today. */
  public static PacketFiles today(SiteResult result, PaperSize paper, Words words) {
    return new PacketFiles(
        result, paper, LocalDate.now(ZoneId.systemDefault()), words, Optional.empty());
  }

  /** With a change order where the plan's last release said something else. */
  public PacketFiles since(Path plan) throws IOException {
    return new PacketFiles(result, paper, date, words, PlanComparison.agreed(result, plan));
  }

  /** Where a file goes. */
  interface Sink {
    void add(String name, byte[] bytes);
  }

  /** What packets are made from. */
  public PacketContents contents() {
    return new PacketContents(
        result.site(), result.areas(), result.work(), paper, date, words, agreed);
  }

  /** Adds every packet as a PDF, and the index. */
  void addTo(Sink files) throws IOException {
    List<PrintedPacket> packets = PacketSet.of(contents());
    List<PacketIndex.Entry> entries = new ArrayList<>();
    for (PrintedPacket p : packets) {
      String name = p.packet().fileStem() + ".pdf";
      files.add(name, pdf(p));
      entries.add(new PacketIndex.Entry(p.packet(), name, p.pages().size()));
    }
    files.add(
        CREW_DAYS, CrewPacket.html(contents()).getBytes(java.nio.charset.StandardCharsets.UTF_8));
    files.add(
        INDEX,
        new PacketIndex(result.site(), date, entries, words)
            .html()
            .getBytes(java.nio.charset.StandardCharsets.UTF_8));
  }

  private byte[] pdf(PrintedPacket packet) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    String title =
        words.say(
            "project.packet-files.title", result.site().name(), words.say(packet.packet().word()));
    SheetFiles.pdf(packet.pages(), title, date, out);
    return out.toByteArray();
  }
}
