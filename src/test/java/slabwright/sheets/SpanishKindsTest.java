package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.drawing.TextBox;
import slabwright.sheets.csv.TakeoffCsv;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.site.EdgeClass;
import slabwright.site.MarkType;
import slabwright.units.Message;
import slabwright.words.Words;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopTool;
import slabwright.work.step.ToolKind;

/** What a thing is, is told in the reader's language; only names stay as their owner wrote them. */
class SpanishKindsTest {
  private static final Words SPANISH = Words.of(Locale.forLanguageTag("es"));

  /** The English kinds that are no Spanish word too. */
  private static Set<String> kinds() {
    Set<String> kinds = new TreeSet<>();
    List<Message> labels = new ArrayList<>();
    Stream.of(MarkType.values()).map(MarkType::label).forEach(labels::add);
    Stream.of(EdgeClass.values()).map(EdgeClass::label).forEach(labels::add);
    Stream.of(ToolKind.values()).map(ToolKind::label).forEach(labels::add);
    for (Message label : labels) {
      String word = Words.english().say(label);
      if (!SPANISH.say(label).equals(word)) {
        kinds.add(word);
      }
    }
    return kinds;
  }

  /** Names and notes of the plan and names of the example book, longest first. */
  private static List<String> names(String plan) throws IOException {
    List<String> names = new ArrayList<>();
    Pattern value = Pattern.compile("\"(?!kind|tool)\\w+\":\\s*\"([^\"]+)\"");
    value
        .matcher(Files.readString(Path.of("sample-plans", plan + ".site.json")))
        .results()
        .forEach(m -> names.add(m.group(1)));
    BookSamples.book().tools().stream()
        .map(ShopTool::name)
        .filter(n -> !kinds().contains(n))
        .forEach(names::add);
    BookSamples.book().products().forEach(p -> names.add(p.label()));
    names.sort(Comparator.comparingInt(String::length).reversed());
    return names;
  }

  private static List<String> english(List<String> texts, List<String> names) {
    List<Pattern> kinds =
        kinds().stream()
            .map(k -> Pattern.compile("\\b" + k + "\\b", Pattern.CASE_INSENSITIVE))
            .toList();
    List<String> found = new ArrayList<>();
    for (String text : texts) {
      String rest = text.replaceAll("[\\s\u00a0]+", " ");
      for (String name : names) {
        rest = rest.replaceAll("(?i)" + Pattern.quote(name), "");
      }
      String said = rest;
      kinds.forEach(
          k -> k.matcher(said).results().forEach(m -> found.add(around(said, m.start()))));
    }
    return found;
  }

  private static String around(String text, int at) {
    return text.substring(Math.max(0, at - 30), Math.min(text.length(), at + 30));
  }

  private static void hold(String name, PaperSize paper) throws IOException {
    SheetSamples sample = SheetSamples.sample(name);
    PacketContents job = sample.job(paper, SPANISH);
    List<String> texts = new ArrayList<>();
    for (Packet packet : Packet.values()) {
      for (PrintedPage page : sample.packet(packet, paper, SPANISH).pages()) {
        List<String> words = TextBox.of(page.drawing()).stream().map(TextBox::words).toList();
        texts.add(String.join(" ", words));
      }
    }
    texts.add(
        CrewPacket.html(job).replaceAll("(?s)<style>.*</style>", "").replaceAll("<[^>]*>", " "));
    texts.add(TakeoffCsv.write(job.areas(), job.site().units(), SPANISH));
    assertThat(texts).hasSizeGreaterThan(12);
    assertThat(english(texts, names(name))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"tram-hall", "bike-workshop"})
  void no_spanish_packet_calls_a_kind_by_its_english_word(String sample) throws IOException {
    hold(sample, PaperSize.LETTER);
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(strings = {"tram-hall", "bike-workshop", "depot-floor"})
  void nor_does_one_on_a4(String sample) throws IOException {
    hold(sample, PaperSize.A4);
  }
}
