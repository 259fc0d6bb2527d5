package slabwright.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slabwright.site.Refusal;

/** Reads JSON (comments allowed) into values that know their place. Depth is bounded. */
final class JsonReader {
  private static final int DEEPEST = 60;
  private static final int LONGEST_NUMBER = 60;

  private final JsonParser parser;
  private final List<Refusal> faults;

  private JsonReader(JsonParser parser, List<Refusal> faults) {
    this.parser = parser;
    this.faults = faults;
  }

  /** The value, or null after a fault that leaves none. */
  static JsonValue read(String text, List<Refusal> faults) {
    JsonFactory factory =
        JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .streamReadConstraints(
                StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(LONGEST_NUMBER)
                    .build())
            .build();
    try (JsonParser parser = factory.createParser(text)) {
      JsonReader reader = new JsonReader(parser, faults);
      JsonToken first = parser.nextToken();
      if (first == null) {
        faults.add(Refusal.of("The plan file is empty; write a site plan into it."));
        return null;
      }
      JsonValue value = reader.value("");
      if (parser.nextToken() != null) {
        faults.add(reader.fault("there is more text after the end of the plan; remove it"));
      }
      return value;
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      String where =
          at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
      faults.add(
          Refusal.of(
              "The plan is not JSON"
                  + where
                  + ": "
                  + firstLine(e.getOriginalMessage())
                  + "; correct it there."));
      return null;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("unreadable").replaceAll("\\s*\\(.*$", "");
  }

  private Refusal fault(String sentence) {
    return Refusal.of("Line " + parser.currentTokenLocation().getLineNr() + ": " + sentence + ".");
  }

  private JsonValue.Place place(String path) {
    JsonLocation at = parser.currentTokenLocation();
    return new JsonValue.Place(path, at.getLineNr(), at.getColumnNr());
  }

  private JsonValue value(String path) throws IOException {
    JsonValue.Place place = place(path);
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(path, place);
      case START_ARRAY -> array(path, place);
      case VALUE_STRING -> new JsonValue.Text(parser.getText(), place);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
          new JsonValue.Num(parser.getDecimalValue(), place);
      case VALUE_TRUE, VALUE_FALSE -> new JsonValue.Flag(parser.getBooleanValue(), place);
      default -> new JsonValue.Nothing(place);
    };
  }

  private JsonValue object(String path, JsonValue.Place place) throws IOException {
    Map<String, JsonValue> fields = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      parser.nextToken();
      JsonValue value = value(path.isEmpty() ? name : path + "." + name);
      if (fields.put(name, value) != null) {
        faults.add(Refusal.at(value.place().path(), value.place() + " is given twice; keep one."));
      }
    }
    return new JsonValue.Obj(fields, place);
  }

  private JsonValue array(String path, JsonValue.Place place) throws IOException {
    List<JsonValue> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(path + "[" + items.size() + "]"));
    }
    return new JsonValue.Arr(items, place);
  }
}
