package slabwright.desk.cards.inlay;

import java.util.Optional;
import javafx.scene.control.CheckBox;
import slabwright.desk.cards.Card;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.shell.Controls;
import slabwright.site.Inlay;

/** Saves what the sign shop cuts: of the inlay looked at, or of all from the Sheets stage. */
public final class CutCard extends Card {
  /** What can be sent to the shop. */
  public interface CutActions {
    /**
     * Saves cut files into a folder that is asked for.
     *
     * @param only the inlay's id; empty for all of the site
     */
    void save(Optional<String> only, boolean lettersAccepted);

    /** Whether letters would be cut in another font than the graphic asks for. */
    boolean changesLetters(Optional<String> only);
  }

  private final DeskContext bench;
  private final CutActions cuts;
  private final SelectedInlay inlay;
  private final CheckBox letters =
      new CheckBox(words().say("desk.cards.inlay.cut.accept-the-letters-as-they"));

  public CutCard(DeskContext bench, CutActions cuts) {
    super(bench, "cut-files", bench.words().say("desk.cards.inlay.cut.cut-files"));
    this.bench = bench;
    this.cuts = cuts;
    inlay = new SelectedInlay(bench);
    letters.setId("accept-letters");
    letters.setWrapText(true);
    var save =
        Controls.button(
            words().say("desk.cards.inlay.cut.save-cut-files"),
            "soft-button",
            () -> cuts.save(only(), letters.isSelected()));
    save.setId("export-cut");
    save.setMaxWidth(Double.MAX_VALUE);
    body()
        .getChildren()
        .addAll(
            Controls.sentence(
                words().say("desk.cards.inlay.cut.one-zip-for-the-sign"), "card-words"),
            letters,
            save);
  }

  private Optional<String> only() {
    return bench.focus().stage() == Stage.INLAY ? inlay.now().map(Inlay::id) : Optional.empty();
  }

  @Override
  protected void refresh() {
    Controls.show(letters, cuts.changesLetters(only()));
  }

  @Override
  public boolean isWanted() {
    return bench.desk().site().areas().stream().anyMatch(a -> !a.inlays().isEmpty());
  }
}
