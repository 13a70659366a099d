package hosewright.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;

final class PlainTextTest {
  /**
   * Unicode, table of bidirectional control characters (UAX #9, section 2): the explicit
   * directional embeddings, overrides, isolates and implicit marks.
   */
  private static final List<Integer> BIDIRECTIONAL =
      List.of(
          0x061C, 0x200E, 0x200F, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068,
          0x2069);

  @Test
  void letters_of_any_language_signs_tabs_and_line_breaks_are_text() {
    for (String text :
        List.of(
            "1½ in, 2½\" x 50 ft — Zürich №5 ™",
            "line one\nline two\r\n\tindented",
            "消防水带 пожарный рукав خرطوم חול",
            // Persian "I want" is not spelt right without the non-joiner.
            "می\u200Cخواهم",
            "\uD83D\uDE92 engine")) {
      assertThat(PlainText.refusal("note", text)).as(text).isEmpty();
      assertThat(PlainText.spelt(text)).isEqualTo(text);
      assertThat(PlainText.without(text)).isEqualTo(text);
      assertThat(PlainText.inJson(text)).isEqualTo(text);
    }
  }

  @Test
  void no_control_character_but_the_three_of_text_may_be_kept() {
    // ISO/IEC 6429: C0 is 00 to 1F, DEL is 7F, C1 is 80 to 9F.
    for (int control = 0; control <= 0x9F; control++) {
      boolean named = control < 0x20 || control >= 0x7F;
      boolean text = control == '\t' || control == '\n';
      refuses(control, named && !text);
    }
  }

  @Test
  void a_carriage_return_alone_would_write_over_what_stands_before_it() {
    assertThat(PlainText.is("USD 900.00\rUSD 1.00")).isFalse();
    assertThat(PlainText.spelt("USD 900.00\rUSD 1.00")).isEqualTo("USD 900.00{U+000D}USD 1.00");
  }

  @Test
  void marks_that_turn_the_order_of_letters_or_hide_are_refused() {
    BIDIRECTIONAL.forEach(mark -> refuses(mark, true));
    // A soft hyphen, a space of no width, a byte order mark, a letter of the tag block.
    List.of(0x00AD, 0x200B, 0xFEFF, 0xE0041, 0x2028, 0x2029).forEach(mark -> refuses(mark, true));
  }

  @Test
  void halves_of_a_character_are_refused_and_whole_ones_are_not() {
    assertThat(PlainText.is("\uD83D\uDE92")).isTrue();
    assertThat(PlainText.is("\uD83D")).isFalse();
    assertThat(PlainText.is("\uDE92\uD83D")).isFalse();
    assertThat(PlainText.spelt("a\uD83Db")).isEqualTo("a{U+D83D}b");
  }

  @Test
  void what_is_spelt_out_may_stand_in_any_xml_document() throws Exception {
    StringBuilder every = new StringBuilder();
    for (int unit = 0; unit <= 0xFFFF; unit++) {
      every.append((char) unit).append(' ');
    }
    String spelt = PlainText.spelt(every.toString()).replace("&", "&amp;").replace("<", "&lt;");
    byte[] document = ("<text>" + spelt + "</text>").getBytes(StandardCharsets.UTF_8);

    String read =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(document))
            .getDocumentElement()
            .getTextContent();

    assertThat(read).contains("{U+0000}").contains("{U+FFFE}").contains("{U+202E}").contains("é");
  }

  @Test
  void a_refusal_names_the_place_shows_the_mark_and_offers_the_text_without_it() {
    assertThat(PlainText.refusal("title", "Yard\u001B[31m line").orElseThrow())
        .isEqualTo(
            new Problem("title", "Yard{U+001B}[31m line", PlainText.ALLOWED, "Yard[31m line"));
  }

  @Test
  void a_long_value_is_cut_in_every_refusal() {
    String long_ = "x".repeat(100_000);

    assertThat(Problem.of("title", long_, "shorter").sentence())
        .hasSizeLessThan(400)
        .contains("… (100,000 characters)': shorter");
    assertThat(Problem.of("title", "\0\uDBFF".repeat(50_000), "shorter").sentence())
        .as("cut as it is shown, spelt out")
        .hasSizeLessThan(400)
        .startsWith("title cannot be '{U+0000}{U+DBFF}{U+0000}")
        .contains("… (100,000 characters)': shorter");
    assertThat(new NoSuchThingException("order", long_, List.of("O-1"), "'order list' shows all"))
        .message()
        .hasSizeLessThan(400);
    assertThat(ConflictException.stateForbids("quote", long_, "is issued", "revise it"))
        .message()
        .hasSizeLessThan(400);
    assertThat(
            new TroubleException("store", long_, "its disk is full", TroubleException.Kept.NOTHING))
        .message()
        .hasSizeLessThan(400);
  }

  private static void refuses(int codePoint, boolean refused) {
    String text = "a" + Character.toString(codePoint) + "b";
    assertThat(PlainText.is(text)).as("U+%04X", codePoint).isNotEqualTo(refused);
    if (refused) {
      assertThat(PlainText.spelt(text)).isEqualTo("a{U+%04X}b".formatted(codePoint));
      assertThat(PlainText.without(text)).isEqualTo("ab");
      assertThat(PlainText.is(PlainText.inJson(text))).isTrue();
    }
  }
}
