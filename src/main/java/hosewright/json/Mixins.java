package hosewright.json;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.line.LineHydraulicsResult;
import hosewright.line.LinePlan;
import hosewright.thread.Verdict;
import java.util.Optional;
import org.joda.money.Money;
import tools.jackson.databind.annotation.JsonSerialize;

/** Names and forms that differ from the records' own, kept out of the records. */
final class Mixins {
  private Mixins() {}

  interface VerdictNames {
    @JsonProperty("verdict")
    Verdict.Outcome outcome();
  }

  interface PlanNames {
    @JsonUnwrapped
    LineHydraulicsResult hydraulics();
  }

  interface ExplainedNames {
    @JsonUnwrapped
    LinePlan plan();
  }

  interface PlanItemSums {
    @JsonSerialize(contentUsing = TradeModule.BareMoneyWriter.class)
    Optional<Money> unitPrice();

    @JsonSerialize(contentUsing = TradeModule.BareMoneyWriter.class)
    Optional<Money> extended();
  }

  interface QuoteLineSums {
    @JsonSerialize(using = TradeModule.BareMoneyWriter.class)
    Money listPrice();

    @JsonSerialize(using = TradeModule.BareMoneyWriter.class)
    Money unitPrice();

    @JsonSerialize(using = TradeModule.BareMoneyWriter.class)
    Money extended();
  }

  interface BreakSums {
    @JsonSerialize(using = TradeModule.BareMoneyWriter.class)
    Money unitPrice();
  }
}
