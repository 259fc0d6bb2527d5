package slabwright.project.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.project.PinnedPhotos;
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
import slabwright.units.Message;
import slabwright.units.PartFaults;
import slabwright.units.Result;
import slabwright.words.Words;

/**
 * The packets of a job as files: a PDF for each reader, and an index that says who gets which. What
 * the crew works by is written in its language too, beside the lead's.
 *
 * @param crew the crew's words, when it reads another language than the lead
 * @param agreed what a release said otherwise, for the client's change order
 * @param pictured whether the client's floors are painted as they should look
 */
record PacketFiles(
    SiteResult result,
    PaperSize paper,
    LocalDate date,
    Words words,
    Optional<Words> crew,
    Optional<AgreedBefore> agreed,
    boolean pictured) {
  /** The index's file name. */
  static final String INDEX = "index.html";

  private static final String PAGES = ".pdf";
  private static final String PHONE = ".html";

  /** The packets that the crew reads. */
  private static final List<Packet> CREWS = List.of(Packet.CREW, Packet.FIRE_AND_SAFETY);

  /** The packets of a day, with no change order. */
  static PacketFiles of(
      SiteResult result, PaperSize paper, LocalDate date, Words words, Optional<Words> crew) {
    return new PacketFiles(result, paper, date, words, crew, Optional.empty(), true);
  }

  /** With a change order where the plan's last release said something else. */
  public PacketFiles since(Path plan) throws IOException {
    Optional<AgreedBefore> said = PlanComparison.agreed(result, plan);
    return new PacketFiles(result, paper, date, words, crew, said, pictured);
  }

  /** With the client's floors in lines where they are not to be painted. */
  PacketFiles pictured(boolean painted) {
    return new PacketFiles(result, paper, date, words, crew, agreed, painted);
  }

  /**
   * The words of the crew's language, when it is another than the lead's.
   *
   * @param tag of the language; empty is the lead's
   */
  public static Result<Optional<Words>> crewWords(String tag, Words words) {
    if (tag.isEmpty()) {
      return Result.ok(Optional.empty());
    }
    Optional<Words> crew = Words.ofTag(tag);
    return crew.isEmpty()
        ? Result.refused(Message.of("project.packet-files.no-such-language", tag))
        : Result.ok(crew.filter(c -> !c.language().equals(words.language())));
  }

  /** What packets are made from. */
  public PacketContents contents() {
    return new PacketContents(
        result.site(),
        result.areas(),
        result.work(),
        paper,
        date,
        words,
        agreed,
        PinnedPhotos.of(result),
        pictured);
  }

  /**
   * Adds every packet as a PDF, and the index.
   *
   * @return pages and files that a fault ended; the packets and the index tell them
   */
  List<PartFaults.PartFault> addTo(FileSink files) {
    PacketContents own = contents();
    PartFaults faults = new PartFaults();
    Map<Packet, PrintedPacket> translated = new EnumMap<>(Packet.class);
    crew.ifPresent(c -> PacketSet.of(own.in(c), CREWS).forEach(p -> translated.put(p.packet(), p)));
    List<PrintedPacket> printed = PacketSet.of(own);
    faults.addAll(
        Stream.concat(printed.stream(), translated.values().stream())
            .flatMap(p -> p.faults().stream())
            .distinct()
            .toList());
    List<PacketIndex.Entry> entries = new ArrayList<>();
    for (PrintedPacket p : printed) {
      add(files, p, own, "", faults).ifPresent(entries::add);
      if (crew.isPresent() && translated.containsKey(p.packet())) {
        PacketContents theirs = own.in(crew.get());
        PrintedPacket other = translated.get(p.packet());
        add(files, other, theirs, "-" + crew.get().language(), faults).ifPresent(entries::add);
      }
    }
    files.add(INDEX, new PacketIndex(result.site(), date, entries, faults.all(), words).html());
    return faults.all();
  }

  /** One packet as a PDF. */
  byte[] pdf(Packet packet) throws IOException {
    return pdf(PacketSet.of(packet, contents()), words);
  }

  /** One packet, if it can be painted; the crew's with its days for a phone. */
  private Optional<PacketIndex.Entry> add(
      FileSink files,
      PrintedPacket packet,
      PacketContents job,
      String language,
      PartFaults faults) {
    Packet of = packet.packet();
    String stem = of.fileStem() + language;
    Optional<byte[]> painted =
        faults.makeOfFiles(
            Message.of("project.packet-files.whole", of.word()),
            CREWS.contains(of),
            () -> Optional.of(pdf(packet, job.words())),
            Optional::empty);
    painted.ifPresent(pdf -> files.add(stem + PAGES, pdf));
    Optional<String> days =
        of == Packet.CREW
            ? faults.make(
                Message.of("project.packet-files.phone"),
                true,
                () -> Optional.of(CrewPacket.html(job, packet.faults())),
                Optional::empty)
            : Optional.empty();
    days.ifPresent(html -> files.add(stem + PHONE, html));
    Optional<String> phone = days.map(html -> stem + PHONE);
    int pages = packet.pages().size();
    return painted.map(pdf -> new PacketIndex.Entry(of, stem + PAGES, pages, phone, job.words()));
  }

  private byte[] pdf(PrintedPacket packet, Words said) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    String title =
        said.say(
            "project.packet-files.title", result.site().name(), said.say(packet.packet().word()));
    SheetFiles.pdf(packet.pages(), title, date, out);
    return out.toByteArray();
  }
}
