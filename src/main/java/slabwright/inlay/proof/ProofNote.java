package slabwright.inlay.proof;

import java.util.List;
import java.util.stream.Collectors;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** Something about the shop's drawing that is no fault, or that can't be told. */
public sealed interface ProofNote {
  /** Its kind as it stands in JSON. */
  String kind();

  /** One sentence, with lengths in the units that the site shows. */
  Message message(UnitSystem units);

  /** Whether it leaves open if the drawing is right. */
  default boolean isDoubt() {
    return false;
  }

  /**
   * The drawing is turned; it cuts the same.
   *
   * @param degrees clockwise as drawn, 0 to 360
   */
  record Turned(double degrees) implements ProofNote {
    @Override
    public String kind() {
      return "turned";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.turned", QuantityFormat.number(degrees, 1));
    }
  }

  /** Nothing says what is pulled out. */
  record PolarityCannotBeTold(boolean shaded) implements ProofNote {
    @Override
    public String kind() {
      return "polarity-cannot-be-told";
    }

    @Override
    public Message message(UnitSystem units) {
      return shaded
          ? Message.of("inlay.proof-note.shading-unknown")
          : Message.of("inlay.proof-note.lines-only");
    }

    @Override
    public boolean isDoubt() {
      return true;
    }
  }

  /** The drawing is a picture, and no picture says how large it is meant to be. */
  record PictureHasNoSize() implements ProofNote {
    @Override
    public String kind() {
      return "scale-cannot-be-told";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.picture-without-size");
    }

    @Override
    public boolean isDoubt() {
      return true;
    }
  }

  /** The drawing says where its edges are less well than a limit asks; mm. */
  record DrawingInDoubt(double doubt, double limit) implements ProofNote {
    @Override
    public String kind() {
      return "drawing-in-doubt";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of(
          "inlay.proof-note.in-doubt",
          LengthFormat.plain(Math.ceil(doubt * 10) / 10),
          LengthFormat.plain(limit));
    }

    @Override
    public boolean isDoubt() {
      return true;
    }
  }

  /** The graphic is its own mirror image. */
  record MirroringCannotBeTold() implements ProofNote {
    @Override
    public String kind() {
      return "mirroring-cannot-be-told";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.mirroring");
    }
  }

  /** The graphic looks the same turned by some angle. */
  record TurnCannotBeTold() implements ProofNote {
    @Override
    public String kind() {
      return "turn-cannot-be-told";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.turn");
    }
  }

  /** Panels lie apart in the drawing. */
  record PanelsApart(int count) implements ProofNote {
    @Override
    public String kind() {
      return "panels-apart";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.panels-apart", count);
    }
  }

  /** One panel of several came back; it was judged by itself. */
  record OnePanelAlone(String panel, List<String> absent) implements ProofNote {
    public OnePanelAlone {
      absent = List.copyOf(absent);
    }

    @Override
    public String kind() {
      return "one-panel-alone";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of(
          "inlay.proof-note.one-panel-alone", panel, absent.size(), String.join(", ", absent));
    }
  }

  /** Drawn on the blank of the whole graphic where the order asks for less vinyl. */
  record OnWholeBlank() implements ProofNote {
    @Override
    public String kind() {
      return "on-whole-blank";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.on-whole-blank");
    }
  }

  /** The whole graphic in its colours: each stencil was sought in what is seen in its colour. */
  record AllInColour() implements ProofNote {
    @Override
    public String kind() {
      return "all-in-color";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.all-in-color");
    }
  }

  /** The page says at which scale it is drawn. */
  record ScaleStated(double denominator) implements ProofNote {
    @Override
    public String kind() {
      return "scale-stated";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.scale-stated", LengthFormat.plain(denominator));
    }
  }

  /** The drawing was fitted to its page, and nothing says how large it is to be cut. */
  record ScaleCannotBeTold(double denominator) implements ProofNote {
    @Override
    public String kind() {
      return "scale-cannot-be-told";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.scale-unknown", QuantityFormat.number(denominator, 1));
    }

    @Override
    public boolean isDoubt() {
      return true;
    }
  }

  /** Texts inside the film were taken for notes. */
  record WordsInFilm(int count, List<String> shown) implements ProofNote {
    public WordsInFilm {
      shown = List.copyOf(shown);
    }

    @Override
    public String kind() {
      return "words-in-film";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.words-in-film", count, String.join(" · ", shown));
    }
  }

  /** A page on which nothing of the plan was found. */
  record PageIgnored(String file, int page) implements ProofNote {
    @Override
    public String kind() {
      return "page-ignored";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.page-ignored", file, page);
    }
  }

  /**
   * A file that came back can't be read, so that what it shows is not judged.
   *
   * @param why as its reader says it
   */
  record FileUnread(String file, Message why) implements ProofNote {
    @Override
    public String kind() {
      return "file-unread";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.file-unread", file, why);
    }

    @Override
    public boolean isDoubt() {
      return true;
    }
  }

  /**
   * A page of several colors whose fills alone were read.
   *
   * @param page from 1
   * @param why its strokes and clips were not
   */
  record PaintUnread(String file, int page, Message why) implements ProofNote {
    @Override
    public String kind() {
      return "paint-unread";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.paint-unread", file, page, why);
    }

    @Override
    public boolean isDoubt() {
      return true;
    }
  }

  /** Stencils of the inlay of which nothing came back. */
  record StencilsAbsent(List<Integer> stencils) implements ProofNote {
    public StencilsAbsent {
      stencils = List.copyOf(stencils);
    }

    @Override
    public String kind() {
      return "stencils-absent";
    }

    @Override
    public Message message(UnitSystem units) {
      String all = stencils.stream().map(String::valueOf).collect(Collectors.joining(", "));
      return Message.of("inlay.proof-note.stencils-absent", stencils.size(), all);
    }
  }

  /** Things beside the stencil were taken for the shop's labels. */
  record BesideIgnored(int count) implements ProofNote {
    @Override
    public String kind() {
      return "beside-ignored";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-note.beside", count);
    }
  }

  /** All openings are a little fatter, or thinner when negative, within the limit; mm. */
  record Fat(double fat) implements ProofNote {
    @Override
    public String kind() {
      return fat > 0 ? "a-little-fatter" : "a-little-thinner";
    }

    @Override
    public Message message(UnitSystem units) {
      String by = LengthFormat.fine(Math.abs(fat), units);
      return fat > 0
          ? Message.of("inlay.proof-note.fatter", by)
          : Message.of("inlay.proof-note.thinner", by);
    }
  }
}
