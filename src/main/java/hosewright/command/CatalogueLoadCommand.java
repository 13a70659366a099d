package hosewright.command;

import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.nio.file.Path;
import org.springframework.beans.factory.ObjectProvider;

/** Takes a folder of catalogue files into the books. */
final class CatalogueLoadCommand extends ShellCommand {
  private final ObjectProvider<Books> books;

  CatalogueLoadCommand(ObjectProvider<Books> books) {
    super(
        CommandSpec.of(
                "catalogue load",
                Group.BUY,
                "Takes a folder of catalogue files into the books, all or nothing",
                "catalogue load catalogue")
            .with(
                ArgumentSpec.required(
                        "FOLDER", "the folder with items.csv, prices.csv, customers.csv and so on")
                    .completingFiles()));
    this.books = books;
  }

  record Loaded(int items, int customers, String currency) {}

  @Override
  protected Answer answer(Invocation in) {
    CatalogueFolder folder = CatalogueFolder.read(Path.of(in.argument(0).orElseThrow()));
    try (Books open = books.getObject()) {
      open.load(folder);
    }
    Loaded loaded =
        new Loaded(
            folder.catalogue().items().size(),
            folder.customers().customers().size(),
            folder.catalogue().currency().map(Object::toString).orElse(""));
    return Answer.of(
        loaded,
        "Loaded %d items and %d customers, priced in %s."
            .formatted(loaded.items(), loaded.customers(), loaded.currency()));
  }
}
