package slabwright.work.book;

import java.time.Duration;
import java.util.Optional;

/**
 * When what may follow a coat.
 *
 * @param recoatFrom the window for the next coat opens
 * @param recoatUntil the longest recoat time of a spot from when it was laid; present and empty for
 *     a product that has none
 * @param lightTraffic socks and soft soles
 * @param fullTraffic the floor is handed over
 */
public record Drying(
    Figure<TemperatureTable> recoatFrom,
    Figure<Optional<Duration>> recoatUntil,
    Figure<TemperatureTable> lightTraffic,
    Figure<TemperatureTable> fullTraffic) {

  static Drying read(BookSection s) {
    return new Drying(
        s.table("recoat_from"),
        s.timeOrNone("recoat_until"),
        s.table("light_traffic"),
        s.table("full_traffic"));
  }
}
