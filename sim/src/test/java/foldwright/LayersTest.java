// SPDX-License-Identifier: Apache-2.0
package foldwright;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** Dependencies between packages point one way; who may know whom is written down here only. */
class LayersTest {
    private static final JavaClasses HOUSE =
            new ClassFileImporter()
                    .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                    .importPackages("foldwright");

    @Test
    void packagesKnowOnlyThoseBelowThem() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .withOptionalLayers(true)
                .layer("quantity")
                .definedBy("foldwright.quantity..")
                .layer("elements")
                .definedBy("foldwright.elements..")
                .layer("mechanics")
                .definedBy("foldwright.mechanics..")
                .layer("machine")
                .definedBy("foldwright.machine..")
                .layer("motion")
                .definedBy("foldwright.motion..")
                .layer("lift")
                .definedBy("foldwright.lift..")
                .layer("gantry")
                .definedBy("foldwright.gantry..")
                .layer("run")
                .definedBy("foldwright.run..")
                .layer("study")
                .definedBy("foldwright.study..")
                .layer("report")
                .definedBy("foldwright.report..")
                .layer("proof")
                .definedBy("foldwright.proof..")
                .layer("cli")
                .definedBy("foldwright.cli..")
                .whereLayer("quantity")
                .mayNotAccessAnyLayer()
                .whereLayer("elements")
                .mayOnlyAccessLayers("quantity")
                .whereLayer("mechanics")
                .mayOnlyAccessLayers("quantity", "elements")
                .whereLayer("machine")
                .mayOnlyAccessLayers("quantity", "elements")
                .whereLayer("motion")
                .mayOnlyAccessLayers("quantity")
                .whereLayer("lift")
                .mayOnlyAccessLayers("quantity", "elements", "mechanics", "machine")
                .whereLayer("gantry")
                .mayOnlyAccessLayers("quantity", "elements", "mechanics", "machine", "motion")
                .whereLayer("run")
                .mayOnlyAccessLayers("quantity", "machine", "motion", "lift", "gantry")
                .whereLayer("study")
                .mayOnlyAccessLayers(
                        "quantity", "elements", "mechanics", "machine", "motion", "lift", "gantry")
                .whereLayer("report")
                .mayOnlyAccessLayers(
                        "quantity",
                        "elements",
                        "mechanics",
                        "machine",
                        "motion",
                        "lift",
                        "gantry",
                        "study")
                .whereLayer("proof")
                .mayOnlyAccessLayers(
                        "quantity", "elements", "mechanics", "machine", "motion", "lift", "gantry")
                .whereLayer("cli")
                .mayNotBeAccessedByAnyLayer()
                .check(HOUSE);
    }

    @Test
    void noPackagesFormACircle() {
        slices().matching("foldwright.(**)").should().beFreeOfCycles().check(HOUSE);
    }
}
