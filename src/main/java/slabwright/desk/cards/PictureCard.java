package slabwright.desk.cards;

import java.util.Optional;
import javafx.scene.control.Label;
import slabwright.desk.model.Bench;
import slabwright.desk.shell.Controls;
import slabwright.site.Underlay;

/** The picture under the plan: what it is, what it does not show truly, what to do with it. */
public final class PictureCard extends Card {
  /** What can be done with the picture. */
  public interface Actions {
    void scalePicture();

    void flattenPicture();

    void removePicture();
  }

  private final Bench bench;
  private final FieldRows rows;
  private final Label caution = Controls.sentence("", "card-words");

  public PictureCard(Bench bench, Actions actions) {
    super("Picture under the plan");
    this.bench = bench;
    rows = new FieldRows(bench.desk());
    rows.figure("File", () -> underlay().map(Underlay::file).orElse(""));
    caution.setId("picture-caution");
    body()
        .getChildren()
        .addAll(
            rows,
            caution,
            button("Scale it by a known length", "picture-scale", actions::scalePicture),
            button("Lay a slanted photo flat", "picture-flat", actions::flattenPicture),
            button("Take it away", "picture-remove", actions::removePicture));
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

  @Override
  protected void refresh() {
    rows.refresh();
    String words = underlay().map(Underlay::caution).orElse("");
    caution.setText(words);
    Controls.show(caution, !words.isEmpty());
  }

  @Override
  public boolean isWanted() {
    return underlay().isPresent();
  }
}
