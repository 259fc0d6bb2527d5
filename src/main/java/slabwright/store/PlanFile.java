package slabwright.store;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import slabwright.site.Refusal;
import slabwright.site.Site;
import slabwright.site.rules.SiteValidator;

/**
 * The plan file, {@code *.site.json}: versioned JSON in UTF-8; {@code docs/site.schema.json}
 * describes every field. Reading finds every fault at once; saving is atomic.
 */
public final class PlanFile {
  /** A plan file is text written by hand or by the desk; a larger one is something else. */
  private static final long LARGEST_BYTES = 64L << 20;

  private PlanFile() {}

  /** A plan that was read, or every reason why not. */
  public sealed interface Reading {
    /** A plan without fault. */
    record Good(Site site) implements Reading {}

    /** What is wrong, at least one. */
    record Bad(List<Refusal> faults) implements Reading {
      public Bad {
        faults = List.copyOf(faults);
      }
    }
  }

  /** Reads a plan from disk, with its graphics checked to be there and inside the plan's folder. */
  public static Reading read(Path file) {
    Reading reading = text(file);
    if (!(reading instanceof Reading.Good good)) {
      return reading;
    }
    List<Refusal> missing = GraphicFiles.check(good.site(), file);
    return missing.isEmpty() ? reading : new Reading.Bad(missing);
  }

  private static Reading text(Path file) {
    if (!Files.isRegularFile(file)) {
      return bad("There is no plan file " + file + "; check the path.");
    }
    try {
      if (Files.size(file) > LARGEST_BYTES) {
        return bad(file + " is larger than 64 MB and cannot be a site plan; check the path.");
      }
      return parse(Files.readString(file));
    } catch (MalformedInputException e) {
      return bad(file + " is not text in UTF-8; save it as UTF-8 or check the path.");
    } catch (IOException e) {
      return bad(file + " cannot be read: " + e.getMessage() + "; check its permissions.");
    }
  }

  private static Reading bad(String sentence) {
    return new Reading.Bad(List.of(Refusal.of(sentence)));
  }

  /** Reads a plan from text; graphics are not looked for. */
  public static Reading parse(String text) {
    List<Refusal> faults = new ArrayList<>();
    JsonValue json = JsonReader.read(text, faults);
    if (json == null || !faults.isEmpty()) {
      return new Reading.Bad(faults);
    }
    if (!(json instanceof JsonValue.Obj object)) {
      return new Reading.Bad(List.of(FieldReader.wrong(json, "an object, a site plan")));
    }
    return PlanUpgrader.refusal(object)
        .map(fault -> (Reading) new Reading.Bad(List.of(fault)))
        .orElseGet(() -> decode(PlanUpgrader.toCurrent(object), faults));
  }

  private static Reading decode(JsonValue.Obj object, List<Refusal> faults) {
    Site site = SiteCodec.read(new FieldReader(object, faults));
    if (faults.isEmpty()) {
      faults.addAll(SiteValidator.validate(site));
    }
    return faults.isEmpty() ? new Reading.Good(site) : new Reading.Bad(faults);
  }

  /** The plan as text, the same for equal sites. */
  public static String write(Site site) {
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    try {
      return new ObjectMapper().writer(printer).writeValueAsString(SiteCodec.write(site)) + "\n";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Saves atomically: after any failure the old file is as it was.
   *
   * @throws IOException when the folder cannot be written to
   */
  public static void save(Site site, Path file) throws IOException {
    AtomicFile.write(file, write(site).getBytes(StandardCharsets.UTF_8));
  }
}
