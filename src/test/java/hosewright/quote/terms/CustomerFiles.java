package hosewright.quote.terms;

import java.io.Reader;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.Map;

/** Invented buyers of the invented dealer Quillback, and its terms, as files. */
public final class CustomerFiles {
  private final Map<String, String> texts = new LinkedHashMap<>();

  public CustomerFiles() {
    texts.put(
        "customers.csv",
        """
        id,name,address,class,discount,tax_name,tax_rate,exemption_certificate,exemption_date,freight_terms
        PHFD,Port Harlow Fire District,"1 Quay Road
        Port Harlow",agency,0.10,Harlow county tax,0.0625,EX-0042,2026-01-15,prepaid and added
        WALKIN,Counter sale,,retail,0,Harlow county tax,0.0625,,,
        """);
    texts.put(
        "contract-prices.csv",
        """
        customer,item,from,until,unit_price,currency
        PHFD,H25-50,2026-01-01,2026-06-30,190.00,USD
        PHFD,H25-50,2026-07-01,,195.00,USD
        PHFD,B15,2026-07-01,,2.80,USD
        """);
    texts.put(
        "freight.csv",
        """
        up_to_lb,charge,currency
        70,14.50,USD
        150.5,38.00,USD
        """);
    texts.put(
        "dealer.csv",
        """
        key,value
        name,Quillback Hose & Coupling
        town,Port Harlow
        note,
        """);
  }

  /** These files with one piece of text changed, which must be there. */
  public CustomerFiles with(String file, String piece, String replacement) {
    if (!texts.get(file).contains(piece)) {
      throw new IllegalArgumentException(file + " has no " + piece);
    }
    texts.put(file, texts.get(file).replace(piece, replacement));
    return this;
  }

  public Map<String, Reader> readers() {
    Map<String, Reader> readers = new LinkedHashMap<>();
    texts.forEach((name, text) -> readers.put(name, new StringReader(text)));
    return readers;
  }
}
