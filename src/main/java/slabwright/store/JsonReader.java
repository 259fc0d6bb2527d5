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
import slabwright.units.Message;
import slabwright.units.Refusal;

/** Reads JSON (comments allowed) into values that know their place. Depth is bounded. */
final class JsonReader {
  private static final int DEEPEST = 60;
  private static final int LONGEST_NUMBER = 60;
  private static final int LONGEST_NAME = 40;

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
        faults.add(Refusal.of(Message.of("store.json-reader.the-plan-file-is-empty")));
        return null;
      }
      JsonValue value = reader.value("");
      if (parser.nextToken() != null) {
        faults.add(
            Refusal.of(
                Message.of(
                    "store.json-reader.there-is-more-text-after",
                    parser.currentTokenLocation().getLineNr())));
      }
      return value;
    } catch (JsonProcessingException e) {
      faults.add(Refusal.of(notJson(firstLine(e.getOriginalMessage()), e.getLocation())));
      return null;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Message notJson(String fault, JsonLocation at) {
    return at == null
        ? Message.of("store.json-reader.the-plan-is-not-json", fault)
        : Message.of("store.json-reader.not-json-at", at.getLineNr(), at.getColumnNr(), fault);
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("unreadable").replaceAll("\\s*\\(.*$", "");
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
      JsonValue value = value(path.isEmpty() ? inPath(name) : path + "." + inPath(name));
      if (fields.put(name, value) != null) {
        faults.add(
            Refusal.at(
                value.place().path(),
                Message.of("store.json-reader.is-given-twice-keep-one", value.place().said())));
      }
    }
    return new JsonValue.Obj(fields, place);
  }

  /** The name as it stands in a path: those we know are short, and any other is cut. */
  private static String inPath(String name) {
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME) + "…";
  }

  private JsonValue array(String path, JsonValue.Place place) throws IOException {
    List<JsonValue> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(path + "[" + items.size() + "]"));
    }
    return new JsonValue.Arr(items, place);
  }
}
