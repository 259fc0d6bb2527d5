package slabwright.units;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What people call the colours of one set, so that no two of them are called the same: the name
 * that a person gave, else the nearest plain word, the second of which is *lighter* or *darker*
 * than the first.
 */
public final class ColourNaming {
  private ColourNaming() {}

  /** One colour by itself. */
  public static Message of(String hex) {
    return ColourName.nearest(hex).word();
  }

  /**
   * Each colour's name.
   *
   * @param colours of one set, each as a number sign and six hexadecimal digits, in laying order
   * @param own names that a person gave, by colour; a blank one counts as none
   */
  public static Map<String, Message> of(List<String> colours, Map<String, String> own) {
    Map<String, Message> names = new LinkedHashMap<>();
    Set<Message> taken = new HashSet<>();
    for (String c : colours) {
      String name = own.getOrDefault(c, "");
      if (!name.isBlank()) {
        Message given = Message.of("units.colour-name.own", name);
        names.put(c, given);
        taken.add(given);
      }
    }
    Map<Message, String> first = new LinkedHashMap<>();
    for (String c : colours) {
      if (!names.containsKey(c)) {
        Message name = free(c, first, taken);
        names.put(c, name);
        taken.add(name);
      }
    }
    Map<String, Message> ordered = new LinkedHashMap<>();
    colours.forEach(c -> ordered.put(c, names.get(c)));
    return ordered;
  }

  /** The first name that nobody has: plain, compared with the first of the name, then numbered. */
  private static Message free(String colour, Map<Message, String> first, Set<Message> taken) {
    Message plain = of(colour);
    String before = first.putIfAbsent(plain, colour);
    List<Message> tries = new ArrayList<>();
    tries.add(plain);
    if (before != null) {
      tries.add(
          CieLab.ofHex(colour).l() >= CieLab.ofHex(before).l()
              ? Message.of("units.colour-name.lighter", plain)
              : Message.of("units.colour-name.darker", plain));
    }
    for (int n = 2; n <= taken.size() + 2; n++) {
      tries.add(Message.of("units.colour-name.numbered", plain, n));
    }
    return tries.stream().filter(t -> !taken.contains(t)).findFirst().orElseThrow();
  }
}
