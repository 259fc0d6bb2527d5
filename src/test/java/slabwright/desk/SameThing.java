package slabwright.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import slabwright.site.Doorway;
import slabwright.site.Form;
import slabwright.units.Length;

/**
 * Whether two things say the same of the world: ids and how a length was written do not count, and
 * a rectangle turned by a quarter is the same with its sides exchanged.
 */
final class SameThing {
  /** Far below what any tape tells, above what adding up in another order changes; mm or mm². */
  private static final double NEAR = 1e-3;

  /** What a passage names by ids, which a redrawn plan makes anew. */
  private static final Set<String> BY_ID = Set.of("area", "machine", "doorway");

  private SameThing() {}

  /** What differs, a line each; empty when nothing does. */
  static List<String> differences(Object one, Object other) {
    Map<String, Object> a = new LinkedHashMap<>();
    Map<String, Object> b = new LinkedHashMap<>();
    collect("", one, a);
    collect("", other, b);
    TreeSet<String> paths = new TreeSet<>(a.keySet());
    paths.addAll(b.keySet());
    return paths.stream()
        .filter(p -> !same(a.get(p), b.get(p)))
        .map(p -> p + ": " + a.get(p) + " and " + b.get(p))
        .toList();
  }

  static Object json(String text) {
    try {
      return new ObjectMapper().readValue(text, Map.class);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static boolean same(Object a, Object b) {
    return (a instanceof Number x && b instanceof Number y)
        ? near(x.doubleValue(), y.doubleValue())
        : Objects.equals(a, b);
  }

  /** One step of the last printed digit is near; a large number's own grain may widen that step. */
  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= NEAR + Math.ulp(Math.max(Math.abs(a), Math.abs(b)));
  }

  private static void collect(String path, Object v, Map<String, Object> out) {
    if (v instanceof Length l) {
      out.put(path, l.mm());
    } else if (v instanceof Optional<?> o) {
      collect(path, o.orElse(null), out);
    } else if (v instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        collect(path + "[" + i + "]", list.get(i), out);
      }
    } else if (v instanceof Map<?, ?> map) {
      map.forEach((k, x) -> part(path, String.valueOf(k), x, out));
    } else if (v instanceof Doorway.LeadsTo) {
      // names what it leads to by ids, which a redrawn plan makes anew
      out.put(path, "leads to another doorway");
    } else if (v instanceof Record r) {
      out.put(path, r.getClass().getSimpleName());
      record(path, usual(r), out);
    } else {
      out.put(path, v);
    }
  }

  private static void part(String path, String name, Object v, Map<String, Object> out) {
    boolean id = name.equals("id") || (path.contains(".passages[") && BY_ID.contains(name));
    if (!id) {
      collect(path + "." + name, v, out);
    }
  }

  private static Record usual(Record r) {
    boolean across =
        r instanceof Form.Rectangle f && Math.abs(Math.abs(f.turn()) % 180 - 90) < 1e-9;
    if (across) {
      Form.Rectangle f = (Form.Rectangle) r;
      Length longer = f.width();
      return new Form.Rectangle(f.middle(), longer, f.length(), f.corner(), 0);
    }
    return r;
  }

  private static void record(String path, Record r, Map<String, Object> out) {
    for (RecordComponent c : r.getClass().getRecordComponents()) {
      part(path, c.getName(), value(r, c), out);
    }
  }

  private static Object value(Record r, RecordComponent c) {
    try {
      c.getAccessor().setAccessible(true);
      return c.getAccessor().invoke(r);
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }
}
