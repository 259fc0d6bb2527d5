package slabwright.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.sheets.Page;
import slabwright.sheets.Paper;
import slabwright.sheets.SheetFiles;
import slabwright.sheets.SheetOptions;
import slabwright.sheets.SheetSet;
import slabwright.sheets.SiteResult;
import slabwright.site.Site;
import slabwright.store.AtomicFile;
import slabwright.units.UnitSystem;

/** {@code sheets PLAN}: the printed sheets as one PDF. */
@Command(
    name = "sheets",
    description = "The printed sheets of a plan as one PDF.",
    mixinStandardHelpOptions = true)
final class SheetsCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN", description = "The plan, a .site.json file.")
  private Path plan;

  @Option(
      names = "--paper",
      paramLabel = "NAME",
      description =
          "Letter, Tabloid, ARCH C, ARCH D, A4, A3 or A1; default Tabloid for feet, A3 for metres.")
  private String paper;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE.pdf",
      description = "The PDF to write.")
  private Path out;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws CliRefusal, IOException {
    Site site = Plans.read(plan);
    Paper chosen = paper(paper, site);
    refuseForeign();
    SiteResult result = Plans.compute(site, plan);
    List<Page> pages = pages(result, chosen);
    AtomicFile.write(out, pdf(site, pages));
    spec.commandLine().getOut().println(pages.size() + " pages on " + chosen.word() + ": " + out);
    return 0;
  }

  static List<Page> pages(SiteResult result, Paper paper) {
    SheetOptions options = new SheetOptions(paper, LocalDate.now(ZoneId.systemDefault()));
    return SheetSet.of(result.site(), result.areas(), Optional.of(result.work()), options);
  }

  /** A PDF may be made anew; anything else in its place is not ours to replace. */
  private void refuseForeign() throws CliRefusal, IOException {
    if (Files.isDirectory(out) || (Files.exists(out) && !startsLikePdf(out))) {
      throw CliRefusal.of(out + " is there and is not a PDF; give another --out.");
    }
  }

  private static boolean startsLikePdf(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return Arrays.equals(in.readNBytes(5), new byte[] {'%', 'P', 'D', 'F', '-'});
    }
  }

  static Paper paper(String name, Site site) throws CliRefusal {
    return paper(name, site.units());
  }

  /** The paper of a name; without one the usual paper of the units. */
  static Paper paper(String name, UnitSystem units) throws CliRefusal {
    if (name == null) {
      return units == UnitSystem.METRIC ? Paper.A3 : Paper.TABLOID;
    }
    Optional<Paper> found = Paper.named(name);
    if (found.isEmpty()) {
      String all = Arrays.stream(Paper.values()).map(Paper::word).collect(Collectors.joining(", "));
      throw CliRefusal.of("There is no paper \"" + name + "\"; choose one of " + all + ".");
    }
    return found.get();
  }

  static byte[] pdf(Site site, List<Page> pages) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    SheetFiles.pdf(pages, site.name(), LocalDate.now(ZoneId.systemDefault()), bytes);
    return bytes.toByteArray();
  }
}
