package slabwright.sheets.packet.crew;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import slabwright.sheets.packet.PacketContents;
import slabwright.units.PartFaults;

/**
 * The days of the crew as one HTML file for a phone: nothing is loaded from anywhere, it fits 360
 * px, each day is a section. When to stop stands before what is done: nobody scrolls for it. What
 * is ticked or written stays on the phone's page only.
 */
final class CrewDayHtml {
  private static final String STYLE = "/slabwright/sheets/packet/crew/days.css";

  private final PacketContents job;
  private final CrewDayTexts texts;
  private final List<PartFaults.PartFault> missing;

  CrewDayHtml(PacketContents job, List<PartFaults.PartFault> missing) {
    this.job = job;
    this.missing = List.copyOf(missing);
    this.texts = new CrewDayTexts(job);
  }

  String write() {
    StringBuilder out = new StringBuilder();
    String title = job.words().say("sheets.crew-day.html-title", job.site().name());
    out.append("<!DOCTYPE html>\n<html lang=\"")
        .append(escaped(job.words().locale().toLanguageTag()))
        .append("\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    element(out, "title", "", title);
    out.append("<style>\n").append(style()).append("</style>\n</head>\n<body>\n");
    element(out, "h1", "", title);
    missing.forEach(m -> element(out, "p", "alert", job.words().say(m.sentence())));
    job.unread().ifPresent(u -> element(out, "p", "detail", u));
    element(out, "p", "detail", job.site().note());
    element(out, "p", "", texts.persons());
    List<CrewDayText> days = texts.all();
    out.append("<nav>\n");
    for (int i = 0; i < days.size(); i++) {
      out.append("<a href=\"#day-").append(i + 1).append("\">");
      out.append(escaped(days.get(i).title())).append("</a>\n");
    }
    out.append("</nav>\n");
    for (int i = 0; i < days.size(); i++) {
      day(out, days.get(i), i + 1);
    }
    return out.append("</body>\n</html>\n").toString();
  }

  private static String style() {
    try (InputStream in = CrewDayHtml.class.getResourceAsStream(STYLE)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void day(StringBuilder out, CrewDayText text, int number) {
    out.append("<section id=\"day-").append(number).append("\">\n");
    element(out, "h2", "", text.title());
    element(out, "p", "detail", text.place());
    text.alerts().forEach(a -> element(out, "p", "alert", a));
    out.append("<div class=\"caution\">\n");
    if (!text.cautions().isEmpty()) {
      element(out, "h3", "", job.words().say("sheets.crew-day.in-this-order"));
    }
    out.append("<ol>\n").append(each(text.cautions(), c -> "<li>" + escaped(c) + "</li>\n"));
    out.append("</ol>\n<div class=\"stop\">\n");
    text.stops().forEach(s -> element(out, "p", "", s));
    out.append("</div>\n</div>\n");
    text.rows().forEach(r -> row(out, r));
    out.append(
        each(
            text.readings(),
            r -> "<label class=\"read\">" + escaped(r) + " <input type=\"text\"></label>\n"));
    text.lookOut().forEach(l -> element(out, "p", "", l));
    out.append("</section>\n");
  }

  private static void row(StringBuilder out, CrewDayText.Row row) {
    out.append(row.out() ? "<div class=\"row out\">" : "<label class=\"row\">");
    out.append(row.out() ? "" : "<input type=\"checkbox\">");
    out.append("<span><span class=\"time\">").append(escaped(row.time()));
    out.append("</span><span class=\"who\">").append(escaped(row.who())).append("</span><br>");
    out.append(escaped(row.what()));
    row.details()
        .forEach(
            d -> out.append("<br><span class=\"detail\">").append(escaped(d)).append("</span>"));
    out.append("</span>").append(row.out() ? "</div>\n" : "</label>\n");
  }

  private static String each(List<String> all, Function<String, String> html) {
    return all.stream().map(html).collect(Collectors.joining());
  }

  private static void element(StringBuilder out, String tag, String kind, String words) {
    if (!words.isEmpty()) {
      String of = kind.isEmpty() ? "" : " class=\"" + kind + "\"";
      out.append("<").append(tag).append(of).append(">").append(escaped(words));
      out.append("</").append(tag).append(">\n");
    }
  }

  /** Safe in text and in attributes. */
  static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
