package hosewright.fleet.record;

import java.time.LocalDate;

/**
 * How a section left service.
 *
 * @param rule code of the rule that fired
 * @param record number of the record it fired on: 0 for the inventory's own row, else the section's
 *     service records in order of date, from 1
 * @param date the day it left service
 */
public record Retirement(String rule, int record, LocalDate date) {

  public RetirementRule ruleInWords() {
    return RetirementRule.of(rule);
  }
}
