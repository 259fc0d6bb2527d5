package slabwright.site;

import java.time.LocalDate;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A numbered, frozen issue of the plan and its graphics.
 *
 * @param graphics SHA-256 (hex) of each graphic by its path, as they were when issued
 */
public record Release(
    int number, LocalDate issued, String note, SortedMap<String, String> graphics) {
  public Release {
    graphics = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(graphics));
  }
}
