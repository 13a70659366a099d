package hosewright.desk.tender;

import hosewright.disk.LineJournal;
import hosewright.paper.json.Json;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.problem.Problem;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderResult;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * What a tender's run has found so far, kept beside its output: the basis of the run, then the
 * result of each row in the order of the file.
 */
final class TenderJournal implements AutoCloseable {
  private final LineJournal lines;
  private TenderBasis basis;
  private int done;

  private TenderJournal(LineJournal lines) {
    this.lines = lines;
  }

  /**
   * Opens the journal of a run, new or cut short.
   *
   * @param wanted what the run rests on now
   * @param dateGiven whether the day was named; else a run goes on with the day it began on
   * @throws BadInputException when it holds a run that rests on something else
   */
  static TenderJournal open(Path file, TenderBasis wanted, boolean dateGiven, boolean restart) {
    List<String> first = new ArrayList<>();
    int[] count = {0};
    LineJournal lines =
        LineJournal.open(
            file,
            line -> {
              if (count[0]++ == 0) {
                first.add(line);
              }
            });
    TenderJournal journal = new TenderJournal(lines);
    try {
      if (first.isEmpty() || restart) {
        journal.begin(wanted);
      } else {
        journal.goOn(Json.read(first.get(0), TenderBasis.class), wanted, dateGiven);
        journal.done = count[0] - 1;
      }
      return journal;
    } catch (RuntimeException e) {
      lines.close();
      throw e;
    }
  }

  private void begin(TenderBasis wanted) {
    lines.clear();
    lines.append(Json.line(wanted));
    lines.force();
    basis = wanted;
  }

  private void goOn(TenderBasis kept, TenderBasis wanted, boolean dateGiven) {
    List<Problem> changed = new ArrayList<>();
    if (!kept.source().sha256().equals(wanted.source().sha256())) {
      changed.add(
          changed(
              "file",
              wanted.source().file(),
              "the file, or a package it names, is not the one that run began with, "
                  + kept.source().file()));
    }
    if (kept.catalogueLoad() != wanted.catalogueLoad()) {
      changed.add(
          changed(
              "catalogue load",
              String.valueOf(wanted.catalogueLoad()),
              "that run began with load " + kept.catalogueLoad()));
    }
    if (!kept.customer().equals(wanted.customer())) {
      changed.add(
          changed(
              "customer",
              wanted.customer(),
              "that run began with " + (kept.customer().isEmpty() ? "none" : kept.customer())));
    }
    if (dateGiven && !kept.date().equals(wanted.date())) {
      changed.add(changed("date", wanted.date().toString(), "that run began with " + kept.date()));
    }
    if (!kept.together().equals(wanted.together())) {
      changed.add(
          changed(
              "one-quote",
              wanted.together() ? "yes" : "no",
              "that run began "
                  + (kept.together() ? "with" : "without")
                  + " "
                  + Given.as("one-quote")));
    }
    if (kept.quotes() != wanted.quotes()) {
      changed.add(
          changed(
              "quotes",
              wanted.quotes() ? "yes" : "no",
              "that run began " + (kept.quotes() ? "with" : "without") + " " + Given.as("quotes")));
    }
    if (!changed.isEmpty()) {
      throw new BadInputException(changed);
    }
    basis = kept;
  }

  private Problem changed(String field, String value, String why) {
    return Problem.of(
        field,
        value,
        "a run that was cut short lies in "
            + lines.file()
            + ", and "
            + why
            + "; give "
            + Given.as("restart")
            + " to begin anew");
  }

  /** What the run rests on: what it began with. */
  TenderBasis basis() {
    return basis;
  }

  /** How many rows are done. */
  int done() {
    return done;
  }

  void add(TenderResult row) {
    lines.append(Json.line(row));
    done++;
  }

  void force() {
    lines.force();
  }

  /** Gives the rows done, in the order of the file. */
  void each(Consumer<TenderResult> reader) {
    boolean[] head = {true};
    lines.read(
        line -> {
          if (!head[0]) {
            reader.accept(Json.read(line, TenderResult.class));
          }
          head[0] = false;
        });
  }

  /** Ends the journal once its output is written. */
  void discard() {
    lines.close();
    try {
      Files.deleteIfExists(lines.file());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    lines.close();
  }
}
