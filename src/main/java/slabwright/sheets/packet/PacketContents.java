package slabwright.sheets.packet;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.EncodedPicture;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TitleStripText;
import slabwright.site.JobDetails;
import slabwright.site.Site;
import slabwright.site.job.FirmMark;
import slabwright.units.Message;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.WorkPlan;

/**
 * All that a packet may say of a job.
 *
 * @param paper for posters; pages that are read in the hand are Letter or A4
 * @param date the day printed in the title strips
 * @param words of the language the packet is read in
 * @param photos of places, in the plan's order
 * @param pictured whether floors are shown painted as they should look; else as a plan in lines,
 *     and the page says so
 * @param agreed what a release agreed that is no longer so; empty when there is none
 */
@RecordBuilder
public record PacketContents(
    Site site,
    List<AreaResult> areas,
    WorkPlan work,
    PaperSize paper,
    LocalDate date,
    Words words,
    Optional<AgreedBefore> agreed,
    List<PrintedPhoto> photos,
    boolean pictured)
    implements PacketContentsBuilder.With {
  public PacketContents {
    areas = List.copyOf(areas);
    photos = List.copyOf(photos);
    words = words.inUnits(site.units());
  }

  /** Of a job of which nothing else was agreed before. */
  public PacketContents(
      Site site,
      List<AreaResult> areas,
      WorkPlan work,
      PaperSize paper,
      LocalDate date,
      Words words) {
    this(site, areas, work, paper, date, words, Optional.empty(), List.of(), true);
  }

  /** The same where a release agreed something else. */
  public PacketContents after(AgreedBefore before) {
    return withAgreed(Optional.of(before));
  }

  /** The same with photos of its places. */
  public PacketContents showing(List<PrintedPhoto> pictures) {
    return withPhotos(pictures);
  }

  /** The same with floors in lines instead of painted as they should look. */
  public PacketContents withoutPictures() {
    return withPictured(false);
  }

  /** The same in another language. */
  public PacketContents in(Words v) {
    return withWords(v);
  }

  /**
   * What the first page of a translated packet says of its words, in both languages; nothing in
   * English. It goes away only when a crew lead who speaks the language has read all of them.
   */
  public Optional<String> unread() {
    Message unread = Message.of("sheets.packet-contents.spanish-not-read");
    return words.language().equals("es")
        ? Optional.of(words.say(unread) + " " + Words.english().say(unread))
        : Optional.empty();
  }

  /** For standing pages, read in the hand and printed at home. */
  public SheetContext portrait() {
    return new SheetContext(PageFrame.portrait(paper.handSize()), site.units(), words);
  }

  /** For lying pages, such as posters. */
  public SheetContext landscape() {
    return new SheetContext(PageFrame.landscape(paper), site.units(), words);
  }

  public Optional<AreaResult> area(String id) {
    return areas.stream().filter(a -> a.takeoff().area().id().equals(id)).findFirst();
  }

  /** What every title strip says. */
  public TitleStripText issue() {
    return issue(site, date);
  }

  /** What the title strip of every page of a site says, single sheets included. */
  public static TitleStripText issue(Site site, LocalDate date) {
    JobDetails job = site.job();
    return new TitleStripText(
        site.name(),
        site.note(),
        site.releaseNumber(),
        date,
        job.contractor().name(),
        job.contractor().phone(),
        job.client().name(),
        job.contractor().mark().flatMap(PacketContents::printed));
  }

  /** A mark whose pixels can't be read is none. */
  private static Optional<TitleStripText.Mark> printed(FirmMark mark) {
    return EncodedPicture.whole(mark.file()).map(p -> new TitleStripText.Mark(p, mark.aspect()));
  }
}
