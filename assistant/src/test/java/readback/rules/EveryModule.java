package readback.rules;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The rules of the house that hold in every module; the fleet, which has other classes before it, holds them too. */
public final class EveryModule {

    @ArchTest
    static final ArchRule packages_of_a_module_have_no_cycles = slices().matching("readback.(*).(*)..")
            .namingSlices("$1.$2")
            .should()
            .beFreeOfCycles();

    @ArchTest
    static final ArchRule nothing_is_named_for_what_it_is_not_a_concept_of = noClasses()
            .should()
            .haveSimpleNameEndingWith("Util")
            .orShould()
            .haveSimpleNameEndingWith("Helper")
            .orShould()
            .haveSimpleNameEndingWith("Manager")
            .orShould()
            .haveSimpleNameEndingWith("Impl");

    private EveryModule() {}
}
