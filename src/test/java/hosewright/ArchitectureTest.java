package hosewright;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.Set;

/** The arrows of the house, held. */
@AnalyzeClasses(packages = "hosewright", importOptions = DoNotIncludeTests.class)
final class ArchitectureTest {

  /** Everything that would stay if every door, paper, store and file were another. */
  private static final String[] CORE = {
    "hosewright.problem..",
    "hosewright.csv..",
    "hosewright.measure..",
    "hosewright.thread..",
    "hosewright.hydraulics..",
    "hosewright.catalogue..",
    "hosewright.job..",
    "hosewright.line..",
    "hosewright.quote..",
    "hosewright.order..",
    "hosewright.tender..",
    "hosewright.fleet.."
  };

  /** The doors, and the class that opens one. */
  private static final DescribedPredicate<JavaClass> A_DOOR =
      resideInAnyPackage("hosewright", "hosewright.door..").as("a door");

  /** Whoever writes a description down for people, or looks for one that a person typed. */
  private static final Set<String> WRITES_OR_SEARCHES_DESCRIPTIONS =
      Set.of(
          "AccessoryWriter",
          "Assembly",
          "BenchCard",
          "BillWriter",
          "Billing",
          "BoughtEnd",
          "BridgeDocument",
          "BudgetMaker",
          "Buying",
          "CountedParts",
          "FindItems",
          "FirstPurchase",
          "FittingLoss",
          "HoseLines",
          "ItemWords",
          "JointWriter",
          "KeptPrices",
          "LayoutWriter",
          "LineWriter",
          "ListShortages",
          "OnHand",
          "Part",
          "Placed",
          "PlanHydraulics",
          "PlanPrices",
          "FedLeg",
          "TreeWriter",
          "PracticeChecks",
          "PriceList",
          "Quote",
          "QuoteDiff",
          "QuoteLine",
          "Raising",
          "RatingChecks",
          "ShowItem",
          "Supplying",
          "VelocityChecks");

  @ArchTest
  static final ArchRule the_core_knows_no_framework =
      noClasses()
          .that()
          .resideInAnyPackage(CORE)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.jooq..",
              "org.flywaydb..",
              "org.h2..",
              "org.postgresql..",
              "java.sql..",
              "org.apache.poi..",
              "org.apache.pdfbox..",
              "org.yaml..",
              "org.jline..",
              "tools.jackson..",
              "com.fasterxml..");

  @ArchTest
  static final ArchRule the_desk_and_all_below_know_no_shell =
      noClasses()
          .that(not(A_DOOR))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("hosewright.door..", "org.springframework..", "org.jline..");

  @ArchTest
  static final ArchRule the_desk_and_all_below_print_nothing =
      noClasses()
          .that(not(A_DOOR))
          .should()
          .dependOnClassesThat()
          .haveNameMatching("java\\.io\\.(PrintStream|PrintWriter|Console)")
          .orShould()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  @ArchTest
  static final ArchRule nothing_decides_what_a_thing_is_by_its_description =
      noClasses()
          .that()
          .resideInAnyPackage(
              "hosewright.job..",
              "hosewright.line..",
              "hosewright.quote..",
              "hosewright.order..",
              "hosewright.tender..",
              "hosewright.fleet..",
              "hosewright.desk..")
          .and(not(writesOrSearchesDescriptions()))
          .should()
          .accessTargetWhere(
              target(name("description"))
                  .and(target(DescribedPredicate.describe("of ours", ArchitectureTest::isOurs))));

  @ArchTest
  static final ArchRule arrows_go_one_way =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("problem")
          .definedBy("hosewright.problem..")
          .layer("disk")
          .definedBy("hosewright.disk..")
          .layer("csv")
          .definedBy("hosewright.csv..")
          .layer("measure")
          .definedBy("hosewright.measure..")
          .layer("thread")
          .definedBy("hosewright.thread..")
          .layer("hydraulics")
          .definedBy("hosewright.hydraulics..")
          .layer("catalogue")
          .definedBy("hosewright.catalogue..")
          .layer("job")
          .definedBy("hosewright.job..")
          .layer("line")
          .definedBy("hosewright.line..")
          .layer("quote")
          .definedBy("hosewright.quote..")
          .layer("order")
          .definedBy("hosewright.order..")
          .layer("tender")
          .definedBy("hosewright.tender..")
          .layer("fleet")
          .definedBy("hosewright.fleet..")
          .layer("intake")
          .definedBy("hosewright.intake..")
          .layer("store")
          .definedBy("hosewright.store..")
          .layer("paper")
          .definedBy("hosewright.paper..")
          .layer("desk")
          .definedBy("hosewright.desk..")
          .layer("door")
          .definedBy("hosewright.door..")
          .whereLayer("door")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("desk")
          .mayOnlyBeAccessedByLayers("door")
          .whereLayer("paper")
          .mayOnlyBeAccessedByLayers("desk", "door")
          .whereLayer("store")
          .mayOnlyBeAccessedByLayers("desk", "door")
          .whereLayer("intake")
          .mayOnlyBeAccessedByLayers("desk", "door")
          .whereLayer("fleet")
          .mayOnlyBeAccessedByLayers("paper", "store", "desk", "door")
          .whereLayer("tender")
          .mayOnlyBeAccessedByLayers("paper", "store", "desk", "door")
          .whereLayer("order")
          .mayOnlyBeAccessedByLayers("paper", "store", "desk", "door")
          .whereLayer("quote")
          .mayOnlyBeAccessedByLayers("order", "tender", "paper", "store", "desk", "door")
          .whereLayer("line")
          .mayOnlyBeAccessedByLayers("quote", "order", "tender", "paper", "store", "desk", "door")
          .whereLayer("job")
          .mayOnlyBeAccessedByLayers(
              "line", "quote", "order", "tender", "intake", "paper", "store", "desk", "door")
          .whereLayer("hydraulics")
          .mayOnlyBeAccessedByLayers("job", "line", "quote", "paper", "desk", "door")
          .whereLayer("problem")
          .mayNotAccessAnyLayer()
          .whereLayer("disk")
          .mayOnlyAccessLayers("problem")
          .whereLayer("disk")
          .mayOnlyBeAccessedByLayers("intake", "paper", "store", "desk", "door")
          .whereLayer("csv")
          .mayOnlyAccessLayers("problem")
          .whereLayer("measure")
          .mayOnlyAccessLayers("problem", "csv")
          .whereLayer("thread")
          .mayOnlyAccessLayers("problem", "csv", "measure")
          .whereLayer("hydraulics")
          .mayOnlyAccessLayers("problem", "csv")
          .whereLayer("catalogue")
          .mayOnlyAccessLayers("problem", "csv", "measure", "thread")
          .whereLayer("fleet")
          .mayOnlyAccessLayers("problem", "csv", "measure", "thread", "catalogue");

  @ArchTest
  static final ArchRule rooms_form_no_cycle =
      slices().assignedFrom(rooms()).should().beFreeOfCycles();

  private static DescribedPredicate<JavaClass> writesOrSearchesDescriptions() {
    return DescribedPredicate.describe(
        "write or search descriptions",
        type -> WRITES_OR_SEARCHES_DESCRIPTIONS.contains(outermost(type).getSimpleName()));
  }

  private static JavaClass outermost(JavaClass type) {
    return type.getEnclosingClass().map(ArchitectureTest::outermost).orElse(type);
  }

  private static boolean isOurs(AccessTarget accessed) {
    return accessed instanceof AccessTarget.CodeUnitAccessTarget
        && accessed.getOwner().getPackageName().startsWith("hosewright.");
  }

  /** Every folder is a room; classes made from the schema are one with their makers. */
  private static SliceAssignment rooms() {
    return new SliceAssignment() {
      @Override
      public SliceIdentifier getIdentifierOf(JavaClass type) {
        String room = type.getPackageName();
        return room.equals("hosewright") || room.startsWith("hosewright.store.db")
            ? SliceIdentifier.ignore()
            : SliceIdentifier.of(room);
      }

      @Override
      public String getDescription() {
        return "rooms";
      }
    };
  }
}
