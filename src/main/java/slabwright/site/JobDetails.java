package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import slabwright.site.job.CoatReading;
import slabwright.site.job.DayForecast;
import slabwright.site.job.JobCrew;
import slabwright.site.job.Party;
import slabwright.site.job.PinnedPhoto;

/**
 * What is known of the job as a whole beside its floors.
 *
 * @param clientPhoto photo that the finished floor is shown on
 * @param shopBook the shop book chosen for this job, a path relative to the plan's folder and
 *     inside it; empty is the one found beside the plan or at home
 * @param photos pinned to marks and corners
 * @param readings taken on the days of coats
 * @param forecast each day once
 */
@RecordBuilder
public record JobDetails(
    Party contractor,
    Party client,
    Optional<ClientPhoto> clientPhoto,
    JobCrew crew,
    String shopBook,
    List<PinnedPhoto> photos,
    List<CoatReading> readings,
    List<DayForecast> forecast)
    implements JobDetailsBuilder.With {
  public static final JobDetails NONE =
      new JobDetails(
          Party.UNKNOWN,
          Party.UNKNOWN,
          Optional.empty(),
          JobCrew.UNKNOWN,
          "",
          List.of(),
          List.of(),
          List.of());

  public JobDetails {
    photos = List.copyOf(photos);
    readings = List.copyOf(readings);
    forecast = List.copyOf(forecast);
  }
}
