package slabwright.project.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import slabwright.project.SiteResult;
import slabwright.project.plan.PlanComparison;
import slabwright.sheets.packet.AgreedBefore;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.client.ChangeOrder;
import slabwright.sheets.page.Paginator;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The change order of a plan as one PDF, on Letter or A4 by the plan's units. */
public record ChangeOrderFile(PlanComparison found, Words words) {
  /** The file; refused when nothing changed. */
  public Result<byte[]> pdf() throws IOException {
    if (found.agreed().isEmpty()) {
      return Result.refused(Message.of("project.change-order-file.none", found.release()));
    }
    AgreedBefore agreed = found.agreed().get();
    SiteResult now = found.after();
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    PaperSize paper = now.site().units() == UnitSystem.METRIC ? PaperSize.A4 : PaperSize.LETTER;
    PacketContents job =
        new PacketContents(
                now.site().withReleases(List.of()), now.areas(), now.work(), paper, today, words)
            .after(agreed);
    String called = words.say("project.change-order-file.called");
    List<PrintedPage> pages = Paginator.paginate(ChangeOrder.drafts(job), job.issue(), called);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SheetFiles.pdf(pages, now.site().name() + ", " + called, today, out);
    return Result.ok(out.toByteArray());
  }
}
