package slabwright.desk.cards;

import java.util.function.BooleanSupplier;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import slabwright.desk.model.DeskContext;
import slabwright.desk.shell.Controls;
import slabwright.words.Words;

/** A card of the right-hand column: a heading that folds it, and short rows. */
public abstract class Card extends VBox {
  private static final PseudoClass FOLDED = PseudoClass.getPseudoClass("folded");

  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  private final Words words;
  private final String key;
  private final String name;
  private final CardHead head;
  private final VBox body = new VBox();
  private Runnable turn = () -> {};
  private BooleanSupplier isTrue = () -> true;
  private boolean isStep;

  /**
   * An open card.
   *
   * @param key by which it is remembered that it is folded, the same in every language
   * @param name its heading
   */
  protected Card(DeskContext bench, String key, String name) {
    words = bench.words();
    this.key = key;
    this.name = name;
    getStyleClass().add("card");
    body.getStyleClass().add("card-body");
    head = new CardHead(key, words, () -> turn.run());
    getChildren().addAll(head, body);
  }

  /** Its figures are dimmed while this says no: they are of the plan a moment ago. */
  public final Card dimmedUnless(BooleanSupplier current) {
    isTrue = current;
    return this;
  }

  /** One of the short steps of its stage: opening it folds the others. */
  public final Card step() {
    isStep = true;
    return this;
  }

  final boolean isStep() {
    return isStep;
  }

  final String key() {
    return key;
  }

  /** Whether there is anything to show. */
  public abstract boolean isWanted();

  /** Shows what is now; where all stays as it is there is nothing to do. */
  protected void refresh() {}

  /** The heading as it is now. */
  protected String title() {
    return name;
  }

  /**
   * Shows the card as it is now. A folded one keeps its rows as they were until it is unfolded; a
   * step does not, as what it asks is found by its rows.
   */
  final void show(CardFolding folding) {
    boolean folded = folding.isFolded(key);
    turn =
        () -> {
          folding.setFolded(key, !folded);
          if (!isStep) {
            show(folding);
          }
        };
    head.show(title(), folded);
    pseudoClassStateChanged(FOLDED, folded);
    Controls.show(body, !folded);
    body.pseudoClassStateChanged(STALE, !isTrue.getAsBoolean());
    if (!folded || isStep) {
      refresh();
    }
    Controls.show(this, isWanted());
  }

  /** Says on its heading what is asked on it and not answered; empty for nothing. */
  final void ask(String what) {
    head.ask(what);
  }

  /** Unfolds it, so that a field of it can be led to. */
  final void unfold(CardFolding folding) {
    if (folding.isFolded(key)) {
      turn.run();
    }
  }

  /** Puts a control at the right of the heading. */
  protected final void beside(Node node) {
    head.beside(node);
  }

  protected final Words words() {
    return words;
  }

  protected final VBox body() {
    return body;
  }
}
