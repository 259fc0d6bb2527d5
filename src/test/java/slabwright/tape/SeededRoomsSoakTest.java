package slabwright.tape;

import org.junit.jupiter.api.Tag;

@Tag("long")
class SeededRoomsSoakTest extends SeededRooms {
  SeededRoomsSoakTest() {
    super(300);
  }
}
