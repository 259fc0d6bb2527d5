package slabwright.project.export;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.page.TimeFormat;
import slabwright.site.Site;
import slabwright.units.PartFaults;
import slabwright.words.Words;

/**
 * A plain page that says which packet is for whom; it needs no network.
 *
 * @param faults pages and packets that are missing, told before anything else
 */
record PacketIndex(
    Site site,
    LocalDate date,
    List<Entry> entries,
    List<PartFaults.PartFault> faults,
    Words words) {
  /**
   * One packet, the file it is in, and how many pages that has.
   *
   * @param phone the file of its days for a phone
   * @param words of the language it is in
   */
  record Entry(Packet packet, String file, int pages, Optional<String> phone, Words words) {}

  String html() {
    StringBuilder out = new StringBuilder();
    String title = escaped(words.say("project.packet-index.title", site.name()));
    out.append("<!DOCTYPE html>\n<html lang=\"")
        .append(words.locale().toLanguageTag())
        .append("\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
        .append(title)
        .append("</title>\n<style>body{font:1rem/1.5 sans-serif;max-width:40rem;margin:2rem auto;")
        .append("padding:0 1rem}li{margin:1rem 0}</style>\n</head>\n<body>\n<h1>")
        .append(title)
        .append("</h1>\n<p>")
        .append(escaped(issue()))
        .append("</p>\n")
        .append(missing())
        .append("<ul>\n");
    entries.forEach(e -> out.append(line(e)));
    return out.append("</ul>\n</body>\n</html>\n").toString();
  }

  /** What is missing, in a red frame; nothing when nothing is. */
  private String missing() {
    if (faults.isEmpty()) {
      return "";
    }
    boolean safety = faults.stream().anyMatch(PartFaults.PartFault::safety);
    String head =
        safety
            ? words.say("project.packet-index.safety-missing")
            : words.say("project.packet-index.missing");
    StringBuilder out = new StringBuilder(120);
    out.append(
            "<div role=\"alert\" style=\"border:3px solid #b00020;padding:0 1rem\">\n<p><strong>")
        .append(escaped(head))
        .append("</strong></p>\n<ul>\n");
    faults.forEach(
        f -> out.append("<li>").append(escaped(words.say(f.sentence()))).append("</li>\n"));
    return out.append("</ul>\n</div>\n").toString();
  }

  private String issue() {
    String day = new TimeFormat(words).date(date);
    int release = site.releaseNumber();
    String issue =
        release == 0
            ? words.say("project.packet-index.draft", day)
            : words.say("project.packet-index.release", release, day);
    return site.note().isBlank() ? issue : site.note() + " · " + issue;
  }

  private static String line(Entry e) {
    Words said = e.words();
    return "<li lang=\""
        + said.locale().toLanguageTag()
        + "\"><a href=\""
        + e.file()
        + "\">"
        + escaped(said.say(e.packet().word()))
        + "</a>, "
        + escaped(said.say("project.packet-index.pages", e.pages()))
        + "<br>"
        + escaped(said.say(e.packet().reader()))
        + e.phone().map(file -> phone(file, said)).orElse("")
        + "</li>\n";
  }

  private static String phone(String file, Words said) {
    return "<br><a href=\""
        + file
        + "\">"
        + escaped(said.say("project.packet-index.phone"))
        + "</a>";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
