package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Text;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.page.PaperSize;

/** What the lead must know in ten seconds. */
class JobOnOnePageTest {
  /** 3,400 m³/h in the plan are 2,001 cfm; the example book's one fan moves 1,800. */
  @Test
  void fans_that_move_less_than_the_plan_reckons_with_stand_against_the_job() {
    String office =
        PacketSet.of(Packet.OFFICE, SheetSamples.tramHall().job(PaperSize.LETTER)).pages().stream()
            .flatMap(p -> p.drawing().plain().stream())
            .filter(Text.class::isInstance)
            .map(t -> ((Text) t).words().replace('\u00a0', ' '))
            .collect(Collectors.joining(" "));
    assertThat(office)
        .contains("fans of the job move 1,800 cfm, the plan reckons with 2,001 cfm")
        .contains("bring more");
  }
}
