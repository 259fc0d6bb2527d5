/**
 * The tape file (docs/tape-format.md), read line by line with every fault at its line, and written.
 *
 * <p>{@link TapeText} (entry), {@link TapeReader} with {@link LineScanner}; a parser for each kind
 * of line: {@link WallLineParser}, {@link CrossReadingParser}, {@link TurnParser}, {@link
 * SettingLineParser}. {@link TapeWriter} writes what the reader reads.
 */
package slabwright.tape.text;
