package slabwright.sheets.packet.crew;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import slabwright.sheets.packet.PacketContents;

/**
 * The days of the crew as one HTML file for a phone: nothing is loaded from anywhere, it fits 360
 * px, each day folds open. What is ticked or written stays on the phone's page only.
 */
final class CrewDayHtml {
  private static final String STYLE =
      String.join(
          "\n",
          "*{box-sizing:border-box}",
          "body{margin:0 auto;padding:12px;max-width:720px;font:18px/1.4 sans-serif;"
              + "color:#1d2326;background:#fff;overflow-wrap:break-word}",
          "h1{font-size:24px;margin:8px 0}",
          "h2{font-size:26px;margin:0;display:inline}",
          "h3{font-size:21px;margin:0 0 6px}",
          "p{margin:6px 0}",
          "summary{padding:14px 0;border-top:2px solid #1d2326;cursor:pointer}",
          ".row{display:flex;gap:10px;padding:10px 0;border-bottom:1px solid #a9b2b5}",
          ".row input{flex:none;width:28px;height:28px;margin:2px 0 0}",
          ".time{font-weight:bold;font-size:21px}",
          ".who{font-weight:bold;margin-left:8px}",
          ".detail{font-size:16px;color:#4a5559}",
          ".out,.alert{background:#f6e7e4;color:#8e2c1b;border-left:6px solid #b03a26;"
              + "padding:10px;margin:8px 0}",
          ".caution{background:#f1ebe0;border:2px solid #1d2326;padding:12px;margin:14px 0}",
          ".caution ol{margin:0;padding-left:26px}",
          ".stop{background:#b03a26;color:#fff;font-weight:bold;padding:10px;margin-top:10px}",
          ".stop p:first-child{font-size:21px}",
          "label.read{display:flex;gap:8px;align-items:center;margin:8px 0}",
          "label.read input{flex:1;min-width:0;font-size:18px;padding:8px;"
              + "border:1px solid #1d2326}",
          "@media print{details{break-inside:avoid}}");

  private final PacketContents job;
  private final CrewDayTexts texts;

  CrewDayHtml(PacketContents job) {
    this.job = job;
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
    out.append("<style>\n").append(STYLE).append("\n</style>\n</head>\n<body>\n");
    element(out, "h1", "", title);
    element(out, "p", "detail", job.site().note());
    element(out, "p", "", texts.persons());
    for (CrewDay day : texts.days()) {
      day(out, texts.text(day), day.number() == 1);
    }
    return out.append("</body>\n</html>\n").toString();
  }

  private void day(StringBuilder out, CrewDayText text, boolean open) {
    out.append(open ? "<details open>\n<summary>" : "<details>\n<summary>");
    element(out, "h2", "", text.title());
    element(out, "p", "detail", text.place());
    out.append("</summary>\n");
    text.alerts().forEach(a -> element(out, "p", "alert", a));
    text.rows().forEach(r -> row(out, r));
    out.append("<div class=\"caution\">\n");
    element(out, "h3", "", job.words().say("sheets.crew-day.in-this-order"));
    out.append("<ol>\n").append(each(text.cautions(), c -> "<li>" + escaped(c) + "</li>\n"));
    out.append("</ol>\n<div class=\"stop\">\n");
    text.stops().forEach(s -> element(out, "p", "", s));
    out.append("</div>\n</div>\n");
    out.append(
        each(
            text.readings(),
            r -> "<label class=\"read\">" + escaped(r) + " <input type=\"text\"></label>\n"));
    text.lookOut().forEach(l -> element(out, "p", "", l));
    out.append("</details>\n");
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
