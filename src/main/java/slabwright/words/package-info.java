/**
 * Messages in words. Rooms below say what they have to say as a {@code Message} of {@code units}, a
 * key with values; here {@link Words} makes it a sentence in the reader's language.
 *
 * <p>The sentences stand in resource bundles, one properties file a room, in UTF-8. Each is a
 * pattern of {@code java.text.MessageFormat}: an apostrophe is doubled, {@code {0}} is the first
 * value, {@code {0,number,0.0}} a number with one decimal, rounded half up. A number without a
 * format is written plainly, without commas between thousands. Inside a choice, name a number's
 * format.
 *
 * <p>One bundle, {@code cli-options}, is not ours to say: the command line's library finds there
 * what each command and option is, by its own names of them, and reads {@code %n} as a new line.
 */
package slabwright.words;
