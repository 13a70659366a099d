package hosewright.desk.interview;

import hosewright.intake.JobFile;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Offers to keep a job that was asked for as a file, where keys mean what they meant before. */
final class JobKeeper {
  private final Asker asker;

  JobKeeper(Asker asker) {
    this.asker = asker;
  }

  /**
   * Asks for the file's name and writes it, or not.
   *
   * @return false where the person goes back to the questions
   */
  boolean keep(Map<JobField, String> answers) throws Interview.BrokenOff {
    String suggested = suggestion(answers);
    asker.say("Keep the job as a file?");
    asker.say("  a) " + suggested);
    while (true) {
      String said = Lines.ask(asker, "file (may stay open): ", List.of(suggested));
      if (said.isEmpty() || said.equals("-")) {
        return true;
      }
      if (said.equals("<")) {
        return false;
      }
      if (said.startsWith("?")) {
        String word = said.substring(1).strip();
        asker.say("  " + (word.isEmpty() ? MEANING : Lines.explained(word)));
      } else if (saved(said.equalsIgnoreCase("a") ? suggested : said, answers)) {
        return true;
      }
    }
  }

  private static final String MEANING =
      "file: a small text file of these answers that --job takes, such as to quote the same again."
          + " Enter keeps none.";

  private boolean saved(String name, Map<JobField, String> answers) {
    try {
      Path file = JobFile.named(name);
      JobFile.save(file, answers);
      asker.say("  Kept in " + file + "; --job " + file + " plans it again.");
      return true;
    } catch (InvalidPathException e) {
      asker.say("  '" + name + "' cannot be the name of a file.");
    } catch (BadInputException e) {
      asker.say("  " + e.getMessage());
    }
    return false;
  }

  private static String suggestion(Map<JobField, String> answers) {
    String title = answers.getOrDefault(JobField.TITLE, "my job");
    String name = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String folder = Files.isDirectory(Path.of("quotes")) ? "quotes/" : "";
    return folder + name.replaceAll("^-|-$", "") + ".yaml";
  }
}
