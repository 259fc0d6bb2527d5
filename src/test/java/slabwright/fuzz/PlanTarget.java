package slabwright.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import slabwright.project.SiteResult;
import slabwright.project.export.JobFiles;
import slabwright.project.export.OutFolder;
import slabwright.sheets.page.PaperSize;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.store.FullSite;
import slabwright.store.PlanFile;
import slabwright.units.Message;
import slabwright.units.PartFaults;
import slabwright.units.Refusal;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.book.BookSamples;

/** A plan as text; one that is taken is written and read again, or all its papers are made. */
final class PlanTarget implements FuzzTarget {
  private static final Path FOLDER = Path.of("sample-plans");

  private final boolean papers;
  private final List<String> plans;

  PlanTarget(boolean papers) throws IOException {
    this.papers = papers;
    this.plans = papers ? small() : whole();
  }

  private static List<String> whole() throws IOException {
    return List.of(
        PlanFile.write(FullSite.make()),
        Files.readString(FOLDER.resolve("tram-hall.site.json")),
        Files.readString(FOLDER.resolve("bike-workshop.site.json")));
  }

  /** Each floor area of them by itself and without its graphics: quick to work out. */
  private static List<String> small() throws IOException {
    List<String> all = new ArrayList<>();
    for (String plan : whole()) {
      Site site = PlanFile.parse(plan).orThrow();
      for (FloorArea a : site.areas()) {
        all.add(PlanFile.write(site.withAreas(List.of(a.withInlays(List.of())))));
      }
    }
    return all;
  }

  @Override
  public byte[] input(Random random) throws IOException {
    String plan = plans.get(random.nextInt(plans.size()));
    String spoilt =
        random.nextInt(3) == 0 && !papers
            ? new TextMutator(random, List.of()).spoil(plan)
            : new JsonMutator(random).spoil(plan);
    return spoilt.getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public List<Message> read(byte[] input) throws IOException {
    Result<Site> read = PlanFile.parse(new String(input, StandardCharsets.UTF_8));
    if (read instanceof Result.Refused<Site> bad) {
      return bad.refusals().stream().map(Refusal::message).toList();
    }
    Site site = read.orThrow();
    if (!PlanFile.parse(PlanFile.write(site)).orThrow().equals(site)) {
      throw new IllegalStateException("not the same once written and read again");
    }
    return papers ? papers(site) : List.of();
  }

  private static List<Message> papers(Site site) throws IOException {
    SiteResult done = SiteResult.compute(site, FOLDER, BookSamples.book(), () -> false);
    OutFolder folder = new OutFolder(Path.of("target/never-written"));
    Path plan = FOLDER.resolve("none.site.json");
    JobFiles.Added added =
        new JobFiles(
                done,
                plan,
                Optional.of(plan),
                PaperSize.A3,
                true,
                false,
                Words.english(),
                Optional.empty(),
                Clock.systemUTC())
            .addTo(folder);
    Stream.concat(
            added.notCut().stream().map(FuzzRun::fault),
            added.faults().stream().map(PartFaults.PartFault::toString))
        .filter(f -> !f.isEmpty())
        .findFirst()
        .ifPresent(
            f -> {
              throw new IllegalStateException(f);
            });
    return done.areas().stream().flatMap(a -> a.refused().stream()).map(r -> r.message()).toList();
  }
}
