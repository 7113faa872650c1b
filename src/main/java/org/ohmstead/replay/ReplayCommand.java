package org.ohmstead.replay;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.ohmstead.assessment.model.forecast.EstateReplay;
import org.ohmstead.assessment.model.forecast.ForecastParameters;

/**
 * The command {@code replay FOLDER OUT.csv}: register files and survey sheets in, predictions out, without a server or a
 * database. Its files and columns are described in {@code docs/assessment.md}.
 */
public final class ReplayCommand {
    /** Predictions were written, though perhaps not of everything; what was left out is told. */
    public static final int DONE = 0;
    /** Nothing could be predicted or written. */
    public static final int NOTHING = 1;
    /** The command was not called as it must be. */
    public static final int MISCALLED = 2;

    private final Path folder;
    private final Path target;
    private final Notes notes;

    private ReplayCommand(Path folder, Path target, Notes notes) {
        this.folder = folder;
        this.target = target;
        this.notes = notes;
    }

    /**
     * Runs the command and returns its exit code.
     *
     * @param messages where progress and what is wrong are told
     */
    public static int run(List<String> arguments, PrintStream messages) {
        Notes notes = new Notes(messages);
        if (arguments.size() != 2) {
            notes.say("usage: replay FOLDER OUT.csv");
            notes.say("FOLDER holds the register's CSV files and, anywhere below, survey sheets.");
            return MISCALLED;
        }
        try {
            Path folder = Path.of(arguments.get(0));
            if (!Files.isDirectory(folder)) {
                notes.say("There is no folder " + folder + ".");
                return MISCALLED;
            }
            return new ReplayCommand(folder, Path.of(arguments.get(1)), notes).run();
        } catch (InvalidPathException unusable) {
            notes.say("This is no file name: " + unusable.getInput());
            return MISCALLED;
        } catch (IOException | UncheckedIOException failed) {
            notes.say("A file could not be read or written: " + failed);
            return NOTHING;
        }
    }

    private int run() throws IOException {
        ReplayFolder files = ReplayFolder.open(folder, target);
        FiledRegister register = FiledRegister.read(files, notes);
        List<FiledString> strings = register.strings();
        notes.say("strings in the register: " + strings.size());
        int surveys = strings.isEmpty() ? 0 : FiledSurveys.read(files, register, notes);
        if (surveys == 0) {
            notes.say(
                    strings.isEmpty()
                            ? "No string can be read: the folder needs strings.csv and jar-types.csv."
                            : "No survey sheet of these strings can be read.");
            return NOTHING;
        }
        predict(strings, surveys);
        notes.say("left out: " + notes.skipped() + " files, sheets or rows, and " + notes.lost() + " single values");
        return DONE;
    }

    private void predict(List<FiledString> strings, int surveys) throws IOException {
        int[] done = {0};
        EstateReplay replay =
                new EstateReplay(strings.stream().map(FiledString::history).toList(), ForecastParameters.standard());
        try (PredictionFile out = new PredictionFile(Files.newBufferedWriter(target))) {
            replay.run((string, survey, forecast) -> {
                out.write(strings.get(string), forecast);
                notes.progress("surveys replayed", ++done[0], surveys);
            });
            notes.say("rows written to " + target + ": " + out.rows());
        }
    }
}
