package hosewright.fleet.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A section with its service records in order of date.
 *
 * @param section the inventory's row
 * @param records records of that section only
 */
public record SectionLife(HoseRecord section, List<ServiceRecord> records) {

  public SectionLife {
    List<ServiceRecord> ordered = new ArrayList<>(records);
    ordered.sort(Comparator.comparing(ServiceRecord::date));
    records = List.copyOf(ordered);
  }

  /** This life with one more record. */
  public SectionLife with(ServiceRecord record) {
    List<ServiceRecord> more = new ArrayList<>(records);
    more.add(record);
    return new SectionLife(section, more);
  }

  /** The first day the register says anything of it. */
  public LocalDate firstRecord() {
    LocalDate since = section.days().onRecordSince();
    return records.isEmpty() || records.get(0).date().isAfter(since)
        ? since
        : records.get(0).date();
  }

  /**
   * Where the section stands after its records, the agency's limits on repairs and failures kept.
   */
  public Standing standing(AgencyLimits limits) {
    return new Replay(limits).run();
  }

  /**
   * The rule that retires the section on a day although no record has done so: made too early, or
   * past the agency's age limit.
   */
  public Optional<Retirement> due(AgencyLimits limits, LocalDate day) {
    return due(section, limits, day);
  }

  public static Optional<Retirement> due(HoseRecord section, AgencyLimits limits, LocalDate day) {
    LocalDate earliest =
        RetirementRule.of(RetirementRule.MADE_BEFORE).firing().before().orElseThrow();
    LocalDate known =
        section.days().made().or(() -> section.days().inService()).orElse(LocalDate.MAX);
    if (known.isBefore(earliest)) {
      return Optional.of(new Retirement(RetirementRule.MADE_BEFORE, 0, day));
    }
    return ageLimit(section, limits)
        .filter(reached -> !reached.isAfter(day))
        .map(reached -> new Retirement(RetirementRule.AGE_LIMIT, 0, day));
  }

  /** The day the section reaches the agency's age limit. */
  static Optional<LocalDate> ageLimit(HoseRecord section, AgencyLimits limits) {
    OptionalInt years = limits.ageYears();
    return years.isPresent()
        ? Optional.of(section.born().plusYears(years.getAsInt()))
        : Optional.empty();
  }

  /** Walks the records once. */
  private final class Replay {
    private final AgencyLimits limits;
    private SectionStatus status = usableStatus();
    private Retirement retirement;
    private double lengthFt = section.lengthFt();
    private int repairs;
    private int streak;
    private boolean repairedSinceOut;
    private boolean heeded;
    private ServiceRecord lastTest;

    Replay(AgencyLimits limits) {
      this.limits = limits;
    }

    Standing run() {
      int number = 0;
      for (ServiceRecord record : records) {
        number++;
        if (record.date().isAfter(inventoryDay())) {
          heedInventory();
        }
        take(record, number);
      }
      heedInventory();
      return new Standing(
          status,
          Optional.ofNullable(retirement),
          lengthFt,
          repairs,
          streak,
          repairedSinceOut,
          Optional.ofNullable(lastTest));
    }

    /** Where it stands while nothing has taken it out. */
    private SectionStatus usableStatus() {
      return section.status().usable() ? section.status() : SectionStatus.IN_SERVICE;
    }

    private LocalDate inventoryDay() {
      return section.days().leftOn().orElse(section.days().onRecordSince());
    }

    /** What the inventory says is out of service is out, where no record says why. */
    private void heedInventory() {
      if (!heeded && !section.status().usable() && status != SectionStatus.RETIRED) {
        status = section.status();
        if (retirement == null || retirement.rule().equals(RetirementRule.MENDED)) {
          retirement = new Retirement(RetirementRule.BEFORE_REGISTER, 0, inventoryDay());
        }
      }
      heeded = true;
    }

    private void take(ServiceRecord record, int number) {
      record.lengthFt().ifPresent(length -> lengthFt = Math.min(lengthFt, length));
      if (record.outcome().tested()) {
        lastTest = record;
      }
      switch (record.outcome().effect()) {
        case PASS -> pass();
        case REPAIR -> repair(record, number);
        default -> takeOut(record, number);
      }
    }

    private void pass() {
      if (!repairedSinceOut) {
        streak = 0;
      }
      if (status == SectionStatus.REMOVED && repairedSinceOut) {
        status = usableStatus();
        retirement = null;
      }
      repairedSinceOut = false;
    }

    /** Mended hose is out until it passes, also where nothing had taken it out before. */
    private void repair(ServiceRecord record, int number) {
      repairs++;
      repairedSinceOut = true;
      if (status == SectionStatus.RETIRED) {
        return;
      }
      if (beyond(limits.repairs(), repairs)) {
        retire(RetirementRule.REPAIRS, record, number);
      } else if (status.usable()) {
        status = SectionStatus.REMOVED;
        retirement = new Retirement(record.outcome().rule(), number, record.date());
      }
    }

    private void takeOut(ServiceRecord record, int number) {
      if (record.outcome().failed()) {
        streak++;
      }
      if (status == SectionStatus.RETIRED) {
        return;
      }
      repairedSinceOut = false;
      if (limits.failureStreak().isPresent() && streak >= limits.failureStreak().getAsInt()) {
        retire(RetirementRule.STREAK, record, number);
      } else if (record.outcome().effect() == Outcome.Effect.RETIRE) {
        retire(record.outcome().rule(), record, number);
      } else {
        status = SectionStatus.REMOVED;
        retirement = new Retirement(record.outcome().rule(), number, record.date());
      }
    }

    private void retire(String rule, ServiceRecord record, int number) {
      status = SectionStatus.RETIRED;
      retirement = new Retirement(rule, number, record.date());
    }

    private static boolean beyond(OptionalInt limit, int count) {
      return limit.isPresent() && count > limit.getAsInt();
    }
  }
}
