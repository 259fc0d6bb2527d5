package slabwright.desk;

import java.util.List;
import java.util.concurrent.TimeoutException;

/** Machines, inlay, finish, slab and air. */
final class RedrawDetails {
  private final DeskUnderTest desk;
  private final DeskGestures hands;

  RedrawDetails(DeskUnderTest desk, DeskGestures hands) {
    this.desk = desk;
    this.hands = hands;
  }

  void machine(int number, String name, String body, String head, String clear)
      throws TimeoutException {
    String id = "-machine-" + number;
    hands.click("add-machine").fill("machine-name" + id, name).fill("machine-body" + id, body);
    hands.fill("machine-head" + id, head).fill("machine-clear" + id, clear);
  }

  void inlay() throws TimeoutException {
    hands.click("tool-PLACE").clickSlab(9000, 3000);
    desk.settle();
    hands.fill("inlay-name", "Heron ring").fill("inlay-width", "2400 mm");
    hands.click("tool-PLACE").line("29' 8\", 7' 2\"");
    hands.fill("stencil-roll-width", "48\"").fill("stencil-usable-width", "46\"");
    hands.fill("stencil-overlap", "1/2\"").fill("stencil-margin", "4\"");
    hands.fill("stencil-press-band", "2\"").fill("stencil-vinyl-holds", "1/8\"");
    hands.choose("stencil-overspray", "from the nozzle");
    hands.fill("fan-height", "10\"").fill("fan-degrees", "80");
    hands.fill("fan-overrun", "6\"").fill("fan-drift", "4\"");
  }

  void coats(List<String> products, List<String> times) throws TimeoutException {
    for (int i = 0; i < products.size(); i++) {
      hands.click("add-coat").choose("product-" + i, products.get(i) + " (invented)");
      hands.fill("coats-" + i, times.get(i));
    }
  }

  void slab(String mohs, String age, String surface, String air, String humidity)
      throws TimeoutException {
    hands.fill("slab-mohs", mohs).fill("slab-age", age).fill("slab-surface", surface);
    hands.fill("slab-air", air).fill("slab-humidity", humidity);
  }

  void moisture() throws TimeoutException {
    hands.click("moisture-add").fill("moisture-value-0", "78");
    hands.fill("moisture-place-0", "beside the trench");
    hands.click("moisture-add").choose("moisture-test-1", "plastic sheet (D4263)");
    hands.fill("moisture-value-1", "dry").fill("moisture-place-1", "main doors");
  }

  RedrawDetails answer(String question, String answer) throws TimeoutException {
    hands.choose("sealer-" + question, answer);
    return this;
  }

  /** Clears what stands against the work: who, the day, the report. */
  void clear(String stop, String how) throws TimeoutException {
    hands.fill("stop-cleared-" + stop, how);
  }

  void decline(String advice, String by, String on) throws TimeoutException {
    hands.click("decline-" + advice).fill("declined-by-" + advice, by);
    hands.fill("declined-on-" + advice, on);
  }
}
