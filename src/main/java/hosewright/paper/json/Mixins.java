package hosewright.paper.json;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.catalogue.Build;
import hosewright.catalogue.Form;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.Selling;
import hosewright.catalogue.WaterFacts;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Flowing;
import hosewright.line.plan.Planner;
import hosewright.quote.Quote;
import hosewright.thread.Verdict;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import tools.jackson.databind.annotation.JsonSerialize;
import tools.jackson.databind.util.StdConverter;

/** Names and forms that differ from the records' own, kept out of the records. */
final class Mixins {
  private Mixins() {}

  @JsonSerialize(converter = PlanConverter.class)
  interface AsPlanDocument {}

  @JsonSerialize(converter = ExplainedConverter.class)
  interface AsExplainedDocument {}

  @JsonSerialize(converter = FlowConverter.class)
  interface AsFlowDocument {}

  static final class PlanConverter extends StdConverter<LinePlan, Map<String, Object>> {
    @Override
    public Map<String, Object> convert(LinePlan plan) {
      return PlanDocument.of(plan);
    }
  }

  static final class ExplainedConverter
      extends StdConverter<Planner.Explained, Map<String, Object>> {
    @Override
    public Map<String, Object> convert(Planner.Explained explained) {
      Map<String, Object> document = PlanDocument.of(explained.plan());
      document.put("reasoning", explained.reasoning());
      return document;
    }
  }

  static final class FlowConverter extends StdConverter<Flowing, Map<String, Object>> {
    @Override
    public Map<String, Object> convert(Flowing flowing) {
      return FlowDocument.of(flowing);
    }
  }

  interface VerdictNames {
    @JsonProperty("verdict")
    Verdict.Outcome outcome();
  }

  interface WithGasket {
    @JsonProperty("gasket")
    String gasket();
  }

  /** Groups with what they come to are worked out from the lines, and not read back. */
  interface WithGroups {
    @JsonProperty(value = "groups", access = JsonProperty.Access.READ_ONLY)
    List<Quote.GroupSum> groupSums();
  }

  interface RecordAlone {
    @JsonIgnore
    boolean isYesOrNo();

    @JsonIgnore
    boolean isHose();

    @JsonIgnore
    boolean isBuyers();

    @JsonIgnore
    boolean isMadeUp();
  }

  /** The facts of an item stand side by side, whatever record holds them. */
  interface ItemAlike {
    @JsonUnwrapped
    Form form();

    @JsonUnwrapped
    Build build();

    @JsonUnwrapped
    WaterFacts water();

    @JsonUnwrapped
    Selling selling();
  }

  interface HoseAlike {
    @JsonUnwrapped
    HoseFacts.Diameters diameters();
  }

  interface BillItemSums {
    @JsonSerialize(contentUsing = TradeModule.BareMoneyWriter.class)
    Optional<Money> unitPrice();
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
