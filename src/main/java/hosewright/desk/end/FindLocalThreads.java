package hosewright.desk.end;

import hosewright.desk.BooksPlace;
import hosewright.desk.LocalRegister;
import hosewright.problem.BadInputException;
import hosewright.thread.LocalThreads;
import hosewright.thread.LocalThreads.LocalThread;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Finds which thread a district uses, in the register the dealer keeps. */
public final class FindLocalThreads {
  private final BooksPlace place;

  public FindLocalThreads(BooksPlace place) {
    this.place = place;
  }

  /**
   * The register, or one district of it.
   *
   * @param file where it is kept, or would be
   */
  public record Local(String file, boolean kept, List<LocalThread> threads) {

    /** How to begin a register. */
    public String howTo() {
      return new LocalRegister(Path.of(file)).howTo();
    }
  }

  /**
   * What the register has.
   *
   * @param district blank for all of them
   * @throws BadInputException for a district when there is none such, or no register at all
   */
  public Local find(String district) {
    LocalRegister kept = LocalRegister.in(place.where());
    Optional<LocalThreads> register = kept.read();
    if (register.isEmpty() && !district.isBlank()) {
      throw new BadInputException(
          "district",
          district,
          "no register is kept yet, so check with the local fire service. " + kept.howTo());
    }
    List<LocalThread> threads =
        district.isBlank()
            ? register.map(LocalThreads::rows).orElse(List.of())
            : register.orElseThrow().of(district);
    return new Local(kept.file().toString(), register.isPresent(), threads);
  }
}
