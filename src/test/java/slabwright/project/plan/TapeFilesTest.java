package slabwright.project.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.shape.Affine;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.Spot;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.Reading;
import slabwright.tape.RoomAdjustment;
import slabwright.tape.RoomResult;
import slabwright.tape.TapeRoom;
import slabwright.tape.TapedOutline;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class TapeFilesTest {
  @TempDir Path folder;

  private Path plan;
  private Path file;
  private AdjustedRoom room;
  private FloorArea area;

  @BeforeEach
  void taped() {
    plan = folder.resolve("shed.site.json");
    file = folder.resolve("shed-a1.tape");
    room = room("4 m", "3000 mm");
    area = TapedOutline.area("a1", "Shed", room, Affine.IDENTITY, Words.english()::say);
  }

  /** A square-cornered room of four walls. */
  private static AdjustedRoom room(String wide, String deep) {
    TapeRoom taped = TapeRoom.of(4);
    for (int k = 0; k < 4; k++) {
      if (k > 0) {
        taped = taped.with(new Reading.Turn(k, -90, Reading.Trust.READ, Optional.empty()));
      }
      taped =
          taped.with(
              new Reading.Wall(
                  k, Length.parse(k % 2 == 0 ? wide : deep).orThrow(), Optional.empty()));
    }
    return ((RoomResult.Adjusted) RoomAdjustment.of(taped, UnitSystem.METRIC)).room();
  }

  /** Writes and waits; what was told. */
  private List<Message> write(TapeFiles files, AdjustedRoom taped) {
    List<Message> told = new CopyOnWriteArrayList<>();
    try (BackgroundWriter writer = new BackgroundWriter("test", Runnable::run)) {
      files.write(plan, area, taped, writer, told::add);
    }
    return told;
  }

  private Optional<AdjustedRoom> read(FloorArea of) {
    List<Message> told = new CopyOnWriteArrayList<>();
    Optional<AdjustedRoom> found = read(of, told);
    assertThat(told).isEmpty();
    return found;
  }

  private Optional<AdjustedRoom> read(FloorArea of, List<Message> told) {
    List<AdjustedRoom> found = new CopyOnWriteArrayList<>();
    try (BackgroundWriter writer = new BackgroundWriter("test", Runnable::run)) {
      new TapeFiles().read(plan, of, UnitSystem.METRIC, writer, found::add, told::add);
    }
    return found.stream().findFirst();
  }

  @Test
  void readings_come_back_as_they_were_taken() {
    assertThat(write(new TapeFiles(), room)).isEmpty();
    assertThat(read(area).map(r -> r.room().readings())).contains(room.room().readings());
  }

  @Test
  void an_area_without_a_file_was_not_taped() {
    assertThat(read(area)).isEmpty();
  }

  @Test
  void an_outline_that_was_drawn_over_is_no_longer_the_taped_one() {
    write(new TapeFiles(), room);
    FloorArea other =
        TapedOutline.area(
            "a1", "Shed", room("4.2 m", "3000 mm"), Affine.IDENTITY, Words.english()::say);
    assertThat(read(other)).isEmpty();
    FloorArea three =
        FloorArea.of(
            "a1",
            "Shed",
            List.of(
                OutlinePiece.wall(Spot.mm(0, 0)),
                OutlinePiece.wall(Spot.mm(4000, 0)),
                OutlinePiece.wall(Spot.mm(0, 3000))));
    assertThat(read(three)).isEmpty();
  }

  @Test
  void what_lies_there_is_not_written_again() throws IOException {
    TapeFiles files = new TapeFiles();
    write(files, room);
    Files.writeString(file, "by hand since");
    write(files, room);
    assertThat(file).hasContent("by hand since");
    write(files, room("4.2 m", "3000 mm"));
    assertThat(file).content().contains("4.2 m");
  }

  @Test
  void a_file_that_is_no_tape_file_gives_no_room() throws IOException {
    Files.writeString(file, "walls, somehow");
    assertThat(read(area)).isEmpty();
  }

  @Test
  void a_folder_where_the_file_should_lie_is_told() throws IOException {
    Files.createDirectories(file.resolve("in the way"));
    assertThat(write(new TapeFiles(), room))
        .extracting(Message::key)
        .containsExactly("project.plan.tape-not-written");
    List<Message> told = new CopyOnWriteArrayList<>();
    assertThat(read(area, told)).isEmpty();
    assertThat(told).hasSize(1);
    assertThat(Words.english().say(told.get(0)))
        .startsWith("The tape file " + file + " cannot be read: ");
  }
}
