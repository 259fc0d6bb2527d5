package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.drawing.TextBox;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetOptions;
import slabwright.units.Message;
import slabwright.units.PartFaults;
import slabwright.words.Words;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.rule.RuleNote;

/** A page that a fault of the program ends is told, and all the others are still made. */
class MissingPagesTest {
  private static final Words WORDS = Words.english();
  private static final PacketContents WHOLE =
      SheetSamples.sample("bike-workshop").job(PaperSize.LETTER);
  private static final PacketContents BROKEN = broken();

  /** The same job with a rule of which nothing is known: no page that tells it can be made. */
  private static PacketContents broken() {
    WorkPlan w = WHOLE.work();
    List<AreaWorkPlan> areas = w.areas().stream().map(MissingPagesTest::broken).toList();
    WorkPlan work = w.withAreas(areas);
    return new PacketContents(
        WHOLE.site(), WHOLE.areas(), work, PaperSize.LETTER, SheetSamples.DAY, WORDS);
  }

  private static AreaWorkPlan broken(AreaWorkPlan a) {
    RuleNote none = new RuleNote(null, RuleNote.Verdict.LOOK, null, null, null, null);
    return a.withNotes(List.of(none));
  }

  private static String words(PrintedPage page) {
    return String.join(" ", TextBox.of(page.drawing()).stream().map(TextBox::words).toList());
  }

  private static String title(Message title) {
    return WORDS.say(title);
  }

  @Test
  void a_fire_page_that_is_missing_is_told_first_of_all_and_in_its_place() {
    PrintedPacket whole = PacketSet.of(Packet.FIRE_AND_SAFETY, WHOLE);
    PrintedPacket fire = PacketSet.of(Packet.FIRE_AND_SAFETY, BROKEN);
    assertThat(fire.pages().get(0).title())
        .isEqualTo(title(Message.of("sheets.missing-pages.title")));
    assertThat(words(fire.pages().get(0)))
        .contains(WORDS.say("sheets.missing-pages.safety-head"))
        .contains(WORDS.say("sheets.fire-safety-packet.rules"));
    PrintedPage last = fire.pages().get(fire.pages().size() - 1);
    assertThat(last.title()).isEqualTo(WORDS.say("sheets.fire-safety-packet.rules"));
    assertThat(words(last)).contains(WORDS.say("sheets.missing-pages.missing"));
    assertThat(fire.pages().subList(1, fire.pages().size() - 1))
        .extracting(PrintedPage::title)
        .isSubsetOf(whole.pages().stream().map(PrintedPage::title).toList());
  }

  @Test
  void every_packet_tells_first_that_a_safety_page_is_missing_from_one() {
    List<PrintedPacket> all = PacketSet.of(BROKEN);
    assertThat(all).hasSameSizeAs(PacketSet.of(WHOLE));
    assertThat(all)
        .allSatisfy(
            p ->
                assertThat(words(p.pages().get(0)))
                    .as(p.packet().name())
                    .contains(WORDS.say("sheets.missing-pages.safety-head")));
  }

  @Test
  void a_job_without_a_fault_tells_none() {
    assertThat(PacketSet.of(WHOLE))
        .allSatisfy(p -> assertThat(p.faults()).isEmpty())
        .allSatisfy(
            p ->
                assertThat(p.pages().get(0).title())
                    .isNotEqualTo(WORDS.say("sheets.missing-pages.title")));
  }

  @Test
  void the_sheets_tell_on_their_first_page_which_caution_sheet_is_missing() {
    PartFaults faults = new PartFaults();
    SheetOptions options = new SheetOptions(PaperSize.TABLOID, SheetSamples.DAY, WORDS);
    List<PrintedPage> pages =
        SheetSet.of(BROKEN.site(), BROKEN.areas(), Optional.of(BROKEN.work()), options, faults);
    assertThat(faults.all()).hasSize(1).allMatch(PartFaults.PartFault::safety);
    String area = BROKEN.areas().get(0).takeoff().area().name();
    assertThat(words(pages.get(0))).contains(WORDS.say("sheets.caution-sheet.title") + ", " + area);
    assertThat(pages)
        .extracting(PrintedPage::title)
        .contains(
            WORDS.say("sheets.layout-sheet.title"),
            WORDS.say("sheets.quantities-sheet.title"),
            WORDS.say("sheets.scope-sheet.title"));
  }
}
