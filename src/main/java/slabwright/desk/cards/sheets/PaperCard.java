package slabwright.desk.cards.sheets;

import java.util.List;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SheetPages;
import slabwright.desk.shell.Controls;
import slabwright.project.export.ExportFormat;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.page.PaperSize;

/** The paper, and what to do with the pages. */
public final class PaperCard extends Card {
  /** What can be done with the pages. */
  public interface SheetActions {
    void save(ExportFormat form);

    void save(Packet packet);

    void print();
  }

  private final DeskContext bench;
  private final FieldRows rows;
  private Packet one = Packet.CLIENT;

  public PaperCard(DeskContext bench, SheetPages pages, SheetActions exports) {
    super(bench, "sheets", bench.words().say("desk.cards.sheets.paper.sheets"));
    this.bench = bench;
    rows = new FieldRows(bench);
    rows.choice(
            words().say("desk.cards.sheets.paper.paper"),
            List.of(PaperSize.values()),
            PaperSize::word,
            pages::paper,
            pages::setPaper)
        .setId("paper");
    rows.figure(
        words().say("desk.cards.sheets.paper.pages"),
        () ->
            pages.isWorking()
                ? words().say("desk.cards.sheets.paper.being-made")
                : String.valueOf(pages.pages().size()));
    body().getChildren().add(rows);
    save(
        words().say("desk.cards.sheets.paper.save-packets"),
        "solid",
        ExportFormat.PACKETS,
        exports);
    onePacket(exports);
    save(
        words().say("desk.cards.sheets.paper.save-as-one-pdf"),
        "soft-button",
        ExportFormat.PDF,
        exports);
    save(
        words().say("desk.cards.sheets.paper.save-each-page-as-svg"),
        "soft-button",
        ExportFormat.SVG,
        exports);
    save(
        words().say("desk.cards.sheets.paper.save-quantities-as-csv"),
        "soft-button",
        ExportFormat.CSV,
        exports);
    save(
        words().say("desk.cards.sheets.paper.save-all-numbers-as-json"),
        "soft-button",
        ExportFormat.JSON,
        exports);
    action(words().say("desk.cards.sheets.paper.print"), "print", "soft-button", exports::print);
  }

  private void onePacket(SheetActions exports) {
    FieldRows which = new FieldRows(bench);
    which
        .choice(
            words().say("desk.cards.sheets.paper.one-packet"),
            List.of(Packet.values()),
            p -> words().say(p.word()),
            () -> one,
            p -> one = p)
        .setId("packet");
    body().getChildren().add(which);
    action(
        words().say("desk.cards.sheets.paper.save-this-packet"),
        "export-one",
        "soft-button",
        () -> exports.save(one));
  }

  private void save(String words, String style, ExportFormat form, SheetActions exports) {
    String id = "export-" + form.name().toLowerCase(java.util.Locale.ROOT);
    action(words, id, style, () -> exports.save(form));
  }

  private void action(String words, String id, String style, Runnable does) {
    var b = Controls.button(words, style, does);
    b.setId(id);
    b.setMaxWidth(Double.MAX_VALUE);
    body().getChildren().add(b);
  }

  @Override
  protected void refresh() {
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return true;
  }
}
