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
import slabwright.project.RefusedInput;
import slabwright.project.SiteResult;
import slabwright.project.export.SheetRequest;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetFiles;
import slabwright.site.Site;
import slabwright.store.AtomicFile;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** {@code sheets PLAN}: the printed sheets as one PDF. */
@Command(name = "sheets", mixinStandardHelpOptions = true)
final class SheetsCommand implements Callable<Integer> {
  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @Option(names = "--paper", paramLabel = "NAME")
  private String paper;

  @Option(names = "--out", required = true, paramLabel = "FILE.pdf")
  private Path out;

  @Spec private CommandSpec spec;

  private final Words words;

  SheetsCommand(Words words) {
    this.words = words;
  }

  @Override
  public Integer call() throws RefusedInput, IOException {
    Site site = PlanLoader.read(plan);
    PaperSize chosen = paper(paper, site);
    refuseForeign();
    SiteResult result = PlanLoader.compute(site, plan);
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    List<PrintedPage> pages = SheetRequest.pages(result, chosen, words, today);
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    SheetFiles.pdf(pages, site.name(), today, pdf);
    AtomicFile.write(out, pdf.toByteArray());
    spec.commandLine()
        .getOut()
        .println(words.say("cli.sheets.written", pages.size(), chosen.word(), out.toString()));
    return 0;
  }

  /** A PDF may be made anew; anything else in its place is not ours to replace. */
  private void refuseForeign() throws RefusedInput, IOException {
    if (Files.isDirectory(out) || (Files.exists(out) && !startsLikePdf(out))) {
      throw RefusedInput.of(Message.of("cli.sheets.not-a-pdf", out.toString()));
    }
  }

  private static boolean startsLikePdf(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return Arrays.equals(in.readNBytes(5), new byte[] {'%', 'P', 'D', 'F', '-'});
    }
  }

  static PaperSize paper(String name, Site site) throws RefusedInput {
    return paper(name, site.units());
  }

  /** The paper of a name; without one the usual paper of the units. */
  static PaperSize paper(String name, UnitSystem units) throws RefusedInput {
    if (name == null) {
      return units == UnitSystem.METRIC ? PaperSize.A3 : PaperSize.TABLOID;
    }
    Optional<PaperSize> found = PaperSize.named(name);
    if (found.isEmpty()) {
      String all =
          Arrays.stream(PaperSize.values()).map(PaperSize::word).collect(Collectors.joining(", "));
      throw RefusedInput.of(Message.of("cli.sheets.no-paper", name, all));
    }
    return found.get();
  }
}
