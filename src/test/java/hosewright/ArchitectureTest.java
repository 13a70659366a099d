package hosewright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.PrintStream;
import java.io.PrintWriter;

/** The arrows of the design, held. */
@AnalyzeClasses(packages = "hosewright", importOptions = DoNotIncludeTests.class)
final class ArchitectureTest {

  private static final String[] CORE = {
    "hosewright.problem..",
    "hosewright.csv..",
    "hosewright.thread..",
    "hosewright.measure..",
    "hosewright.hydraulics..",
    "hosewright.catalogue..",
    "hosewright.line..",
    "hosewright.quote..",
    "hosewright.order..",
    "hosewright.fleet..",
    "hosewright.tender.."
  };

  @ArchTest
  static final ArchRule the_core_knows_no_framework =
      noClasses()
          .that()
          .resideInAnyPackage(CORE)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.springframework..",
              "org.jooq..",
              "org.flywaydb..",
              "org.h2..",
              "org.apache.poi..",
              "org.jline..",
              "org.yaml..",
              "tools.jackson..",
              "com.fasterxml..",
              "java.sql..");

  @ArchTest
  static final ArchRule arrows_go_one_way =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("command")
          .definedBy("hosewright.command..")
          .layer("desk")
          .definedBy("hosewright.desk..")
          .layer("interview")
          .definedBy("hosewright.interview..")
          .layer("shell")
          .definedBy("hosewright.shell..")
          .layer("report")
          .definedBy("hosewright.report..")
          .layer("store")
          .definedBy("hosewright.store..")
          .layer("intake")
          .definedBy("hosewright.intake..")
          .layer("json")
          .definedBy("hosewright.json..")
          .layer("jobfile")
          .definedBy("hosewright.jobfile..")
          .layer("fleet")
          .definedBy("hosewright.fleet..")
          .layer("tender")
          .definedBy("hosewright.tender..")
          .layer("order")
          .definedBy("hosewright.order..")
          .layer("quote")
          .definedBy("hosewright.quote..")
          .layer("line")
          .definedBy("hosewright.line..")
          .layer("catalogue")
          .definedBy("hosewright.catalogue..")
          .layer("hydraulics")
          .definedBy("hosewright.hydraulics..")
          .layer("thread")
          .definedBy("hosewright.thread..")
          .whereLayer("command")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("desk")
          .mayOnlyBeAccessedByLayers("command")
          .whereLayer("interview")
          .mayOnlyBeAccessedByLayers("command")
          .whereLayer("shell")
          .mayOnlyBeAccessedByLayers("command", "interview")
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("command", "desk")
          .whereLayer("intake")
          .mayOnlyBeAccessedByLayers("command", "desk")
          .whereLayer("store")
          .mayOnlyBeAccessedByLayers("command", "desk")
          .whereLayer("json")
          .mayOnlyBeAccessedByLayers("command", "desk", "shell", "report", "store")
          .whereLayer("jobfile")
          .mayOnlyBeAccessedByLayers("command", "desk", "interview", "report", "store")
          .whereLayer("tender")
          .mayOnlyBeAccessedByLayers("command", "desk", "report")
          .whereLayer("fleet")
          .mayOnlyBeAccessedByLayers("command", "desk", "report", "store", "json")
          .whereLayer("order")
          .mayOnlyBeAccessedByLayers("command", "desk", "report", "store")
          .whereLayer("quote")
          .mayOnlyBeAccessedByLayers(
              "command", "desk", "report", "store", "json", "jobfile", "order", "tender")
          .whereLayer("line")
          .mayOnlyBeAccessedByLayers(
              "command",
              "desk",
              "interview",
              "report",
              "store",
              "json",
              "quote",
              "jobfile",
              "order",
              "tender")
          .whereLayer("hydraulics")
          .mayOnlyBeAccessedByLayers("command", "desk", "report", "json", "line", "quote");

  @ArchTest
  static final ArchRule the_desk_knows_no_door_and_prints_nothing =
      noClasses()
          .that()
          .resideInAPackage("hosewright.desk..")
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                      "hosewright.shell..", "hosewright.command..", "org.springframework..")
                  .or(assignableTo(PrintStream.class))
                  .or(assignableTo(PrintWriter.class)));

  @ArchTest
  static final ArchRule packages_form_no_cycle =
      slices().matching("hosewright.(*)..").should().beFreeOfCycles();
}
