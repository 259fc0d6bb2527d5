package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.ResourceBundle;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import slabwright.words.Words;

/** The help of the commands and the bundle that it is written in. */
class CommandHelpTest {
  private final CommandLine all = SlabwrightCommand.commands(Words.english());
  private final ResourceBundle bundle = Words.english().bundle("cli-options");

  private List<CommandSpec> commands() {
    return Stream.concat(Stream.of(all), all.getSubcommands().values().stream())
        .map(CommandLine::getCommandSpec)
        .toList();
  }

  /** The name by which the library asks the bundle for what an option or parameter is. */
  private static String asked(ArgSpec arg) {
    if (arg instanceof OptionSpec o && o.descriptionKey().isEmpty()) {
      return o.longestName().replaceFirst("^-+", "");
    }
    return arg instanceof PositionalParamSpec p
        ? p.paramLabel() + "[" + p.index() + "]"
        : arg.descriptionKey();
  }

  /** The key of this command when the bundle has one, else the key that all commands share. */
  private String key(CommandSpec command, String asked) {
    String own = command.qualifiedName(".") + "." + asked;
    return bundle.containsKey(own) ? own : asked;
  }

  private List<String> keys(CommandSpec command) {
    List<String> keys = new ArrayList<>();
    command.args().forEach(a -> keys.add(key(command, asked(a))));
    String about = command.qualifiedName(".") + ".usage.description";
    if (bundle.containsKey(about)) {
      keys.add(about);
    } else {
      keys.add(about + ".0");
      keys.add(about + ".1");
    }
    return keys;
  }

  @Test
  void the_bundle_has_exactly_what_the_commands_ask_for() {
    TreeSet<String> keys = new TreeSet<>();
    commands().forEach(c -> keys.addAll(keys(c)));
    keys.add("usage.synopsisHeading");
    keys.add("usage.commandListHeading");
    assertThat(new TreeSet<>(bundle.keySet())).isEqualTo(keys);
  }

  @Test
  void every_command_option_and_parameter_says_what_it_is() {
    for (CommandSpec c : commands()) {
      assertThat(c.usageMessage().description()).as(c.qualifiedName()).isNotEmpty();
      assertThat(c.usageMessage().description()).allSatisfy(d -> assertThat(d).isNotBlank());
      for (ArgSpec a : c.args()) {
        assertThat(a.description()).as("%s of %s", a, c.qualifiedName()).isNotEmpty();
        assertThat(a.description()).allSatisfy(d -> assertThat(d).isNotBlank());
      }
    }
  }

  @Test
  void help_of_job_says_what_it_does_and_what_its_options_are() {
    StringWriter out = new StringWriter();
    PrintWriter to = new PrintWriter(out);
    assertThat(SlabwrightCommand.run(to, to, "job", "--help")).isZero();
    assertThat(out.toString())
        .contains(
            Stream.of(
                    "slabwright.job.usage.description",
                    "slabwright.job.out",
                    "PLAN[0]",
                    "accept-font")
                .map(bundle::getString)
                .toList());
  }
}
