package slabwright.sheets.tape;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Fill;
import slabwright.drawing.TextBox;
import slabwright.figures.TapeInks;
import slabwright.shape.Affine;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.SheetSamples;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetOptions;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.Reading;
import slabwright.tape.RoomAdjustment;
import slabwright.tape.RoomResult;
import slabwright.tape.TapeRoom;
import slabwright.tape.text.TapeText;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class TapeSheetTest {
  private static final SheetOptions TABLOID =
      new SheetOptions(PaperSize.TABLOID, SheetSamples.DAY, Words.english());

  private static RoomResult adjusted(String text) {
    return RoomAdjustment.of(TapeText.read(text).orThrow(), UnitSystem.FEET_INCHES);
  }

  private static String office() throws IOException {
    return Files.readString(Path.of("sample-plans", "back-office.tape"));
  }

  private static List<PrintedPage> pages(RoomResult result) {
    return TapeSheet.of(result, "office", UnitSystem.FEET_INCHES, TABLOID);
  }

  private static String words(PrintedPage page) {
    return TextBox.of(page.drawing()).stream().map(TextBox::words).collect(Collectors.joining("|"));
  }

  @Test
  void the_picture_has_every_corner_and_says_how_much_too_large_ellipses_are() throws IOException {
    String words = words(pages(adjusted(office())).get(0));
    assertThat(words).contains("|A|", "|F|", "+7/64″").doesNotContain(" mm");
    assertThat(words.replace('|', ' ')).contains("drawn 10 times as large");
  }

  /** 2.4477 = √(−2 ln 0.05): an ellipse of two standard normal values holds them in 95 %. */
  @Test
  void ellipses_are_drawn_for_95_percent_as_many_times_too_large_as_said() throws IOException {
    AdjustedRoom room = ((RoomResult.Adjusted) adjusted(office())).room();
    TapeInks tape = new TapeInks(room, Affine.IDENTITY);
    List<Ring> drawn =
        tape.inks().stream()
            .filter(Fill.class::isInstance)
            .map(f -> ((Fill) f).rings().get(0))
            .toList();
    for (int i = 1; i < room.corners().size(); i++) {
      Vec at = room.corners().get(i).at();
      double reach = 0;
      for (Vec p : drawn.get(i).points()) {
        reach = Math.max(reach, p.distanceTo(at));
      }
      double major = room.corners().get(i).ellipse().orElseThrow().major();
      assertThat(reach).isCloseTo(2.4477 * tape.times() * major, Offset.offset(0.01 * reach));
    }
  }

  @Test
  void no_two_words_lie_on_each_other() throws IOException {
    List<TextBox> boxes = TextBox.of(pages(adjusted(office())).get(0).drawing());
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = i + 1; j < boxes.size(); j++) {
        assertThat(boxes.get(i).overlaps(boxes.get(j)))
            .as(boxes.get(i).words() + " / " + boxes.get(j).words())
            .isFalse();
      }
    }
  }

  @Test
  void a_misread_diagonal_is_named_beside_the_picture() throws IOException {
    String wrong =
        office().replace("A C 17' 1 1/2\"", "A C 11' 7 1/2\"")
            + "\ndiagonal C E 6' 0\"\ndiagonal B D 10' 10 1/4\"\ndiagonal C F 14' 6 1/2\"\n";
    assertThat(words(pages(adjusted(wrong)).get(0))).contains("Measure diagonal A C again");
  }

  @Test
  void a_free_shape_is_sketched_with_the_diagonals_to_tape() {
    String free = "wall 17'\nwall 10' left about\nwall 16' left about\nwall 9' left about\n";
    assertThat(words(pages(adjusted(free)).get(0))).contains("Measure next", "about ");
  }

  @Test
  void a_room_of_200_corners_fits_its_pages() {
    AdjustedRoom room =
        ((RoomResult.Adjusted) RoomAdjustment.of(round(), UnitSystem.METRIC)).room();
    assertThat(new TapeInks(room, Affine.IDENTITY).times()).isGreaterThanOrEqualTo(1);
    List<PrintedPage> pages =
        TapeSheet.of(new RoomResult.Adjusted(room), "round", UnitSystem.METRIC, TABLOID);
    assertThat(pages).hasSizeGreaterThan(1);
    assertThat(words(pages.get(pages.size() - 1))).contains("suspect");
  }

  /** 200 walls of 500 mm each in a ring, with the eight lines across that a crew would tape. */
  private static TapeRoom round() {
    int n = 200;
    TapeRoom room = TapeRoom.of(n);
    double radius = 250 / Math.sin(Math.PI / n);
    for (int k = 0; k < n; k++) {
      room = room.with(new Reading.Wall(k, Length.mm(500), Optional.empty()));
      room = room.with(new Reading.Turn(k, 360.0 / n, Reading.Trust.READ, Optional.empty()));
    }
    for (int k = 0; k < n / 2; k += 12) {
      room = room.with(new Reading.Diagonal(k, k + n / 2, Length.mm(2 * radius), Optional.empty()));
    }
    return room;
  }
}
