package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import slabwright.project.RefusedInput;
import slabwright.project.TaskProgress;
import slabwright.project.export.CutFileRequest;
import slabwright.project.export.ExportFormat;
import slabwright.project.export.OutFolder;
import slabwright.project.export.SheetExport;
import slabwright.project.export.SheetRequest;
import slabwright.sheets.page.PaperSize;
import slabwright.site.Site;
import slabwright.words.Words;

/** The command line's job and what the desk saves, one form after the other, of one plan. */
class BothDoorsTest {
  private static final Path PLAN = Path.of("sample-plans/bike-workshop.site.json");
  private static final Clock MOMENT =
      Clock.fixed(Instant.parse("2026-05-04T09:30:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  private static List<Path> files(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(Files::isRegularFile).map(root::relativize).sorted().toList();
    }
  }

  private Path byCommand(Path plan) {
    Path out = folder.resolve("job");
    CommandLine line = new CommandLine(new JobCommand(Words.english(), MOMENT));
    line.setOut(new PrintWriter(new StringWriter()));
    assertThat(line.execute(plan.toString(), "--out", out.toString())).isZero();
    return out;
  }

  private Path byDesk(Path plan) throws IOException, RefusedInput {
    Site site = PlanLoader.read(plan);
    Path out = folder.resolve("desk");
    SheetRequest sheets =
        new SheetRequest(
            site, plan, PaperSize.A3, Optional.empty(), List.of(), Words.english(), MOMENT);
    for (ExportFormat form : ExportFormat.values()) {
      SheetExport.of(form, sheets, TaskProgress.untold())
          .orThrow()
          .write(out, TaskProgress.untold(), 0);
    }
    new CutFileRequest(site, plan, Optional.empty(), false, Words.english(), MOMENT)
        .files(TaskProgress.untold())
        .orThrow()
        .write(out, TaskProgress.untold(), 0);
    try (Stream<Path> made = Files.list(out)) {
      List<Path> folders = made.toList();
      assertThat(folders).hasSize(1);
      return folders.get(0);
    }
  }

  private void same(Path plan) throws IOException, RefusedInput {
    Path job = byCommand(plan);
    Path desk = byDesk(plan);
    List<Path> made = files(job).stream().filter(f -> !f.endsWith(OutFolder.MANIFEST)).toList();
    assertThat(files(desk)).containsExactlyElementsOf(made);
    for (Path file : made) {
      assertThat(Files.mismatch(job.resolve(file), desk.resolve(file)))
          .as("first byte in which the two %s differ", file)
          .isEqualTo(-1);
    }
  }

  @Test
  void both_doors_give_the_same_files_byte_by_byte() throws IOException, RefusedInput {
    same(PLAN);
  }
}
