package slabwright.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The program's own sources, read for the texts that stand in them. */
final class SourceText {
  private static final Path ROOT = Path.of("src/main/java/slabwright");
  private static final Pattern TOKEN =
      Pattern.compile(
          "\"\"\"(?<block>(?:[^\\\\]|\\\\.)*?)\"\"\"|\"(?<text>(?:[^\"\\\\\\n]|\\\\.)*)\""
              + "|'(?:[^'\\\\]|\\\\.)+'|(?<comment>/\\*.*?\\*/|//[^\\n]*)",
          Pattern.DOTALL);
  private static final Pattern SAID =
      Pattern.compile("(?:\\bMessage\\s*\\.\\s*of|\\.\\s*say)\\(\\s*\"(?<key>[^\"]+)\"");
  private static final Pattern FAULT =
      Pattern.compile("\\bthrow new \\w+\\(|\\bnew \\w+(?:Exception|Error)\\(");

  /** A key said somewhere, and with how many values. */
  record Said(String key, int values, String file) {}

  private SourceText() {}

  static List<Path> files() {
    try (Stream<Path> all = Files.walk(ROOT)) {
      return all.filter(p -> p.toString().endsWith(".java")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The room a file stands in; empty above the rooms. */
  static String room(Path file) {
    Path in = ROOT.relativize(file);
    return in.getNameCount() == 1 ? "" : in.getName(0).toString();
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Said> said(Path file) {
    String source = read(file);
    List<Said> said = new ArrayList<>();
    Matcher m = SAID.matcher(source);
    while (m.find()) {
      said.add(new Said(m.group("key"), values(source, m.end()), file.toString()));
    }
    return said;
  }

  /** How many values follow a key that ends at {@code at}, up to the closing bracket. */
  private static int values(String source, int at) {
    String rest = withoutTexts(source.substring(at));
    int depth = 0;
    int commas = 0;
    for (int i = 0; i < rest.length(); i++) {
      char c = rest.charAt(i);
      if (c == '(' || c == '{' || c == '[') {
        depth++;
      } else if (c == ')' || c == '}' || c == ']') {
        if (depth-- == 0) {
          return commas;
        }
      } else if (c == ',' && depth == 0) {
        commas++;
      }
    }
    throw new IllegalStateException("no end of a call");
  }

  private static String withoutTexts(String source) {
    return TOKEN.matcher(source).replaceAll("\"\"");
  }

  /** The texts of a file that are sentences or labels for a reader. */
  static List<String> sentences(String source) {
    List<String> found = new ArrayList<>();
    Matcher m = TOKEN.matcher(source);
    int faultUntil = 0;
    int from = 0;
    while (m.find()) {
      int fault = endOfFault(source, from, m.start());
      faultUntil = Math.max(faultUntil, fault);
      from = m.end();
      String text = m.group("block") != null ? m.group("block") : m.group("text");
      if (text != null && m.start() >= faultUntil && isSentence(text)) {
        found.add(text);
      }
    }
    return found;
  }

  /** Where an exception made between two places ends: what it says is for programmers. */
  private static int endOfFault(String source, int from, int to) {
    Matcher m = FAULT.matcher(source);
    m.region(from, to);
    int end = 0;
    while (m.find()) {
      end = Math.max(end, endOfCall(source, m.end()));
    }
    return end;
  }

  private static int endOfCall(String source, int at) {
    Matcher texts = TOKEN.matcher(source);
    int depth = 0;
    for (int i = at; i < source.length(); i++) {
      texts.region(i, source.length());
      if (texts.lookingAt()) {
        i = texts.end() - 1;
      } else if (source.charAt(i) == '(') {
        depth++;
      } else if (source.charAt(i) == ')' && depth-- == 0) {
        return i;
      }
    }
    return source.length();
  }

  private static final Pattern TWO_WORDS =
      Pattern.compile("\\p{L}{2,}[,;:.]?\\s+[(\"]?(?:[%{]?\\p{L}|[0-9])|[a-z]\\s+%?\\p{L}{2,}");
  private static final Pattern LABEL = Pattern.compile("[A-Z][a-z]{2,}[.:…!?]?");
  private static final Pattern CODE =
      Pattern.compile("</|/>|^-fx-|=\\\\?\"|\\{[a-z-]+:|^[<@#.]|\\\\\\\\[dsw]|\\(\\?");

  /**
   * The same in every language: names of the program, its fonts, papers, the system's folders and
   * keys, symbols of units, how a day is written in files, and by what a calendar file names its
   * maker.
   */
  private static final Pattern NAME =
      Pattern.compile(
          "(?:Slabwright|Slabwright Text, )?(?:DejaVu Sans.*)?| ?(?:sq ft(?:/gal)?|sq in|fl"
              + " oz)|Letter|Tabloid|ARCH [CD]|Roaming|Library|Application"
              + " Support|Delete|yyyy-MM-dd HH:mm|PRODID:-//Slabwright//Day plan//EN");

  static boolean isSentence(String text) {
    return !NAME.matcher(text).matches()
        && !CODE.matcher(text).find()
        && (TWO_WORDS.matcher(text).find() || LABEL.matcher(text).matches());
  }
}
