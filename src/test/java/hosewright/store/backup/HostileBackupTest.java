package hosewright.store.backup;

import static hosewright.store.db.Tables.QUOTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.disk.OwnerOnly;
import hosewright.problem.ConflictException;
import hosewright.problem.RefusalException;
import hosewright.problem.TroubleException;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.Signed;
import hosewright.store.database.BooksOn;
import hosewright.store.database.Database;
import hosewright.store.database.MigratedStore;
import hosewright.store.database.Poison;
import hosewright.store.quote.SampleQuotes;
import hosewright.store.quote.StoredQuotes;
import hosewright.store.seal.Seal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A backup that somebody made to do harm, or that was damaged, runs nothing and changes nothing.
 */
final class HostileBackupTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-02T10:00:00Z"), ZoneOffset.UTC);
  private static final Limits SMALL = new Limits(1 << 20, 200_000, 60, 5, 20_000, 1000);

  @TempDir private Path folder;
  @TempDir private Path elsewhere;
  private Path good;

  @BeforeEach
  void keep_a_quote_and_back_it_up() {
    good = elsewhere.resolve("good.zip");
    MigratedStore.into(folder);
    try (Database books = Database.open(folder)) {
      new StoredQuotes(books, SampleQuotes.CODEC, CLOCK)
          .saveNew(
              number -> SampleQuotes.quote(number, 1, "Quay line"),
              Signed.of(QuoteLife.Step.MAKE, "ines", CLOCK.instant(), ""));
      backup(Limits.USUAL).make(books, Optional.of(good));
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_database_file_in_place_of_a_backup_is_refused_with_the_way_out_and_never_opened(
      Poison poison) throws IOException {
    Path canary = elsewhere.resolve("canary");
    Path stranger = Files.createDirectory(elsewhere.resolve("stranger"));
    MigratedStore.into(stranger);
    poison.into(stranger, canary);

    assertThatThrownBy(() -> backup(Limits.USUAL).restore(oldForm(stranger)))
        .isInstanceOf(RefusalException.class)
        .hasMessageContaining("of the form before")
        .hasMessageContaining("the version of hosewright that wrote it");
    assertThat(canary).doesNotExist();
    nothingChanged();
  }

  @Test
  void a_database_file_of_a_newer_version_is_refused_without_opening_it_to_learn_its_version()
      throws IOException {
    Path canary = elsewhere.resolve("canary");
    Path stranger = Files.createDirectory(elsewhere.resolve("stranger"));
    MigratedStore.into(stranger);
    try (Database books = Database.open(stranger)) {
      books
          .context()
          .update(DSL.table(DSL.quotedName("flyway_schema_history")))
          .set(DSL.field(DSL.quotedName("version"), String.class), "99")
          .execute();
    }
    Poison.TRIGGER_WITH_SOURCE.into(stranger, canary);

    assertThatThrownBy(() -> backup(Limits.USUAL).restore(oldForm(stranger)))
        .isInstanceOf(RefusalException.class);
    assertThat(canary).doesNotExist();
    nothingChanged();
  }

  @Test
  void a_backup_of_a_newer_version_is_refused() throws IOException {
    Path newer =
        forged(parts -> replace(parts, "hosewright-backup.txt", "schema\t\\d+", "schema\t999"));

    assertThatThrownBy(() -> backup(Limits.USUAL).restore(newer))
        .isInstanceOf(ConflictException.class)
        .hasMessageContaining("newer version");
    nothingChanged();
  }

  @Test
  void a_backup_of_the_form_without_kits_is_put_back() throws IOException {
    Path before = forged(parts -> replace(parts, "hosewright-backup.txt", "form\t\\d+", "form\t2"));

    backup(Limits.USUAL).restore(before);

    try (Database books = Database.open(folder)) {
      assertThat(books.context().fetchCount(QUOTE)).isEqualTo(1);
    }
  }

  @Test
  void a_link_in_the_place_of_the_kits_is_not_followed_and_nothing_is_put_back()
      throws IOException {
    Path kits = forged(parts -> first(parts, "kits/hand-line.txt", "1 x W-HYD\n"));
    Path away = Files.createDirectory(elsewhere.resolve("away"));
    Files.createSymbolicLink(folder.resolve("kits"), away);

    assertThatThrownBy(() -> backup(Limits.USUAL).restore(kits))
        .isInstanceOf(TroubleException.class)
        .hasMessageContaining("no folder, but a file or a link");
    assertThat(away).isEmptyDirectory();
  }

  @Test
  void a_link_in_the_place_of_the_kits_leaves_the_books_of_a_server_as_they_were()
      throws IOException {
    Path kits = forged(parts -> first(parts, "kits/hand-line.txt", "1 x W-HYD\n"));
    Path team = Files.createDirectory(elsewhere.resolve("team"));
    Files.createSymbolicLink(
        team.resolve("kits"), Files.createDirectory(elsewhere.resolve("away")));

    try (Database server = BooksOn.SERVER.open(team)) {
      assertThatThrownBy(
              () -> new Backup(team, "1.0", CLOCK.instant(), Limits.USUAL).restore(kits, server))
          .isInstanceOf(TroubleException.class)
          .hasMessageContaining("no folder, but a file or a link");
      assertThat(server.context().fetchCount(QUOTE)).isZero();
    }
  }

  @Test
  void what_a_dealer_wrote_is_kept_too_where_no_store_can_be_backed_up() throws IOException {
    Path file = forged(parts -> first(parts, "terms.txt", "New terms.\n"));
    Files.writeString(folder.resolve("terms.txt"), "Old terms.\n");
    Files.writeString(folder.resolve("store.mv.db"), "no store any more");

    backup(Limits.USUAL).restore(file);

    assertThat(folder.resolve("terms.txt")).hasContent("New terms.\n");
    try (Stream<Path> kept = Files.walk(folder.resolve("backups"))) {
      assertThat(kept.filter(copy -> copy.endsWith("terms.txt")))
          .singleElement()
          .satisfies(copy -> assertThat(copy).hasContent("Old terms.\n"))
          .satisfies(copy -> assertThat(OwnerOnly.isOpenToOthers(copy)).isFalse());
    }
  }

  @Test
  void a_file_beside_the_books_that_is_too_large_is_named_before_a_backup_is_made()
      throws IOException {
    Files.createDirectory(folder.resolve("kits"));
    Files.writeString(folder.resolve("kits/endless.txt"), "1 x A\n".repeat(20_000));
    Path file = elsewhere.resolve("large.zip");

    try (Database books = Database.open(folder)) {
      assertThatThrownBy(() -> backup(Limits.USUAL).make(books, Optional.of(file)))
          .hasMessageContaining("kits/endless.txt")
          .hasMessageContaining("at most 64 KiB");
    }
    assertThat(file).doesNotExist();
  }

  @Test
  void a_script_in_a_name_is_refused_as_a_name() throws IOException {
    for (String name :
        List.of(
            "tables/x;create alias a.txt",
            "tables/../../escape.txt",
            "../escape.txt",
            "/etc/escape.txt",
            "kits/../escape.txt",
            "kits/UPPER.txt",
            "kits/.hidden.txt",
            "kits/a/b.txt",
            "kits/.txt",
            "short-forms.txt",
            "tables/flyway_schema_history.txt",
            "tables/nothing_of_ours.txt")) {
      Path file = forged(parts -> with(parts, name, "A text\n"));
      assertThatThrownBy(() -> backup(Limits.USUAL).restore(file))
          .as(name)
          .isInstanceOf(RefusalException.class)
          .hasMessageContaining("a file that 'data backup' wrote");
    }
    Path column =
        forged(
            parts ->
                replace(
                    parts, "tables/quote_void.txt", "REASON text", "REASON) VALUES (1);-- text"));
    assertThatThrownBy(() -> backup(Limits.USUAL).restore(column))
        .hasMessageContaining("names no columns");
    nothingChanged();
  }

  @Test
  void rows_that_are_none_are_refused_with_their_line() throws IOException {
    Map<String, String> wrong = new LinkedHashMap<>();
    wrong.put("Q-000001\tx", "line 2 of tables/quote_void.txt has 2 cells, not 4");
    wrong.put("Q-000001\tlost\tyesterday\t0", "RECORDED_AT: 'yesterday' is no moment");
    wrong.put("Q-000001\tlo\\qst\t2026-01-01T00:00:00Z\t0", "REASON: 'lo\\qst' is no text");
    wrong.put("Q-0000000000000000000001\tlost\t2026-01-01T00:00:00Z\t0", "break the rules");
    wrong.put("\\N\tlost\t2026-01-01T00:00:00Z\t0", "break the rules");
    for (Map.Entry<String, String> row : wrong.entrySet()) {
      Path file =
          forged(parts -> replace(parts, "tables/quote_void.txt", "\\z", row.getKey() + "\n"));
      assertThatThrownBy(() -> backup(Limits.USUAL).restore(file))
          .isInstanceOf(RefusalException.class)
          .hasMessageContaining(row.getValue());
    }
    nothingChanged();
  }

  @Test
  void a_backup_that_lacks_a_table_or_has_one_twice_is_refused() throws IOException {
    Path lacking = forged(parts -> without(parts, "tables/quote.txt"));
    Path twice =
        forged(parts -> with(parts, "tables/quote_void.txt", parts.get("tables/quote_void.txt")));

    assertThatThrownBy(() -> backup(Limits.USUAL).restore(lacking))
        .isInstanceOf(RefusalException.class);
    assertThatThrownBy(() -> backup(Limits.USUAL).restore(twice)).hasMessageContaining("twice");
    nothingChanged();
  }

  @Test
  void a_highest_number_far_beyond_the_papers_is_refused() throws IOException {
    Path file =
        forged(parts -> replace(parts, "highest-numbers.txt", "quote\t\\d+", "quote\t99999999"));

    assertThatThrownBy(() -> backup(Limits.USUAL).restore(file))
        .isInstanceOf(RefusalException.class)
        .hasMessageContaining("99999999");
    nothingChanged();
  }

  @Test
  void more_than_may_be_is_refused_as_soon_as_it_is_met() throws IOException {
    Path manyRows =
        forged(
            parts ->
                replace(
                    parts,
                    "tables/dealer_setting.txt",
                    "\\z",
                    "a\tb\t0\nc\td\t0\ne\tf\t0\ng\th\t0\ni\tj\t0\nk\tl\t0\n"));
    Path longLine =
        forged(
            parts ->
                replace(parts, "tables/dealer_setting.txt", "\\z", "a\t" + "b".repeat(30_000)));
    Path longFile = forged(parts -> with(parts, "terms.txt", "Paid.\n".repeat(500)));
    Path longKit = forged(parts -> with(parts, "kits/long.txt", "1 x A\n".repeat(20_000)));
    Path longHead =
        forged(parts -> replace(parts, "hosewright-backup.txt", "\\z", "x".repeat(9_000)));
    Path manyParts =
        forged(
            parts -> {
              List<Map.Entry<String, String>> many = new ArrayList<>(entries(parts));
              for (int i = 0; i < 100; i++) {
                many.add(Map.entry("tables/t" + i + ".txt", "A text\n"));
              }
              return many;
            });
    Path unfolding =
        forged(
            parts ->
                with(
                    parts,
                    "tables/unfolding.txt",
                    "A text\n" + ("a".repeat(10_000) + "\n").repeat(4)));

    for (Path file : List.of(manyRows, longLine, longFile, longKit, longHead, manyParts)) {
      assertThatThrownBy(() -> backup(SMALL).restore(file)).isInstanceOf(RefusalException.class);
    }
    assertThatThrownBy(() -> new BackupReader(manyRows, SMALL).read(new NoShelf()))
        .hasMessageContaining("more than 5 rows");
    assertThatThrownBy(() -> new BackupReader(longLine, SMALL).read(new NoShelf()))
        .hasMessageContaining("longer than 20000 characters");
    assertThatThrownBy(() -> new BackupReader(longFile, SMALL).read(new NoShelf()))
        .hasMessageContaining("larger than 1000 bytes");
    assertThatThrownBy(() -> new BackupReader(longKit, Limits.USUAL).read(new NoShelf()))
        .hasMessageContaining("kits/long.txt is larger than 65536 bytes");
    assertThatThrownBy(() -> new BackupReader(manyParts, SMALL).read(new NoShelf()))
        .hasMessageContaining("too many parts");
    assertThatThrownBy(
            () ->
                new BackupReader(unfolding, new Limits(1 << 20, 30_000, 60, 9, 20_000, 1000))
                    .read(new NoShelf()))
        .hasMessageContaining("unfolds to more than 30000 bytes");
    assertThatThrownBy(
            () -> new BackupReader(good, new Limits(1000, 1, 1, 1, 1, 1)).read(new NoShelf()))
        .hasMessageContaining("larger than 1000 bytes");
    nothingChanged();
  }

  @Test
  void what_is_no_file_is_refused_and_not_read() {
    for (Path file : List.of(elsewhere, Path.of("/dev/zero"), elsewhere.resolve("absent.zip"))) {
      assertThatThrownBy(() -> backup(Limits.USUAL).restore(file))
          .isInstanceOf(RefusalException.class)
          .hasMessageContaining("backup");
    }
    nothingChanged();
  }

  @Test
  void a_backup_damaged_or_cut_anywhere_is_refused() throws IOException {
    byte[] sound = Files.readAllBytes(good);
    SplittableRandom random = new SplittableRandom(20261130);
    Path file = elsewhere.resolve("damaged.zip");
    int directory = indexOf(sound, new byte[] {'P', 'K', 1, 2});
    for (int i = 0; i < 300; i++) {
      byte[] damaged = sound.clone();
      // The list of contents at the end is not read; times of parts are not looked at.
      int at = random.nextInt(directory);
      damaged[at] ^= (byte) (1 << random.nextInt(8));
      Files.write(file, damaged);
      if (reads(file)) {
        assertThat(sameContent(file)).as("bit flipped at %d", at).isTrue();
      }
      Files.write(file, java.util.Arrays.copyOf(sound, random.nextInt(directory)));
      assertThat(reads(file)).as("cut").isFalse();
    }
  }

  private boolean sameContent(Path file) throws IOException {
    return new ArrayList<>(entries(parts(file))).equals(new ArrayList<>(entries(parts(good))));
  }

  private static boolean reads(Path file) {
    try {
      new BackupReader(file, Limits.USUAL).read(new NoShelf());
      return true;
    } catch (RefusalException e) {
      return false;
    }
  }

  private void nothingChanged() {
    try (Database books = Database.open(folder)) {
      assertThat(books.context().fetchCount(QUOTE)).isEqualTo(1);
    }
    assertThat(folder.toFile().list()).noneMatch(name -> name.startsWith("."));
    assertThat(folder.resolve("backups")).doesNotExist();
    assertThat(folder.getParent().resolve("escape.txt")).doesNotExist();
  }

  private Backup backup(Limits limits) {
    return new Backup(folder, "1.0", CLOCK.instant(), limits);
  }

  private Path oldForm(Path stranger) throws IOException {
    Path file = elsewhere.resolve("old.zip");
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("store.mv.db"));
      Files.copy(stranger.resolve("store.mv.db"), zip);
    }
    return file;
  }

  /** A backup with other parts whose manifest agrees with them. */
  private Path forged(
      java.util.function.Function<Map<String, String>, List<Map.Entry<String, String>>> change)
      throws IOException {
    Path file = Files.createTempFile(elsewhere, "forged", ".zip");
    List<Part> manifest = new ArrayList<>();
    try (OutputStream out = Files.newOutputStream(file);
        ForgedZip zip = new ForgedZip(out)) {
      for (Map.Entry<String, String> part : change.apply(parts(good))) {
        byte[] content = part.getValue().getBytes(StandardCharsets.UTF_8);
        zip.part(part.getKey(), content);
        long rows = part.getKey().startsWith("tables/") ? part.getValue().lines().count() - 1 : 0;
        manifest.add(
            new Part(
                part.getKey(),
                rows,
                content.length,
                HexFormat.of().formatHex(Seal.sha256().digest(content))));
      }
      zip.part("manifest.txt", Part.manifest(manifest).getBytes(StandardCharsets.UTF_8));
    }
    return file;
  }

  private static Map<String, String> parts(Path file) throws IOException {
    Map<String, String> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (!entry.getName().equals("manifest.txt")) {
          parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    return parts;
  }

  private static List<Map.Entry<String, String>> entries(Map<String, String> parts) {
    return List.copyOf(parts.entrySet().stream().map(Map.Entry::copyOf).toList());
  }

  private static List<Map.Entry<String, String>> with(
      Map<String, String> parts, String name, String content) {
    List<Map.Entry<String, String>> more = new ArrayList<>(entries(parts));
    more.add(Map.entry(name, content));
    return more;
  }

  /** Behind the head, where a dealer's files stand. */
  private static List<Map.Entry<String, String>> first(
      Map<String, String> parts, String name, String content) {
    List<Map.Entry<String, String>> more = new ArrayList<>(entries(parts));
    more.add(2, Map.entry(name, content));
    return more;
  }

  private static List<Map.Entry<String, String>> without(Map<String, String> parts, String name) {
    return entries(parts).stream().filter(part -> !part.getKey().equals(name)).toList();
  }

  private static List<Map.Entry<String, String>> replace(
      Map<String, String> parts, String name, String pattern, String by) {
    UnaryOperator<String> change =
        content -> content.replaceFirst(pattern, java.util.regex.Matcher.quoteReplacement(by));
    assertThat(parts).containsKey(name);
    parts.compute(name, (same, content) -> change.apply(content));
    return entries(parts);
  }

  private static int indexOf(byte[] bytes, byte[] wanted) {
    for (int i = 0; i < bytes.length; i++) {
      if (java.util.Arrays.equals(bytes, i, i + wanted.length, wanted, 0, wanted.length)) {
        return i;
      }
    }
    throw new IllegalStateException();
  }

  /** A zip that may have one name twice, which the library's own refuses to write. */
  private static final class ForgedZip implements AutoCloseable {
    private final OutputStream out;

    ForgedZip(OutputStream out) {
      this.out = out;
    }

    void part(String name, byte[] content) throws IOException {
      ByteArrayOutputStream one = new ByteArrayOutputStream();
      try (ZipOutputStream zip = new ZipOutputStream(one)) {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(content);
        zip.closeEntry();
      }
      byte[] whole = one.toByteArray();
      out.write(whole, 0, indexOf(whole, new byte[] {'P', 'K', 1, 2}));
    }

    @Override
    public void close() throws IOException {
      out.flush();
    }
  }
}
