package slabwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.inlay.GraphicSettings;
import slabwright.inlay.InlayPlan;
import slabwright.project.RefusedInput;
import slabwright.project.export.GraphicResult;
import slabwright.project.export.OutFolder;
import slabwright.site.StencilSpec;
import slabwright.units.FileName;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** {@code inlay GRAPHIC…}: stencils, panels and cut files of graphics, with no plan at all. */
@Command(name = "inlay", mixinStandardHelpOptions = true)
final class InlayCommand implements Callable<Integer> {
  @Parameters(paramLabel = "GRAPHIC", arity = "1..*")
  private List<Path> graphics;

  @Mixin private InlayOptions options;

  @Mixin private TraceOptions tracing;

  @Option(names = "--json")
  private boolean json;

  @Option(names = "--out", paramLabel = "DIR")
  private Path out;

  @Option(names = "--accept-font")
  private boolean acceptFont;

  @Spec private CommandSpec spec;

  private final Words words;

  InlayCommand(Words words) {
    this.words = words;
  }

  private final Set<String> used = new HashSet<>();

  @Override
  public Integer call() throws RefusedInput, IOException {
    StencilSpec settings = options.spec();
    GraphicSettings how = new GraphicSettings(options.page(), tracing.settings(), options.merged());
    OutFolder folder = out == null ? null : new OutFolder(out);
    ExitCode code = ExitCode.DONE;
    for (Path graphic : graphics) {
      code = ExitCode.graver(code, guarded(graphic, settings, how, folder));
    }
    if (folder != null && !folder.names().isEmpty()) {
      folder.commit();
    }
    return code.code();
  }

  /**
   * A fault of ours in one graphic, one that is gone or breaks off, or one that takes all memory
   * does not end the run of several.
   */
  private ExitCode guarded(
      Path graphic, StencilSpec settings, GraphicSettings how, OutFolder folder)
      throws IOException {
    try {
      return one(graphic, settings, how, folder);
    } catch (IllegalArgumentException
        | IllegalStateException
        | ArithmeticException
        | ClassCastException
        | NullPointerException
        | IndexOutOfBoundsException
        | StackOverflowError fault) {
      failed(graphic, words.say("cli.inlay.own-fault", graphic.toString(), fault.toString()));
      return ExitCode.OWN_FAULT;
    } catch (OutOfMemoryError full) {
      failed(graphic, words.say("cli.inlay.no-memory", graphic.toString()));
      return ExitCode.REFUSED;
    }
  }

  private void failed(Path graphic, String why) {
    spec.commandLine().getErr().println(why);
    if (json) {
      spec.commandLine().getOut().println(new GraphicResult.Failed(graphic, why).json());
    }
  }

  private ExitCode one(Path graphic, StencilSpec settings, GraphicSettings how, OutFolder folder)
      throws IOException {
    GraphicResult result =
        GraphicResult.compute(
            graphic, options.width().mm(), settings, how, options.units(), options.asDrawn());
    PrintWriter print = spec.commandLine().getOut();
    if (json) {
      print.println(result.json());
    }
    if (result instanceof GraphicResult.Unusable unusable) {
      spec.commandLine().getErr().println(words.say(unusable.message()));
      return ExitCode.REFUSED;
    }
    GraphicResult.Planned planned = (GraphicResult.Planned) result;
    if (!json) {
      summary(print, planned);
    }
    ExitCode written = folder == null ? ExitCode.DONE : write(planned, folder);
    // what is not cut for an open question is told by that question
    return planned.questions().isEmpty() ? written : ExitCode.QUESTION_OPEN;
  }

  private ExitCode write(GraphicResult.Planned planned, OutFolder folder) throws IOException {
    String stem = stem(planned.graphic());
    String prefix = graphics.size() == 1 ? "" : stem + "/";
    List<String> said = planned.addTo(folder, prefix, stem, acceptFont, words);
    said.forEach(spec.commandLine().getErr()::println);
    return said.isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
  }

  /** The file's name without its ending, cleaned and unlike any before. */
  private String stem(Path graphic) {
    String base =
        FileName.ofId(String.valueOf(graphic.getFileName()).replaceFirst("\\.[A-Za-z]+$", ""));
    String name = base;
    for (int i = 2; !used.add(name); i++) {
      name = base + "-" + i;
    }
    return name;
  }

  private void summary(PrintWriter print, GraphicResult.Planned planned) {
    InlayPlan plan = planned.plan();
    UnitSystem units = options.units();
    Words words = this.words.inUnits(units);
    print.println(
        words.say(
            "cli.inlay.summary",
            String.valueOf(planned.graphic().getFileName()),
            QuantityFormat.area(plan.openingArea(), units),
            plan.stencils().stencils().size(),
            QuantityFormat.run(plan.cutLength(), units),
            plan.panelsCut(),
            QuantityFormat.run(plan.rollLength(), units),
            plan.loosePieces()));
    planned.artwork().warnings().forEach(w -> print.println("  ! " + words.say(w.message())));
    planned.questions().forEach(q -> ConsoleSummary.question(print, q, words));
    ConsoleSummary.findings(print, plan.findings(), units, words);
  }
}
