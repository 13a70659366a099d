package hosewright.paper.json;

import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.Item;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Part;
import hosewright.order.BenchCard;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import hosewright.thread.End;
import hosewright.thread.Verdict;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/** How the trade's records look in JSON. */
final class TradeModule extends SimpleModule {
  private static final long serialVersionUID = 1L;

  TradeModule() {
    addSerializer(Money.class, new MoneyWriter());
    addDeserializer(Money.class, new MoneyReader());
    addSerializer(End.class, new EndWriter());
    addDeserializer(End.class, new EndReader());
    setMixInAnnotation(Verdict.class, Mixins.VerdictNames.class);
    setMixInAnnotation(BenchCard.Make.class, Mixins.WithGasket.class);
    setMixInAnnotation(Check.class, Mixins.RecordAlone.class);
    setMixInAnnotation(Part.class, Mixins.RecordAlone.class);
    setMixInAnnotation(Item.class, Mixins.ItemAlike.class);
    setMixInAnnotation(HoseFacts.class, Mixins.HoseAlike.class);
    setMixInAnnotation(Hydraulics.Station.class, Mixins.StationPlace.class);
    setMixInAnnotation(Bill.Item.class, Mixins.BillItemSums.class);
    setMixInAnnotation(QuoteLine.Break.class, Mixins.BreakSums.class);
    setMixInAnnotation(Quote.class, Mixins.WithGroups.class);
  }

  @Override
  public void setupModule(SetupContext context) {
    super.setupModule(context);
    context.insertAnnotationIntrospector(new SpreadGroups());
  }

  private static final class MoneyWriter extends StdSerializer<Money> {
    MoneyWriter() {
      super(Money.class);
    }

    @Override
    public void serialize(Money money, JsonGenerator out, SerializationContext context) {
      out.writeString(MoneyText.write(money));
    }
  }

  /** Writes the amount alone, where the document's total names the currency. */
  static final class BareMoneyWriter extends StdSerializer<Money> {
    BareMoneyWriter() {
      super(Money.class);
    }

    @Override
    public void serialize(Money money, JsonGenerator out, SerializationContext context) {
      out.writeString(MoneyText.bare(money));
    }
  }

  private static final class MoneyReader extends StdDeserializer<Money> {
    MoneyReader() {
      super(Money.class);
    }

    @Override
    public Money deserialize(JsonParser in, DeserializationContext context) {
      String text = in.getValueAsString("");
      CurrencyUnit currency = (CurrencyUnit) context.getAttribute(Json.CURRENCY);
      Money money = MoneyText.parse(text, currency);
      return money == null
          ? (Money) context.handleWeirdStringValue(Money.class, text, "write it as 12.00 USD")
          : money;
    }
  }

  private static final class EndWriter extends StdSerializer<End> {
    EndWriter() {
      super(End.class);
    }

    @Override
    public void serialize(End end, JsonGenerator out, SerializationContext context) {
      out.writeString(end.toString());
    }
  }

  private static final class EndReader extends StdDeserializer<End> {
    EndReader() {
      super(End.class);
    }

    @Override
    public End deserialize(JsonParser in, DeserializationContext context) {
      return End.parse(in.getValueAsString(""));
    }
  }
}
