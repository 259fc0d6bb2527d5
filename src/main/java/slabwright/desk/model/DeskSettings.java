package slabwright.desk.model;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import slabwright.project.plan.BackgroundWriter;
import slabwright.site.job.FirmMark;
import slabwright.site.job.Party;

/**
 * What the desk remembers between sessions: look, window, folded cards, recent plans. Losing it
 * harms nothing, so a file that cannot be read counts as empty and one that cannot be written is
 * let be.
 */
public final class DeskSettings implements AutoCloseable {
  private static final int MOST_RECENT = 8;

  private final Path file;
  private final BackgroundWriter writer = new BackgroundWriter("settings", Runnable::run);
  private final Properties values = new Properties();

  public DeskSettings(Path file) {
    this.file = file;
    if (Files.isReadable(file)) {
      try (Reader in = Files.newBufferedReader(file)) {
        values.load(in);
      } catch (IOException | IllegalArgumentException e) {
        values.clear();
      }
    }
  }

  public boolean dark() {
    return Boolean.parseBoolean(values.getProperty("dark", "false"));
  }

  public void setDark(boolean on) {
    put("dark", String.valueOf(on));
  }

  /** Whether a card is folded. */
  public boolean isFolded(String card) {
    return Boolean.parseBoolean(values.getProperty("folded." + card, "false"));
  }

  public void setFolded(String card, boolean on) {
    put("folded." + card, String.valueOf(on));
  }

  /** Whether something that can be switched on is on. */
  public boolean isOn(String name) {
    return Boolean.parseBoolean(values.getProperty(name, "false"));
  }

  public void setOn(String name, boolean on) {
    put(name, String.valueOf(on));
  }

  /** The one step of several that is open; empty is none. */
  public String openStep(String otherwise) {
    return values.getProperty("open-step", otherwise);
  }

  public void setOpenStep(String card) {
    put("open-step", card);
  }

  /** The tag of the language that the person chose to read; empty is the system's. */
  public String language() {
    return values.getProperty("language", "");
  }

  public void setLanguage(String tag) {
    put("language", tag);
  }

  /** Whose papers these are: a new plan begins with it. */
  public Party contractor() {
    return new Party(
        contractor("name"),
        contractor("contact"),
        contractor("phone"),
        contractor("mail"),
        contractor("address"),
        FirmMark.of(contractor("mark"), pixels("wide"), pixels("high")));
  }

  private int pixels(String side) {
    return (int) number("contractor.mark." + side, 0);
  }

  private String contractor(String part) {
    return values.getProperty("contractor." + part, "");
  }

  public void setContractor(Party p) {
    values.setProperty("contractor.name", p.name());
    values.setProperty("contractor.contact", p.contact());
    values.setProperty("contractor.phone", p.phone());
    values.setProperty("contractor.mail", p.mail());
    values.setProperty("contractor.mark", p.mark().map(FirmMark::jpeg).orElse(""));
    values.setProperty("contractor.mark.wide", side(p.mark().map(FirmMark::width)));
    values.setProperty("contractor.mark.high", side(p.mark().map(FirmMark::height)));
    put("contractor.address", p.address());
  }

  private static String side(Optional<Integer> pixels) {
    return pixels.map(String::valueOf).orElse("0");
  }

  /** A number kept under a name. */
  public double number(String name, double otherwise) {
    try {
      return Double.parseDouble(values.getProperty(name, String.valueOf(otherwise)));
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }

  public void setNumber(String name, double value) {
    put(name, String.valueOf(value));
  }

  /** The folder that a file was last chosen in. */
  public Optional<Path> folder() {
    return Optional.of(values.getProperty("folder", "")).filter(f -> !f.isEmpty()).map(Path::of);
  }

  public void setFolder(Path folder) {
    put("folder", folder.toString());
  }

  /** Recent plans, latest first; some may be gone. */
  public List<Path> recent() {
    List<Path> found = new ArrayList<>();
    for (int i = 0; i < MOST_RECENT; i++) {
      String text = values.getProperty("recent." + i, "");
      if (!text.isEmpty()) {
        found.add(Path.of(text));
      }
    }
    return found;
  }

  public void addRecent(Path plan) {
    List<Path> next = recent();
    next.remove(plan.toAbsolutePath());
    next.add(0, plan.toAbsolutePath());
    for (int i = 0; i < MOST_RECENT; i++) {
      values.setProperty("recent." + i, i < next.size() ? next.get(i).toString() : "");
    }
    write();
  }

  private void put(String name, String value) {
    values.setProperty(name, value);
    write();
  }

  /** Soon, on a thread of its own; a newer state stands in for one that was not begun. */
  private void write() {
    Properties now = new Properties();
    now.putAll(values);
    // Settings are a comfort; work goes on where they can't be written.
    writer.write(file, () -> store(now), n -> {}, why -> {});
  }

  private Properties store(Properties now) throws IOException {
    Files.createDirectories(file.toAbsolutePath().getParent());
    try (Writer out = Files.newBufferedWriter(file)) {
      now.store(out, null);
    }
    return now;
  }

  /** Waits until the last state is on disk. */
  @Override
  public void close() {
    writer.close();
  }
}
