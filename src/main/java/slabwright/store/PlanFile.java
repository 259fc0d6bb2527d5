package slabwright.store;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.site.Site;
import slabwright.site.rules.SiteValidator;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/**
 * The plan file, {@code *.site.json}: versioned JSON in UTF-8; {@code docs/site.schema.json}
 * describes every field. Reading finds every fault at once; saving is atomic.
 */
public final class PlanFile {
  /** A plan file is text written by hand or by the desk; a larger one is something else. */
  private static final long LARGEST_BYTES = 64L << 20;

  private PlanFile() {}

  /** Reads a plan from disk, with its graphics checked to be there and inside the plan's folder. */
  public static Result<Site> read(Path file) {
    return text(file).flatMap(site -> siteOr(GraphicFiles.check(site, file), site));
  }

  private static Result<Site> siteOr(List<Refusal> faults, Site site) {
    return faults.isEmpty() ? Result.ok(site) : Result.refused(faults);
  }

  private static Result<Site> text(Path file) {
    if (!Files.isRegularFile(file)) {
      return Result.refused(Message.of("store.plan-file.there-is-no-plan-file", file.toString()));
    }
    try {
      if (Files.size(file) > LARGEST_BYTES) {
        return Result.refused(Message.of("store.plan-file.is-larger-than-mb-and", file.toString()));
      }
      return parse(Files.readString(file));
    } catch (MalformedInputException e) {
      return Result.refused(Message.of("store.plan-file.is-not-text-in-utf", file.toString()));
    } catch (IOException e) {
      return Result.refused(
          Message.of(
              "store.plan-file.cannot-be-read-check-its",
              file.toString(),
              String.valueOf(e.getMessage())));
    }
  }

  /** Reads a plan from text; graphics are not looked for. */
  public static Result<Site> parse(String text) {
    List<Refusal> faults = new ArrayList<>();
    JsonValue json = JsonReader.read(text, faults);
    if (json == null || !faults.isEmpty()) {
      return Result.refused(faults);
    }
    if (!(json instanceof JsonValue.Obj object)) {
      return Result.refused(
          List.of(FieldReader.wrong(json, Message.of("store.plan-file.an-object-a-site-plan"))));
    }
    return PlanUpgrader.refusal(object)
        .map(fault -> Result.<Site>refused(List.of(fault)))
        .orElseGet(() -> decode(PlanUpgrader.toCurrent(object), faults));
  }

  private static Result<Site> decode(JsonValue.Obj object, List<Refusal> faults) {
    Site site = SiteCodec.read(new FieldReader(object, faults));
    if (faults.isEmpty()) {
      faults.addAll(SiteValidator.validate(site));
    }
    return siteOr(faults, site);
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
   * What tells a file's text from any other; empty when there is no file. It looks at the text
   * alone, as clocks go wrong.
   *
   * @throws IOException when it can't be read
   */
  public static Optional<String> stamp(Path file) throws IOException {
    try {
      return Optional.of(GraphicFiles.hash(file));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  /** The stamp of the file that a site is saved as. */
  public static String stamp(Site site) {
    return GraphicFiles.hash(write(site).getBytes(StandardCharsets.UTF_8));
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
