package slabwright.desk.shell;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.kordamp.ikonli.feather.Feather;
import slabwright.desk.model.Desk;
import slabwright.shape.Vec;
import slabwright.site.Refusal;

/**
 * Says why something can't be: one sentence at the top of the slab, with Show when it has a place.
 */
public final class NoticeBar extends HBox {
  private final Desk desk;
  private final Consumer<Vec> show;
  private final Label words = Controls.sentence("", "notice-words");
  private final Button place;

  /**
   * A bar over the slab.
   *
   * @param show takes the view to a place
   */
  public NoticeBar(Desk desk, Consumer<Vec> show) {
    this.desk = desk;
    this.show = show;
    getStyleClass().add("notice");
    setId("notice");
    setAlignment(Pos.CENTER_LEFT);
    setMaxSize(620, Region.USE_PREF_SIZE);
    words.setMaxWidth(470);
    place = Controls.button("Show", "link", this::goThere);
    Button away =
        Controls.icon(Icons.of(Feather.X, 15), "Put the message away", "Esc", desk::forgetRefusal);
    getChildren().addAll(Controls.label("✕", "sign-cant"), words, Controls.spring(), place, away);
  }

  private void goThere() {
    desk.refusal().flatMap(Refusal::where).ifPresent(show);
  }

  public void refresh() {
    Optional<Refusal> r = desk.refusal();
    Controls.show(this, r.isPresent());
    r.ifPresent(
        why -> {
          words.setText(why.sentence());
          Controls.show(place, why.where().isPresent());
        });
  }
}
