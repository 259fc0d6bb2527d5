package slabwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slabwright.units.Result;

/** The published schema and the reader must agree; the validator is an independent library. */
class SchemaTest {
  private static final Path SCHEMA = Path.of("docs/site.schema.json");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static JsonSchema schema() throws IOException {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(Files.readString(SCHEMA));
  }

  static List<Path> samples() throws IOException {
    return SamplePlansTest.samples();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void a_sample_is_valid_under_the_schema(Path plan) throws IOException {
    assertThat(schema().validate(MAPPER.readTree(Files.readString(plan)))).isEmpty();
  }

  @Test
  void what_we_write_with_every_field_in_use_is_valid_under_the_schema() throws IOException {
    String text = PlanFile.write(FullSite.make());
    assertThat(schema().validate(MAPPER.readTree(text))).isEmpty();
    assertThat(PlanFile.parse(text)).isEqualTo(Result.ok(FullSite.make()));
  }

  @Test
  void every_field_of_the_schema_is_described() throws IOException {
    List<String> bare = new ArrayList<>();
    walk(MAPPER.readTree(Files.readString(SCHEMA)), "", bare);
    assertThat(bare).isEmpty();
  }

  private static void walk(JsonNode node, String path, List<String> bare) {
    JsonNode properties = node.path("properties");
    properties
        .properties()
        .forEach(
            e -> {
              if (e.getValue().path("description").asText().length() < 8) {
                bare.add(path + "/" + e.getKey());
              }
            });
    node.properties().forEach(e -> walk(e.getValue(), path + "/" + e.getKey(), bare));
    node.elements().forEachRemaining(e -> walk(e, path, bare));
  }

  @Test
  void every_field_of_the_schema_is_written_by_a_full_site() throws IOException {
    Set<String> named = new TreeSet<>();
    names(MAPPER.readTree(Files.readString(SCHEMA)), named);
    Set<String> written = new TreeSet<>();
    fields(MAPPER.readTree(PlanFile.write(FullSite.make())), written);
    written.add("$schema");
    assertThat(written).containsAll(named);
  }

  private static void names(JsonNode schema, Set<String> out) {
    schema.path("properties").fieldNames().forEachRemaining(out::add);
    schema.forEach(n -> names(n, out));
  }

  private static void fields(JsonNode plan, Set<String> out) {
    plan.fieldNames().forEachRemaining(out::add);
    plan.forEach(n -> fields(n, out));
  }
}
