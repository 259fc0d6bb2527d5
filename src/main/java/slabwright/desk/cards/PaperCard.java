package slabwright.desk.cards;

import java.util.List;
import slabwright.desk.model.Bench;
import slabwright.desk.model.SheetForm;
import slabwright.desk.model.SheetPages;
import slabwright.desk.shell.Controls;
import slabwright.sheets.Paper;

/** The paper, and what to do with the pages. */
public final class PaperCard extends Card {
  /** What can be done with the pages. */
  public interface Exports {
    void save(SheetForm form);

    void print();
  }

  private final FieldRows rows;

  public PaperCard(Bench bench, SheetPages pages, Exports exports) {
    super("Sheets");
    rows = new FieldRows(bench.desk());
    rows.choice("Paper", List.of(Paper.values()), Paper::word, pages::paper, pages::setPaper)
        .setId("paper");
    rows.figure(
        "Pages", () -> pages.isWorking() ? "being made" : String.valueOf(pages.pages().size()));
    body().getChildren().add(rows);
    save("Save as one PDF…", "solid", SheetForm.PDF, exports);
    save("Save each page as SVG…", "soft-button", SheetForm.SVG, exports);
    save("Save quantities as CSV…", "soft-button", SheetForm.CSV, exports);
    save("Save all numbers as JSON…", "soft-button", SheetForm.JSON, exports);
    action("Print…", "print", "soft-button", exports::print);
  }

  private void save(String words, String style, SheetForm form, Exports exports) {
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
