package slabwright.tape;

/** Twenty-five rooms of each; three hundred are the long run. */
class SeededRoomsTest extends SeededRooms {
  SeededRoomsTest() {
    super(25);
  }
}
