/**
 * The command line, one class a command: it parses, asks the rooms below and prints.
 *
 * <p>{@link SlabwrightCommand} (entry: the commands), {@link ExitCode} and {@link CommandFaults}
 * (what ended one, in a line), {@link UsageFaults} (wrong use); {@link PlanLoader} reads and
 * computes a plan for all of them; {@link JobCommand} writes everything of it; {@link
 * SheetsCommand}, {@link TallyCommand}, {@link CheckCommand}, {@link ProofCommand} (with {@link
 * ProofOptions}), {@link ActualsCommand}, {@link ReleaseCommand} and {@link ChangesCommand} one
 * thing each. {@link InlayCommand} with {@link InlayOptions} and {@link TraceOptions}, and {@link
 * TapeCommand} with {@link TapeSheetFile} need no plan. {@link ConsoleSummary} is what a person
 * reads after a job.
 */
package slabwright.cli;
