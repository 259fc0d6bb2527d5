package slabwright.project;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import slabwright.site.Site;
import slabwright.store.FullSite;
import slabwright.store.PlanFile;
import slabwright.units.Result;

/** Every field of the plan file, changed by itself, is told as a change. */
class PlanChangesFieldsTest {
  /** How numbers are shown, the picture to trace over, what was issued, and records of the days. */
  private static final Set<String> NO_CHANGE =
      Set.of("units", "underlay", "releases", "coatReadings", "photos");

  private static final ObjectMapper JSON = new ObjectMapper();

  /** A place in the plan file and how it is put there. */
  private record Leaf(String place, JsonNode value, Consumer<JsonNode> put) {}

  private static void leaves(String place, JsonNode node, List<Leaf> all) {
    if (node instanceof ObjectNode object) {
      for (String name : names(object)) {
        child(place + "/" + name, object.get(name), v -> object.set(name, v), all);
      }
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        int at = i;
        child(place + "/" + i, array.get(i), v -> array.set(at, v), all);
      }
    }
  }

  private static void child(String place, JsonNode node, Consumer<JsonNode> put, List<Leaf> all) {
    if (node.isContainerNode()) {
      leaves(place, node, all);
    } else {
      all.add(new Leaf(place, node, put));
    }
  }

  private static void objects(JsonNode node, List<ObjectNode> all) {
    if (node instanceof ObjectNode object) {
      all.add(object);
      names(object).forEach(name -> objects(object.get(name), all));
    } else {
      node.forEach(child -> objects(child, all));
    }
  }

  private static List<String> names(ObjectNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    names.removeIf(NO_CHANGE::contains);
    return names;
  }

  private static JsonNode other(JsonNode value) {
    if (value.isBoolean()) {
      return JSON.getNodeFactory().booleanNode(!value.booleanValue());
    }
    if (value.isNumber()) {
      return JSON.getNodeFactory().numberNode(value.intValue() + 1);
    }
    String text = value.asText();
    return JSON.getNodeFactory().textNode(text.matches("[0-9].*") ? "1" + text : text + "x");
  }

  private static void tell(Site full, JsonNode root, Map<String, Boolean> told, String place)
      throws IOException {
    Result<Site> changed = PlanFile.parse(JSON.writeValueAsString(root));
    if (changed instanceof Result.Ok<Site> ok && !ok.value().equals(full)) {
      told.put(place, !PlanChanges.between(full, ok.value()).isEmpty());
    }
  }

  @Test
  void each_field_of_the_plan_file_that_is_read_otherwise_is_a_change() throws IOException {
    Site full = FullSite.make();
    JsonNode root = JSON.readTree(PlanFile.write(full));
    List<Leaf> all = new ArrayList<>();
    leaves("", root, all);
    Map<String, Boolean> told = new TreeMap<>();
    for (Leaf leaf : all) {
      leaf.put().accept(other(leaf.value()));
      tell(full, root, told, leaf.place());
      leaf.put().accept(leaf.value());
    }
    assertThat(told)
        .hasSizeGreaterThan(100)
        .allSatisfy((place, isTold) -> assertThat(isTold).as(place).isTrue());
  }

  @Test
  void each_field_that_is_left_out_is_a_change() throws IOException {
    Site full = FullSite.make();
    JsonNode root = JSON.readTree(PlanFile.write(full));
    List<ObjectNode> objects = new ArrayList<>();
    objects(root, objects);
    Map<String, Boolean> told = new TreeMap<>();
    for (int k = 0; k < objects.size(); k++) {
      ObjectNode object = objects.get(k);
      for (String name : names(object)) {
        JsonNode before = object.remove(name);
        tell(full, root, told, k + "/" + name);
        object.set(name, before);
      }
    }
    assertThat(told)
        .hasSizeGreaterThan(40)
        .allSatisfy((place, isTold) -> assertThat(isTold).as(place).isTrue());
  }
}
