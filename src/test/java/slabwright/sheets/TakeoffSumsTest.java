package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.sheets.csv.TakeoffCsv;
import slabwright.words.Words;

/** The lines of the take-off file, added up by who opens it. */
class TakeoffSumsTest {
  @ParameterizedTest
  @ValueSource(strings = {"bike-workshop", "depot-floor"})
  void what_stands_on_a_floor_is_gross_less_net_and_its_zones_are_the_net(String sample) {
    SheetSamples job = SheetSamples.sample(sample);
    List<String> lines =
        TakeoffCsv.write(job.results(), job.site().units(), Words.english()).lines().toList();
    double net = sum(lines, "net floor");
    assertThat(sum(lines, "kind of floor")).isCloseTo(net, within(0.01));
    assertThat(sum(lines, "stands on it"))
        .isCloseTo(sum(lines, "floor with what stands on it") - net, within(0.01));
  }

  private static double sum(List<String> lines, String what) {
    return lines.stream()
        .map(l -> List.of(l.split(",", -1)))
        .filter(l -> l.get(1).equals(what))
        .mapToDouble(l -> Double.parseDouble(l.get(l.size() - 2)))
        .sum();
  }
}
