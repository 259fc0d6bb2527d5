package slabwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.drawing.paint.SvgPainter;
import slabwright.figures.ProofFaultInks;
import slabwright.inlay.proof.ProofReport;
import slabwright.inlay.proof.ProofVerdict;
import slabwright.inlay.proof.ShadingMeaning;
import slabwright.project.ProofRequest;
import slabwright.project.RefusedInput;
import slabwright.site.Site;
import slabwright.store.AtomicFile;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** {@code proof PLAN --inlay ID --file RETURNED}: the sign shop's drawing against the plan. */
@Command(name = "proof", mixinStandardHelpOptions = true)
final class ProofCommand implements Callable<Integer> {
  private static final double PICTURE_MM = 250;

  /** What the person says of shading. */
  enum Shading {
    PULLED_OUT,
    STAYS,
    UNKNOWN
  }

  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @Option(names = "--inlay", required = true, paramLabel = "ID")
  private String inlay;

  @Option(names = "--file", required = true, paramLabel = "FILE")
  private Path file;

  @Option(names = "--stencil", paramLabel = "N", defaultValue = "1")
  private int number;

  @Option(names = "--shading", paramLabel = "WHAT", defaultValue = "UNKNOWN")
  private Shading shading;

  @Option(names = "--page", paramLabel = "N", defaultValue = "1")
  private int page;

  @Option(names = "--json")
  private boolean json;

  @Mixin private ProofOptions limits;

  @Option(names = "--picture", paramLabel = "FILE.svg")
  private Path picture;

  @Spec private CommandSpec spec;

  private final Words words = Words.english();

  @Override
  public Integer call() throws RefusedInput, IOException {
    Site site = PlanLoader.read(plan);
    ShadingMeaning meaning = ShadingMeaning.valueOf(shading.name());
    ProofRequest.Checked checked =
        new ProofRequest(inlay, number, file, page, meaning, limits.limits())
            .check(site, plan.toAbsolutePath().getParent());
    ProofReport report = checked.report();
    say(checked, site.units());
    if (picture != null) {
      AtomicFile.write(
          picture,
          SvgPainter.write(
                  ProofFaultInks.picture(checked.wanted(), report, PICTURE_MM),
                  words.say("cli.proof.picture"))
              .getBytes(StandardCharsets.UTF_8));
    }
    return code(report.verdict()).code();
  }

  private static ExitCode code(ProofVerdict verdict) {
    return switch (verdict) {
      case CUT -> ExitCode.DONE;
      case DO_NOT_CUT -> ExitCode.DO_NOT_CUT;
      case CANNOT_TELL -> ExitCode.CANNOT_TELL;
    };
  }

  private void say(ProofRequest.Checked checked, UnitSystem units) {
    ProofReport report = checked.report();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(checked.json(units, words));
      return;
    }
    out.println(words.say(report.verdict().message()));
    report.faults().forEach(f -> out.println("✕ " + words.say(f.message(units))));
    report.notes().forEach(n -> out.println("! " + words.say(n.message(units))));
    out.println(words.say(report.limits().message()));
  }
}
