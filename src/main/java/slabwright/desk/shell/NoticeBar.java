package slabwright.desk.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.kordamp.ikonli.feather.Feather;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskContext;
import slabwright.shape.Vec;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.words.Words;

/**
 * Says why something can't be, or that it has been done: one sentence at the top of the slab, with
 * Show when it has a place.
 */
public final class NoticeBar extends HBox {
  /** Long enough to read a sentence twice and reach for its button. */
  private static final Duration LASTS = Duration.seconds(12);

  private final Desk desk;
  private final Consumer<Vec> show;
  private final Label sign = Controls.label("", "sign-cant");
  private final Label sentence = Controls.sentence("", "notice-words");
  private final Words words;
  private final Button place;
  private final Button folder;
  private final VBox choices = new VBox();
  private final PauseTransition lasting = new PauseTransition(LASTS);
  private Optional<Message> told = Optional.empty();
  private List<Desk.Choice> offered = List.of();

  /**
   * A bar over the slab.
   *
   * @param show takes the view to a place
   * @param folders shows a folder outside of the desk
   */
  public NoticeBar(DeskContext bench, Consumer<Vec> show, Consumer<Path> folders) {
    desk = bench.desk();
    words = bench.words();
    this.show = show;
    getStyleClass().add("notice");
    setId("notice");
    sentence.setId("notice-words");
    setAlignment(Pos.CENTER_LEFT);
    setMaxSize(590, Region.USE_PREF_SIZE);
    sentence.setMaxWidth(440);
    place = Controls.button(words.say("desk.shell.notice-bar.show"), "link", this::goThere);
    place.setMinWidth(Region.USE_PREF_SIZE);
    Button away =
        Controls.icon(
            Icons.of(Feather.X, 15),
            words.say("desk.shell.notice-bar.put-the-message-away"),
            words.say("desk.shell.notice-bar.esc"),
            desk::clearRefusal);
    folder =
        Controls.button(
            words.say("desk.shell.notice-bar.open-folder"),
            "link",
            () -> desk.announcedFolder().ifPresent(folders));
    folder.setId("open-folder");
    folder.setMinWidth(Region.USE_PREF_SIZE);
    choices.setId("notice-choices");
    choices.setMinWidth(Region.USE_PREF_SIZE);
    getChildren().addAll(sign, sentence, Controls.spring(), folder, choices, place, away);
    lasting.setOnFinished(e -> fade());
    hoverProperty().addListener((o, was, is) -> last());
  }

  /** What has been done goes away by itself, unless the pointer rests on it; a fault stays. */
  private void last() {
    lasting.stop();
    if (desk.announcement().isPresent() && !isHover()) {
      lasting.playFromStart();
    }
  }

  private void fade() {
    if (!isHover()) {
      desk.clearAnnouncement();
    }
  }

  /** Runs while something done is still told; at its end that goes away. */
  public Animation lasting() {
    return lasting;
  }

  /** A button for each, one under the other. */
  private void offer(List<Desk.Choice> all) {
    if (!offered.equals(all)) {
      offered = all;
      choices.getChildren().setAll(all.stream().map(c -> choice(c)).toList());
    }
    Controls.show(choices, !all.isEmpty());
  }

  private Button choice(Desk.Choice c) {
    Button button =
        Controls.button(
            words.say(c.words()),
            "link",
            () -> {
              desk.clearRefusal();
              c.take().run();
            });
    button.setMinWidth(Region.USE_PREF_SIZE);
    return button;
  }

  private void goThere() {
    desk.refusal().flatMap(Refusal::where).map(p -> new Vec(p.x(), p.y())).ifPresent(show);
  }

  public void refresh() {
    Optional<Refusal> r = desk.refusal();
    Optional<String> said = r.map(Refusal::message).or(desk::announcement).map(words::say);
    Controls.show(this, said.isPresent());
    said.ifPresent(sentence::setText);
    boolean fault = r.isPresent();
    pseudoClassStateChanged(PseudoClass.getPseudoClass("fine"), !fault);
    sign.setText(fault ? "✕" : "✓");
    Controls.style(sign, fault ? "sign-cant" : "sign-fine");
    offer(desk.choices());
    Controls.show(folder, !fault && desk.announcedFolder().isPresent());
    if (!told.equals(desk.announcement())) {
      told = desk.announcement();
      last();
    }
    Controls.show(place, r.flatMap(Refusal::where).isPresent());
  }
}
