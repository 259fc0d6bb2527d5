package slabwright.desk.cards;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.shell.OpenQuestion;
import slabwright.site.FloorArea;

/** The column of cards: what is picked, then the stage's answers. */
public final class CardColumn extends ScrollPane {
  private static final double MARGIN = 12;

  private final DeskContext bench;
  private final Function<Stage, List<Card>> cards;
  private final VBox list = new VBox();
  private final CardFolding single;
  private CardFolding steps;
  private List<OpenQuestion> questions = List.of();
  private Optional<Node> held = Optional.empty();
  private double heldTop;
  private double seenAt;

  public CardColumn(DeskContext bench, Function<Stage, List<Card>> cards) {
    this.bench = bench;
    this.cards = cards;
    single = CardFolding.eachByItself(bench.settings());
    steps = single;
    getStyleClass().add("card-column");
    list.getStyleClass().add("card-list");
    setContent(list);
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    sceneProperty()
        .addListener(
            (o, was, is) -> {
              if (is != null) {
                is.focusOwnerProperty()
                    .addListener((p, before, now) -> Platform.runLater(() -> follow(now)));
              }
            });
  }

  /** Unfolds the card of a field, scrolls to it and gives it the keys; false when there is none. */
  public boolean lead(String id) {
    Optional<Card> card =
        list.getChildren().stream()
            .filter(c -> c.isVisible() && c.lookup("#" + id) != null)
            .map(Card.class::cast)
            .findFirst();
    card.ifPresent(c -> c.unfold(folding(c)));
    Optional<Node> field = card.map(c -> c.lookup("#" + id)).filter(CardColumn::isShown);
    field.ifPresent(this::lead);
    return field.isPresent();
  }

  private void lead(Node field) {
    applyCss();
    layout();
    field.requestFocus();
    see(field);
  }

  /** The field whose text was refused and still stands there; typing then goes on in it. */
  public Optional<TextField> refused() {
    return list.lookupAll(".text-field").stream()
        .filter(f -> f.getPseudoClassStates().contains(LengthField.WRONG) && isShown(f))
        .map(TextField.class::cast)
        .findFirst();
  }

  /** Whether a node lies on a card and is there to be seen. */
  public boolean shows(Node node) {
    Node up = node;
    while (up != null && up != list) {
      up = up.getParent();
    }
    return up != null && getScene() != null && isShown(node);
  }

  private static boolean isShown(Node node) {
    return node == null || (node.isVisible() && isShown(node.getParent()));
  }

  /** What gets the keys is scrolled into view, so that Tab never leads out of sight. */
  private void follow(Node owner) {
    Node up = owner != null && owner.isFocusVisible() ? owner : null;
    while (up != null && up != list) {
      up = up.getParent();
    }
    if (up == null) {
      return;
    }
    see(owner);
  }

  private void see(Node owner) {
    Bounds at = list.sceneToLocal(owner.localToScene(owner.getLayoutBounds()));
    double seen = getViewportBounds().getHeight();
    double over = list.getHeight() - seen;
    double top = getVvalue() * over;
    double above = at.getHeight() < seen / 2 ? seen / 3 : MARGIN;
    if (over > 0 && (at.getMinY() < top || at.getMaxY() > top + seen)) {
      setVvalue(Math.max(0, Math.min(1, (at.getMinY() - above) / over)));
    }
  }

  /**
   * What is typed into stays where it is on the screen when cards above it grow, as they do when
   * something has been worked out.
   */
  @Override
  protected void layoutChildren() {
    super.layoutChildren();
    list.layout();
    Optional<Node> owner = owner();
    double over = list.getHeight() - getViewportBounds().getHeight();
    boolean same = held.isPresent() && held.equals(owner) && getVvalue() == seenAt;
    if (same && over > 0) {
      double now = top(held.get()) - getVvalue() * over;
      if (Math.abs(now - heldTop) > 0.5) {
        setVvalue(Math.max(0, Math.min(1, (top(held.get()) - heldTop) / over)));
      }
    }
    held = owner;
    seenAt = getVvalue();
    heldTop = owner.map(o -> top(o) - getVvalue() * Math.max(0, over)).orElse(0.0);
  }

  private Optional<Node> owner() {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    Node up = owner;
    while (up != null && up != list) {
      up = up.getParent();
    }
    return up == null ? Optional.empty() : Optional.of(owner);
  }

  private double top(Node node) {
    return list.sceneToLocal(node.localToScene(node.getLayoutBounds())).getMinY();
  }

  /**
   * Shows the cards of the stage as they are now.
   *
   * @param open the plan's open questions; each stands on the step that answers it
   */
  public void refresh(List<OpenQuestion> open) {
    questions = open;
    refresh();
  }

  private void refresh() {
    List<Card> now = cards.apply(bench.focus().stage());
    if (!list.getChildren().equals(now)) {
      list.getChildren().setAll(now);
      setVvalue(0);
    }
    steps =
        CardFolding.oneOpen(
            bench.settings(),
            now.stream().filter(Card::isStep).map(Card::key).findFirst().orElse(""),
            this::refresh);
    now.forEach(c -> c.show(folding(c)));
    // Only now, as what is asked is found by the rows that were just made.
    now.stream().filter(Card::isStep).forEach(c -> c.ask(asks(c)));
  }

  private CardFolding folding(Card card) {
    return card.isStep() ? steps : single;
  }

  /** What is asked of the floor area looked at and answered on a card. */
  private String asks(Card card) {
    Optional<String> area = bench.focus().area().map(FloorArea::id);
    List<OpenQuestion> here =
        questions.stream()
            .filter(q -> q.stage() == bench.focus().stage())
            .filter(q -> q.area().isEmpty() || q.area().equals(area))
            .filter(q -> card.lookup("#" + q.field()) != null)
            .toList();
    return switch (here.size()) {
      case 0 -> "";
      case 1 -> bench.words().say(here.get(0).what());
      default ->
          bench.words().say("desk.cards.card-head.and-more", here.get(0).what(), here.size() - 1);
    };
  }

  /** Scrolls what has just been made into view; the keys stay where they are. */
  public void bring(String id) {
    Optional<Node> node = Optional.ofNullable(list.lookup("#" + id)).filter(CardColumn::isShown);
    if (node.isPresent()) {
      applyCss();
      layout();
      see(node.get());
    }
  }
}
