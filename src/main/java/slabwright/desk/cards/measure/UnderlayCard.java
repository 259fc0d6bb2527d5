package slabwright.desk.cards.measure;

import java.util.Optional;
import javafx.scene.control.Label;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.shell.Controls;
import slabwright.site.Underlay;
import slabwright.units.Message;
import slabwright.units.Result;

/** The picture under the plan: what it is, what it does not show truly, what to do with it. */
public final class UnderlayCard extends Card {
  /** What can be done with the picture. */
  public interface Actions {
    void scalePicture();

    void flattenPicture();

    void removePicture();

    /** Which page lies there; empty where there is but one, or no PDF is known. */
    Optional<Pages> pages();

    void turnTo(int page);
  }

  /**
   * A page of a PDF.
   *
   * @param now from 1
   */
  public record Pages(int now, int all) {}

  private final DeskContext bench;
  private final Actions actions;
  private final FieldRows rows;
  private final FieldRows page;
  private int pages;
  private final Label caution = Controls.sentence("", "card-words");

  public UnderlayCard(DeskContext bench, Actions actions) {
    super(
        bench,
        "picture-under-the-plan",
        bench.words().say("desk.cards.measure.underlay.picture-under-the-plan"));
    this.bench = bench;
    this.actions = actions;
    page = new FieldRows(bench);
    rows = new FieldRows(bench);
    rows.figure(
        words().say("desk.cards.measure.underlay.file"),
        () -> underlay().map(Underlay::file).orElse(""));
    caution.setId("picture-caution");
    body()
        .getChildren()
        .addAll(
            rows,
            page,
            caution,
            button(
                words().say("desk.cards.measure.underlay.scale-it-by-a-known"),
                "picture-scale",
                actions::scalePicture),
            button(
                words().say("desk.cards.measure.underlay.lay-a-slanted-photo-flat"),
                "picture-flat",
                actions::flattenPicture),
            button(
                words().say("desk.cards.measure.underlay.take-it-away"),
                "picture-remove",
                actions::removePicture));
  }

  private static javafx.scene.Node button(String words, String id, Runnable does) {
    var b = Controls.button(words, "soft-button", does);
    b.setId(id);
    b.setMaxWidth(Double.MAX_VALUE);
    return b;
  }

  private Optional<Underlay> underlay() {
    return bench.desk().shown().underlay();
  }

  private void fill(int all) {
    pages = all;
    page.clear();
    if (all > 1) {
      page.text(
              words().say("desk.cards.measure.underlay.page-to", all),
              () -> actions.pages().map(p -> String.valueOf(p.now())).orElse(""),
              s -> read(s, all))
          .id("picture-page");
    }
    Controls.show(page, all > 1);
  }

  private Result<Integer> read(String text, int all) {
    String typed = text.strip();
    int n = typed.matches("[0-9]{1,6}") ? Integer.parseInt(typed) : 0;
    if (n < 1 || n > all) {
      return Result.refused(
          Message.of("desk.cards.measure.underlay.write-a-page-number-from", all));
    }
    actions.turnTo(n);
    return Result.ok(n);
  }

  @Override
  protected void refresh() {
    int all = actions.pages().map(Pages::all).orElse(1);
    if (all != pages) {
      fill(all);
    }
    page.refresh();
    rows.refresh();
    String said = underlay().map(Underlay::caution).orElse("");
    caution.setText(said);
    Controls.show(caution, !said.isEmpty());
  }

  @Override
  public boolean isWanted() {
    return underlay().isPresent();
  }
}
