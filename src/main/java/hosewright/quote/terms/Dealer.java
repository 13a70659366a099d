package hosewright.quote.terms;

import java.util.List;

/**
 * Who sells: the head of every paper.
 *
 * @param addressLines postal address, one line each
 * @param note one line under the address, for example hours or a licence; may be empty
 */
public record Dealer(
    String name, List<String> addressLines, String phone, String email, String note) {

  public Dealer {
    addressLines = List.copyOf(addressLines);
  }
}
