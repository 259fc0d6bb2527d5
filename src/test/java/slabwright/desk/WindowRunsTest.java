package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.platform.engine.discovery.ClassNameFilter.excludeClassNamePatterns;
import static org.junit.platform.engine.discovery.ClassNameFilter.includeClassNamePatterns;
import static org.junit.platform.engine.discovery.DiscoverySelectors.selectPackage;

import java.util.List;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Tag;
import org.junit.platform.launcher.EngineFilter;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.TagFilter;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;
import org.junit.platform.launcher.listeners.TestExecutionSummary;

/** A window test that fails one time in twenty refuses a day's work, so they run twenty times. */
@Tag("long")
class WindowRunsTest {
  @RepeatedTest(20)
  void every_window_test_passes_again() {
    LauncherDiscoveryRequest request =
        LauncherDiscoveryRequestBuilder.request()
            .selectors(selectPackage("slabwright.desk"))
            .filters(
                EngineFilter.includeEngines("junit-jupiter"),
                TagFilter.excludeTags("long"),
                includeClassNamePatterns(".*Test"),
                excludeClassNamePatterns(".*WindowRunsTest"))
            .build();
    SummaryGeneratingListener listener = new SummaryGeneratingListener();

    LauncherFactory.create().execute(request, listener);

    TestExecutionSummary summary = listener.getSummary();
    List<String> failed =
        summary.getFailures().stream()
            .map(f -> f.getTestIdentifier().getUniqueId() + ": " + f.getException())
            .toList();
    assertThat(failed).isEmpty();
    assertThat(summary.getTestsSucceededCount()).isGreaterThan(100);
  }
}
