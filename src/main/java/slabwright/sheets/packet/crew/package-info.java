/**
 * What the crew gets: day pages and posters, no word under 10 pt.
 *
 * <p>{@link CrewPacket} (entry: pages, and the days as HTML). The days: {@link CrewDays} cuts the
 * day plan into {@link CrewDay}s, {@link CrewDayTexts} says them as {@link CrewDayText} with {@link
 * CrewStepWords} (tools by {@link CrewToolNames}, cartridges by {@link BegunCartridge}, a sample
 * panel by {@link CrewSample}) and {@link CrewCautions}; {@link CrewDayPages} with {@link
 * WorkPlacePicture} sets them on paper, {@link CrewDayHtml} on a phone, {@link CrewCalendarText} in
 * the calendar. Posters: {@link SettingOutPoster}, {@link LayingPoster}; hand work and rolling come
 * from their sheets.
 */
package slabwright.sheets.packet.crew;
